/** Prices from a spreadsheet: opened or pasted, looked over, then taken. What reads them comes when it is first needed. */
import { useState } from 'preact/hooks'
import type { CsvRead } from '../../shop/csv/csv'
import { carriedIn } from '../../shop/sheet/draft'
import { LARGEST_FILE, tooLarge } from '../../shop/sheet/file'
import { FileBox } from './FileBox'
import { save } from './save'
import { useSheet } from './use-sheet'

type Tools = typeof import('./csv-tools')
interface Opened {
  readonly tools: Tools
  readonly read: CsvRead
  /** Counts the files, so that choices made for one are not carried into the next. */
  readonly turn: number
}

export function CsvPart() {
  const { given, draft } = useSheet()
  const [opened, open] = useState<Opened | null>(null)
  const [says, say] = useState('')
  const look = async (text: string) => {
    say('')
    if (text.trim() === '') return open(null)
    try {
      const tools = await import('./csv-tools')
      const read = tools.readCsv(text, given.woods, new Set(carriedIn(draft)))
      open((last) => ({ tools, read, turn: (last?.turn ?? 0) + 1 }))
    } catch {
      say('What reads lists did not load. Try again once you are connected.')
    }
  }
  const take = async (file: File) => {
    if (file.size <= LARGEST_FILE) return look(await file.text())
    open(null)
    say(tooLarge(file.size).replace('shop sheet', 'list of prices'))
  }
  const template = async () => {
    try {
      const tools = await import('./csv-tools')
      save('prices.csv', tools.writeCsv(tools.csvLines(draft, given.woods)), 'text/csv;charset=utf-8')
    } catch {
      say('What writes lists did not load. Try again once you are connected.')
    }
  }
  return (
    <div class="stack">
      <h3>Prices from a spreadsheet</h3>
      <p>
        A CSV file with a column of woods and one of prices, per board foot or per thousand. Also understood: on
        request, longest, largest, what free of heart adds.
      </p>
      <p>
        <button type="button" class="btn btn--quiet btn--small" onClick={template}>
          Save a list to fill in
        </button>
      </p>
      <FileBox
        id="shop-csv"
        label="Open a list of prices (.csv)"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        onFile={take}
      />
      <details>
        <summary>Or paste the cells</summary>
        <div class="field">
          <label for="shop-paste">Cells from a spreadsheet, with their headings</label>
          <textarea id="shop-paste" class="shop-text" rows={4} onInput={(event) => look(event.currentTarget.value)} />
        </div>
      </details>
      <div role="status">{says !== '' && <p class="notice">{says}</p>}</div>
      {opened && !opened.read.ok && (
        <p class="notice" role="status" id="shop-csv-says">
          <b>{opened.read.says}</b> The form is as it was.
        </p>
      )}
      {opened?.read.ok && <opened.tools.CsvReview key={opened.turn} read={opened.read} onDone={() => open(null)} />}
    </div>
  )
}
