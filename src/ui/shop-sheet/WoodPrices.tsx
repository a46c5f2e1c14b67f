/** The woods that are carried: a price each, and behind "more" what this shop's differ in from the trade's. */
import { carriedIn, inventedIn } from '../../shop/sheet/draft'
import { WOOD_NUMBERS } from '../../shop/sheet/fields'
import { asList } from '../say/as-list'
import { NumberInput, Select, TextField, Tick } from './Fields'
import type { Both } from './given'
import { useSheet } from './use-sheet'
import { GRADES } from './words'

export function WoodPrices() {
  const { draft } = useSheet()
  const carried = carriedIn(draft)
  const invented = new Set(inventedIn(draft))
  if (carried.length === 0) return null
  return (
    <div class="stack">
      <h3>Prices per board foot, green and boxed</h3>
      <ul class="shop-prices plain" {...asList}>
        {carried.map((id) => (
          <Wood key={id} id={id} invented={invented.has(`wood.${id}.price`)} />
        ))}
      </ul>
    </div>
  )
}

function Wood({ id, invented }: { readonly id: string; readonly invented: boolean }) {
  const { given, nameOf } = useSheet()
  const trade = given.woods.find((wood) => wood.id === id)?.trade
  const name = nameOf(id)
  const of = <span class="visually-hidden">, {name}</span>
  return (
    <li>
      <NumberInput
        field={`wood.${id}.price`}
        kind={WOOD_NUMBERS.price}
        label={
          <>
            {name}
            {invented && (
              <>
                {' '}
                <span class="mark mark--placeholder">placeholder</span>
              </>
            )}
          </>
        }
      />
      <Tick field={`wood.${id}.request`} label={<>Only on request{of}</>} />
      <details>
        <summary>
          More<span class="visually-hidden"> on {name}</span>
        </summary>
        <div class="shop-more">
          <Select
            field={`wood.${id}.free`}
            label={<>Free of heart centre{of}</>}
            options={[
              ['', `As in the trade${trade ? ` (${trade.free})` : ''}`],
              ['usual', 'We usually get it'],
              ['request', 'On request'],
              ['no', 'We do not offer it']
            ]}
          />
          <NumberInput
            field={`wood.${id}.freeAdd`}
            kind={WOOD_NUMBERS.freeAdd}
            label={<>…adds{of}</>}
            help="Empty: as for all woods."
          />
          <NumberInput
            field={`wood.${id}.longest`}
            kind={WOOD_NUMBERS.longest}
            label={<>Longest{of}</>}
            help={trade && <Trade of={trade.longest} />}
          />
          <TextField
            field={`wood.${id}.largest`}
            label={<>Largest section, in inches{of}</>}
            help={trade && <Trade of={trade.largest} />}
          />
          <Select field={`wood.${id}.grade`} label={<>Grade{of}</>} options={[['', 'As for all woods'], ...GRADES]} />
          <TextField field={`wood.${id}.note`} label={<>A note{of}</>} />
        </div>
      </details>
    </li>
  )
}

const Trade = ({ of }: { readonly of: Both }) => (
  <>
    Empty: as in the trade, <span class="us">{of.us}</span>
    <span class="si">{of.si}</span>.
  </>
)
