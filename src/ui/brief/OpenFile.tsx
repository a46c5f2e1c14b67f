/** Opens a brief that was kept as a file: its answers and its sheet go through their doors, and on into the address. */
import { useState } from 'preact/hooks'
import { $notice } from '../../stores/answers'

export function OpenFile({ small = false }: { readonly small?: boolean }) {
  const [says, say] = useState<string | null>(null)

  const open = async (input: HTMLInputElement) => {
    const file = input.files?.[0]
    if (!file) return
    say(null)
    try {
      const [{ readBriefFile }, { encodeBrief, encodeLink }] = await Promise.all([
        import('../../shop/invite/file'),
        import('../../shop/link')
      ])
      const read = readBriefFile(await file.text())
      if (!read.ok) say(read.says)
      else {
        $notice.set(
          read.problems.length > 0 ? `Left out of the file: ${read.problems.map((p) => p.says).join(' ')}` : null
        )
        location.hash = `b=${read.sheet ? encodeBrief(read.answers, read.sheet) : encodeLink(read.answers)}`
      }
    } catch {
      say('The file could not be read.')
    }
    // The same file may be chosen again.
    input.value = ''
  }

  return (
    <div class="open-file no-print">
      <label class={small ? 'btn btn--quiet btn--small' : 'btn btn--quiet'}>
        Open a brief file
        <input
          class="visually-hidden"
          type="file"
          accept="application/json,.json"
          onChange={(event) => void open(event.currentTarget)}
        />
      </label>
      <div role="alert">{says !== null && <p class="error">{says}</p>}</div>
    </div>
  )
}
