/** The series of sections: begun from a usual one, ticked in a grid, or typed as a list; and how they are sawn and graded. */
import { withSeries } from '../../shop/sheet/draft'
import { NUMBERS } from '../../shop/sheet/fields'
import { readSizes, type SeriesId, SIDES, type SizeUnit, toggleSize } from '../../shop/sizes'
import { NumberInput, Select, TextField } from './Fields'
import { useSheet } from './use-sheet'
import { GRADES, SURFACES } from './words'

const BEGIN: readonly (readonly [SeriesId, string])[] = [
  ['full-sawn', 'Full-sawn, steps of 2 in'],
  ['planed', 'Planed, steps of 2 in'],
  ['mm', 'Millimetres, steps of 50']
]

export function Sections() {
  const { draft, replace } = useSheet()
  const unit: SizeUnit = draft['unit'] === 'mm' ? 'mm' : 'in'
  return (
    <>
      <fieldset class="shop-begin">
        <legend>Begin from</legend>
        <p class="row">
          {BEGIN.map(([id, words]) => (
            <button
              key={id}
              type="button"
              class="btn btn--quiet btn--small"
              onClick={() => replace(withSeries(draft, id), `The sections now are: ${words.toLowerCase()}.`)}
            >
              {words}
            </button>
          ))}
        </p>
      </fieldset>
      <TextField
        field="sizes"
        rows={4}
        label={unit === 'in' ? 'Sections, in inches' : 'Sections, in millimetres'}
        help={unit === 'in' ? 'As 8x8, 8x10, with commas between.' : 'As 200x200, 200x250, with commas between.'}
      />
      <details>
        <summary>Tick them in a grid</summary>
        <Grid unit={unit} />
      </details>
      <div class="shop-grid">
        <Select field="surface" label="Surface" options={SURFACES} />
        {draft['surface'] === 'planed' && (
          <NumberInput field="planedAdd" kind={NUMBERS.planedAdd} help="Empty: nothing." />
        )}
        <Select field="grade" label="Grade, where a wood names no other" options={GRADES} />
      </div>
    </>
  )
}

function Grid({ unit }: { readonly unit: SizeUnit }) {
  const { draft, set } = useSheet()
  const text = draft['sizes'] ?? ''
  const { sizes } = readSizes(text, unit)
  const ticked = new Set(sizes.map(([a, b]) => `${a}x${b}`))
  const sides = SIDES[unit]
  const other = sizes.filter(([a, b]) => !sides.includes(a) || !sides.includes(b)).length
  return (
    <div class="shop-matrix">
      <table>
        <caption>Breadth down, depth across, {unit}</caption>
        <thead>
          <tr>
            <td />
            {sides.map((depth) => (
              <th key={depth} scope="col">
                {depth}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sides.map((breadth) => (
            <tr key={breadth}>
              <th scope="row">{breadth}</th>
              {sides.map((depth) => (
                <td key={depth}>
                  {depth >= breadth && (
                    <input
                      type="checkbox"
                      aria-label={`${breadth} by ${depth}`}
                      checked={ticked.has(`${breadth}x${depth}`)}
                      onChange={(e) => set('sizes', toggleSize(text, unit, [breadth, depth], e.currentTarget.checked))}
                    />
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {other > 0 && <p class="note">{other} more in the list that the grid does not show.</p>}
    </div>
  )
}
