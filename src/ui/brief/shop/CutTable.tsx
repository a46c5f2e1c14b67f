/** The cut list: every stick with its log, weight and board feet, what is bought, and what each part of the price adds. */
import type { CutList } from '../../../choice/detail-types'
import { Heads } from '../../say/Heads'
import { Q } from '../../say/Q'
import { Cell } from '../Cell'
import { Figures } from '../Figures'
import { Paragraphs } from '../Sentences'

const COLUMNS = [
  ['section', 'Section'],
  ['length', 'Length'],
  ['count', 'How many'],
  ['each', 'Each'],
  ['all', 'All'],
  ['log', 'Log, small end'],
  ['logLength', 'Log, length'],
  ['green', 'Weighs green'],
  ['delivered', 'Delivered']
] as const

function Price({ of, placeholder }: { readonly of: CutList; readonly placeholder: boolean }) {
  return (
    <table class="data data--stack shop-table shop-price">
      <caption>What the timber costs, by parts{placeholder && ', at the invented prices of a sample sheet'}</caption>
      <Heads words={['Part']} numbers={['Price', 'Of this list']} />
      <tbody>
        {of.price.map((line) => (
          <tr key={line.name}>
            <th scope="row">{line.name}</th>
            <Cell label="Price" num>
              <Q q={line.perVolume} plain />
            </Cell>
            <Cell label="Of this list" num>
              <Q q={line.sum} plain />
            </Cell>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

export function CutTable({
  of,
  what,
  placeholder
}: {
  readonly of: CutList
  readonly what: string
  readonly placeholder: boolean
}) {
  return (
    <>
      <table class="data data--stack shop-table">
        <caption>
          {what}, delivered at <Q q={of.moisture} />
        </caption>
        <Heads words={['Stick']} numbers={COLUMNS.map(([, label]) => label)} />
        <tbody>
          {of.lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">
                {line.name}
                {(line.longest || line.heaviest) && of.lines.length > 1 && (
                  <span class="soft">
                    {' '}
                    {[line.longest && 'longest', line.heaviest && 'heaviest'].filter(Boolean).join(', ')}
                  </span>
                )}
              </th>
              {COLUMNS.map(([key, label]) => (
                <Cell key={key} label={label} num>
                  <Q q={line[key]} />
                </Cell>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <Figures
        of={[
          ['Sticks, in all', of.net],
          ['Waste', of.waste],
          ['To buy', of.total],
          ['All sticks weigh, delivered', of.load],
          ['Timber cost', of.cost]
        ]}
      />
      <Paragraphs of={of.says} />
      {of.price.length > 1 && <Price of={of} placeholder={placeholder} />}
    </>
  )
}
