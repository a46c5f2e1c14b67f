/** One of the two briefs to be brought: pasted, opened from a file, or taken from this device. What is wrong is said here. */
import { useRef } from 'preact/hooks'

interface Props {
  readonly id: string
  readonly label: string
  readonly text: string
  readonly problem: string | null
  readonly left: readonly string[]
  /** null where this device holds no answers. */
  readonly onOwn: (() => void) | null
  readonly onText: (text: string) => void
  readonly onFile: (file: File) => void
}

export function Bring({ id, label, text, problem, left, onOwn, onText, onFile }: Props) {
  const file = useRef<HTMLInputElement>(null)
  return (
    <div class="field bring">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={3}
        spellcheck={false}
        autocomplete="off"
        value={text}
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : `${id}-problem`}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      {problem !== null && (
        <p class="error" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      {left.length > 0 && <p class="help">Left out, since it could not be read: {left.join(' ')}</p>}
      <p class="row">
        <button type="button" class="btn btn--quiet btn--small" onClick={() => file.current?.click()}>
          Open a file
        </button>
        <input
          ref={file}
          type="file"
          accept="application/json,.json,text/plain"
          aria-label={`File of the ${label.toLowerCase()}`}
          hidden
          onChange={(event) => {
            const [chosen] = event.currentTarget.files ?? []
            if (chosen) onFile(chosen)
            event.currentTarget.value = ''
          }}
        />
        {onOwn && (
          <button type="button" class="btn btn--quiet btn--small" onClick={onOwn}>
            Take the one on this device
          </button>
        )}
      </p>
    </div>
  )
}
