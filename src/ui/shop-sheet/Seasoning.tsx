/** Ways of seasoning: what each adds and how long it takes, and the weeks that follow. */
import { ON } from '../../shop/sheet/draft'
import { SEASON_NAMES, SEASON_NUMBERS, SEASONS } from '../../shop/sheet/fields'
import { asList } from '../say/as-list'
import { NumberInput, Tick, Word } from './Fields'
import { Once } from './Once'
import { Part } from './Part'
import { idOf, useSheet, useWrong } from './use-sheet'

export function SeasoningPart() {
  const { draft } = useSheet()
  const on = SEASONS.filter((id) => draft[`season.${id}`] === ON)
  const told = on.map((id) => `${SEASON_NAMES[id]} in ${draft[`season.${id}.weeks`] ?? '–'} weeks`).join(', ')
  return (
    <Part
      id="seasoning"
      title="Seasoning and lead times"
      wrong={useWrong('season', 'requestWeeks', 'joineryWeeks')}
      brief={`${told || 'None'}; then ${draft['joineryWeeks'] ?? '–'} weeks of joinery; woods on request ${draft['requestWeeks'] ?? '–'} weeks more.`}
    >
      <ul class="shop-seasons plain" {...asList} id={idOf('seasons')} tabIndex={-1}>
        {SEASONS.map((id) => (
          <li key={id}>
            <Tick field={`season.${id}`} label={SEASON_NAMES[id]} />
            {draft[`season.${id}`] === ON && (
              <div class="shop-grid">
                {(['cost', 'weeks', ...(id === 'air' ? (['yard'] as const) : [])] as const).map((of) => (
                  <NumberInput
                    key={of}
                    field={`season.${id}.${of}`}
                    kind={SEASON_NUMBERS[of]}
                    label={
                      <>
                        {SEASON_NUMBERS[of].label}
                        <span class="visually-hidden">, {SEASON_NAMES[id]}</span>
                      </>
                    }
                  />
                ))}
              </div>
            )}
          </li>
        ))}
      </ul>
      <Word field="seasons" />
      <div class="shop-grid">
        <Once field="joineryWeeks" />
        <Once field="requestWeeks" />
      </div>
    </Part>
  )
}
