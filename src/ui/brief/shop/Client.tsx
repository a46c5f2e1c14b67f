/** About the client: what matters most to them, and what they were unsure of. */
import type { ClientDetail } from '../../../choice/detail-types'
import { Heads } from '../../say/Heads'
import { Q } from '../../say/Q'
import { Say } from '../../say/Say'
import { Cell } from '../Cell'
import { List } from '../Sentences'

export function Client({ of }: { readonly of: ClientDetail }) {
  const tried = of.unsure.filter((line) => line.says !== null)
  const rest = of.unsure.filter((line) => line.says === null)
  return (
    <>
      <div class="two">
        <List of={of.says} />
        <table class="data">
          <caption>
            {of.ordered ? 'What matters, in their order' : 'What matters: not put in order, so all alike'}
          </caption>
          <Heads words={['Point']} numbers={['Weighs']} />
          <tbody>
            {of.matters.map((line) => (
              <tr key={line.criterion}>
                <th scope="row">{line.name}</th>
                <td class="num">
                  <Q q={line.weight} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {tried.length > 0 && (
        <table class="data data--stack shop-unsure">
          <caption>What they were unsure of</caption>
          <thead>
            <tr>
              <th scope="col">Question</th>
              <th scope="col">Taken instead</th>
              <th scope="col">What it could change</th>
            </tr>
          </thead>
          <tbody>
            {tried.map((line) => (
              <tr key={line.label}>
                <th scope="row">{line.label}</th>
                <Cell label="Taken instead">
                  <Say s={line.assumed} bare />
                </Cell>
                <Cell label="Could change">{line.says && <Say s={line.says} />}</Cell>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {rest.length > 0 && (
        <p>
          {tried.length > 0 ? 'Also left open' : 'Left open'}, and taken as “What you told us” has it:{' '}
          {rest.map((line) => line.label.toLowerCase()).join(', ')}.
        </p>
      )}
    </>
  )
}
