/** What was understood of a list of prices, line by line, before any of it is taken. */
import { useState } from 'preact/hooks'
import { takenRows, withCsv, woodOf } from '../../shop/csv/apply'
import { type CsvRead, type PriceUnit, perBoardFoot } from '../../shop/csv/csv'
import type { CsvRow } from '../../shop/csv/row'
import { Heads } from '../say/Heads'
import { useSheet } from './use-sheet'

interface Props {
  readonly read: Extract<CsvRead, { ok: true }>
  readonly onDone: () => void
}
export function CsvReview({ read, onDone }: Props) {
  const { draft, replace } = useSheet()
  const [unit, setUnit] = useState<PriceUnit>(read.unit)
  const [chosen, choose] = useState<Readonly<Record<number, string>>>({})
  const taken = unit === 'ask' ? new Map<string, CsvRow>() : takenRows(read.rows, unit, chosen)
  const lines = new Set([...taken.values()].map((row) => row.line))
  return (
    <div class="shop-review notice">
      <h4>What we understood</h4>
      {read.unit === 'ask' && (
        <fieldset>
          <legend>The heading does not say what the prices are for. They are</legend>
          {(
            [
              ['board-foot', 'per board foot'],
              ['thousand', 'per thousand board feet']
            ] as const
          ).map(([id, words]) => (
            <label key={id} class="shop-tick">
              <input type="radio" name="csv-unit" checked={unit === id} onChange={() => setUnit(id)} />
              <span>{words}</span>
            </label>
          ))}
        </fieldset>
      )}
      {read.unit === 'thousand' && <p>The prices are per thousand board feet; they are taken per board foot.</p>}
      <table class="data data--stack">
        <Heads
          words={['In the list', 'Taken as']}
          numbers={[unit === 'ask' ? 'Price' : 'Per board foot']}
          rest={['Also']}
        />
        <tbody>
          {read.rows.map((row) => (
            <Line
              key={row.line}
              row={row}
              unit={unit}
              taken={lines.has(row.line)}
              wood={woodOf(row, chosen)}
              onChoose={(wood) => choose({ ...chosen, [row.line]: wood })}
            />
          ))}
        </tbody>
      </table>
      {read.ignored.length > 0 && <p class="note">Columns that were not used: {read.ignored.join(', ')}.</p>}
      <p class="row">
        <button
          type="button"
          class="btn btn--small"
          aria-disabled={taken.size === 0}
          onClick={() => {
            if (unit === 'ask' || taken.size === 0) return
            replace(
              withCsv(draft, taken, unit),
              `Prices of ${taken.size} ${taken.size === 1 ? 'wood' : 'woods'} taken from the list.`
            )
            onDone()
          }}
        >
          {unit === 'ask' ? 'Say what the prices are for' : `Take ${taken.size} of ${read.rows.length} lines`}
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={onDone}>
          Leave the form as it is
        </button>
      </p>
    </div>
  )
}

interface LineProps {
  readonly row: CsvRow
  readonly unit: PriceUnit
  readonly taken: boolean
  readonly wood: string
  readonly onChoose: (wood: string) => void
}
function Line({ row, unit, taken, wood, onChoose }: LineProps) {
  const { given, nameOf } = useSheet()
  const price = unit === 'ask' ? row.price : perBoardFoot(row.price, unit)
  const { match } = row
  const offered = match.how === 'several' ? given.woods.filter(({ id }) => match.ids.includes(id)) : given.woods
  const also = [
    row.onRequest && 'on request',
    row.longestFt !== undefined && `to ${row.longestFt} ft`,
    row.largestIn && `to ${row.largestIn.join('x')} in`,
    row.freeAddPercent !== undefined && `free of heart adds ${row.freeAddPercent} %`,
    row.note
  ].filter(Boolean)
  const outside = row.price !== null && price === null ? ['price: out of range'] : []
  const complaints = [...row.problems, ...outside]
  const doubled = !taken && complaints.length === 0 && unit !== 'ask' && wood !== ''
  const silent = also.length === 0 && complaints.length === 0 && !doubled
  return (
    <tr class={taken || unit === 'ask' ? undefined : 'shop-not'}>
      <th scope="row">{row.said || '(no wood)'}</th>
      <td data-label="Taken as">
        {match.how === 'one' ? (
          nameOf(wood)
        ) : (
          <span class="field">
            <select
              aria-label={`Wood of line ${row.line}, ${row.said}`}
              value={wood}
              onChange={(event) => onChoose(event.currentTarget.value)}
            >
              <option value="">{match.how === 'several' ? 'Which one?' : 'Leave out'}</option>
              {offered.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </span>
        )}
      </td>
      <td class="num" data-label={unit === 'ask' ? 'Price' : 'Per board foot'}>
        {price === null ? '–' : unit === 'ask' ? `${price}?` : price.toFixed(2)}
      </td>
      <td data-label="Also" class={silent ? 'shop-silent' : undefined}>
        <span>
          {also.join(', ')}
          {complaints.map((problem) => (
            <span key={problem} class="error shop-problem">
              {problem}
            </span>
          ))}
          {doubled && <span class="note">a later line has the same wood</span>}
        </span>
      </td>
    </tr>
  )
}
