/** The drying plan: each step with its month, its weeks, how wet the main timber then is, and what to see to. */
import type { Brief } from '../../../choice/brief-types'
import { Q } from '../../say/Q'
import { Say } from '../../say/Say'
import { Cell } from '../Cell'
import { Paragraphs } from '../Sentences'

const WET = [
  ['mean', 'Mean'],
  ['core', 'Core'],
  ['toCome', 'Still to shrink']
] as const

/** A page without script leaves out how wet it is: the brief's part on drying tells that above. */
export function PlanTable({ brief, still }: { readonly brief: Brief; readonly still: boolean }) {
  const columns = still ? [] : WET
  const { lines, says } = brief.detail.plan
  const wet = (moment: string | null) => brief.clock.lines.find((line) => line.id === moment)
  return (
    <>
      <Paragraphs of={says} />
      <table class="data data--stack shop-table shop-plan">
        <caption>From felling on</caption>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">Month</th>
            <th scope="col">After</th>
            <th scope="col">To the raising</th>
            {columns.map(([key, label]) => (
              <th key={key} scope="col" class="num">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => {
            const at = wet(line.moment)
            return (
              <tr key={line.id}>
                <th scope="row">
                  {line.label}
                  <span class="plan-says">
                    <Say s={line.says} bare />
                  </span>
                </th>
                <Cell label="Month">{line.month}</Cell>
                <Cell label="After">
                  <Q q={line.after} />
                </Cell>
                <Cell label="To the raising">{line.before === null ? '–' : <Q q={line.before} />}</Cell>
                {columns.map(([key, label]) => (
                  <Cell key={key} label={label} num>
                    {at === undefined ? '–' : <Q q={at[key]} />}
                  </Cell>
                ))}
              </tr>
            )
          })}
        </tbody>
      </table>
    </>
  )
}
