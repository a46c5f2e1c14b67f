/** What is charged for the work beside the timber, and how. */
import { WORK } from '../../data/shop-schema'
import { inventedIn } from '../../shop/sheet/draft'
import { RATE_NUMBERS, WORK_NAMES } from '../../shop/sheet/fields'
import { asList } from '../say/as-list'
import { NumberInput, Select } from './Fields'
import { Part } from './Part'
import { useSheet } from './use-sheet'
import { CHARGE_WORDS } from './words'

export function RatesPart() {
  const { draft } = useSheet()
  const invented = new Set(inventedIn(draft))
  return (
    <Part id="rates" title="Work beside the timber">
      <p>A share of the frame is taken of the timber and all work that is not itself such a share.</p>
      <ul class="shop-rates plain" {...asList}>
        {WORK.map((part) => {
          const kind = RATE_NUMBERS[draft[`rate.${part}.by`] ?? '']
          return (
            <li key={part}>
              <Select
                field={`rate.${part}.by`}
                label={
                  <>
                    {WORK_NAMES[part]}
                    {invented.has(`rate.${part}.value`) && <span class="mark mark--placeholder">placeholder</span>}
                  </>
                }
                options={CHARGE_WORDS}
              />
              {kind && (
                <NumberInput field={`rate.${part}.value`} kind={kind} label={`${WORK_NAMES[part]}: charge`} hideLabel />
              )}
            </li>
          )
        })}
      </ul>
    </Part>
  )
}
