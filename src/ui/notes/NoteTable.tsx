/** A table of a note, its figures open to their sources; on a phone a wide one becomes a record a row. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Parts as Of } from '../../notes/note'
import type { Cell, Table } from '../../notes/tables'
import { Figure } from '../say/Figure'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { Cite, Parts } from './Parts'

const isFigure = (cell: Quantity | Sentence): cell is Quantity => 'kind' in cell

/** A sentence, and whether it was read or is what the trade says. */
function Told({ s: { text, values = {}, sources = [], mark = 'derived' } }: { readonly s: Sentence }) {
  return (
    <>
      <Say s={{ text, values }} />
      {sources.length > 0 && <Cite origin={{ mark, sources }} />}
    </>
  )
}

function Content({ cell, plain }: { readonly cell: Cell; readonly plain: boolean }) {
  if (typeof cell === 'string') return <>{cell}</>
  if (Array.isArray(cell)) {
    return (
      <span class="note-lines">
        {(cell as readonly Sentence[]).map((s) => (
          <span key={s.text}>
            <Told s={s} />
          </span>
        ))}
      </span>
    )
  }
  const one = cell as Quantity | Sentence
  return isFigure(one) ? <Q q={one} plain={plain} /> : <Told s={one} />
}

/** Words stand left, figures right. */
const isWords = (cell: Cell | undefined) => cell !== undefined && (typeof cell !== 'object' || !('kind' in cell))
const isLong = (cell: Cell | undefined) => (typeof cell === 'string' ? cell.length > 24 : isWords(cell))

export function NoteTable({ table, caption }: { readonly table: Table; readonly caption: Of }) {
  const { head, rows, placeholder = false } = table
  const words = head.slice(1).map((_, i) => rows.every((row) => isWords(row.cells[i])))
  const long = head.slice(1).map((_, i) => rows.some((row) => isLong(row.cells[i])))
  const stacks = head.length > 3 || words.some(Boolean)
  return (
    <div class="note-table">
      <table class={`data${stacks ? ' data--stack' : ''}`}>
        <caption>
          <Parts of={caption} />
          {placeholder && ' Prices are a sample sheet’s, invented: only the proportions mean anything.'}
        </caption>
        <thead>
          <tr>
            {head.map((name, i) => (
              <th key={name} scope="col" class={i > 0 && !words[i - 1] ? 'num' : undefined}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={typeof row.label === 'string' ? row.label : String(row.label.value)}>
              <th scope="row">{typeof row.label === 'string' ? row.label : <Figure q={row.label} />}</th>
              {row.cells.map((cell, i) => (
                <td
                  key={head[i + 1]}
                  data-label={head[i + 1]}
                  class={words[i] ? (long[i] ? 'words' : undefined) : 'num'}
                >
                  <span>
                    <Content cell={cell} plain={placeholder} />
                  </span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
