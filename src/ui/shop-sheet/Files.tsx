/** The sheet as a file, in and out, and prices from a spreadsheet. Nothing is taken before it was looked at. */
import { useState } from 'preact/hooks'
import { draftOf } from '../../shop/sheet/draft'
import { type FileRead, LARGEST_FILE, readSheetFile, sheetFile, tooLarge } from '../../shop/sheet/file'
import { CsvPart } from './CsvPart'
import { FileBox } from './FileBox'
import { save } from './save'
import { useSheet } from './use-sheet'

export function Files() {
  const { given, read } = useSheet()
  const { sheet } = read
  const [opened, open] = useState<FileRead | null>(null)
  const known = new Set(given.woods.map((wood) => wood.id))
  const take = async (file: File) =>
    open(
      file.size > LARGEST_FILE
        ? { ok: false, says: tooLarge(file.size), list: [] }
        : readSheetFile(await file.text(), known)
    )
  return (
    <section class="shop-files stack" id="shop-files" aria-labelledby="shop-files-title">
      <h2 id="shop-files-title">As a file</h2>
      <div class="two">
        <div class="stack">
          <h3>The whole sheet</h3>
          <p>One JSON file: to keep, to move to another device, to send to a partner.</p>
          <p>
            <button
              type="button"
              class="btn btn--quiet btn--small"
              aria-disabled={sheet === null}
              aria-describedby="shop-save-help"
              onClick={() => sheet && save('shop-sheet.json', sheetFile(sheet), 'application/json')}
            >
              Save the sheet as a file
            </button>
          </p>
          <p class="help" id="shop-save-help">
            {sheet === null && 'As soon as nothing is missing. '}
            Its shape is published as a JSON schema, linked below.
          </p>
          <FileBox id="shop-open" label="Open a shop sheet (.json)" accept=".json,application/json" onFile={take} />
          <div role="status">{opened && <Opened of={opened} onDone={() => open(null)} known={known} />}</div>
        </div>
        <CsvPart />
      </div>
    </section>
  )
}

interface OpenedProps {
  readonly of: FileRead
  readonly known: ReadonlySet<string>
  readonly onDone: () => void
}
function Opened({ of, known, onDone }: OpenedProps) {
  const { replace } = useSheet()
  if (!of.ok)
    return (
      <div class="notice" id="shop-opened">
        <p>
          <b>{of.says}</b> The form is as it was.
        </p>
        {of.list.length > 0 && (
          <ul class="shop-list">
            {of.list.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>
    )
  const { sheet, unknown } = of
  return (
    <div class="notice" id="shop-opened">
      <p>
        <b>{sheet.name}</b>: {sheet.woods.length} {sheet.woods.length === 1 ? 'wood' : 'woods'},{' '}
        {sheet.sections.sizes.length} sections. {sheet.placeholder && 'Its prices are placeholders.'}
      </p>
      {unknown.length > 0 && (
        <p>
          We have no data on {unknown.join(', ')}: {unknown.length === 1 ? 'it is' : 'they are'} left out. The file
          itself stays as it is.
        </p>
      )}
      <p class="row">
        <button
          type="button"
          class="btn btn--small"
          onClick={() => {
            replace(draftOf(sheet, known), `Opened: ${sheet.name}.`)
            onDone()
          }}
        >
          Put it into the form
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={onDone}>
          Leave the form as it is
        </button>
      </p>
    </div>
  )
}
