/** What it costs: the bill of the leading option, and every wood's timber and whole, always both. */
import type { Brief } from '../../choice/brief-types'
import type { CostLine } from '../../choice/types'
import { formatUs } from '../format/quantity'
import { CostBars } from '../pictures/bars'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

/** Enough to compare; the table of all woods has the rest. */
const MOST = 5

const amount = (q: CostLine['job']): number => (typeof q.value === 'number' ? q.value : 0)

/** The leading woods, and the cheapest wherever it stands. */
function shownOf(woods: readonly CostLine[]): readonly CostLine[] {
  const first = woods.slice(0, MOST)
  return [...first, ...woods.slice(MOST).filter((line) => line.adds === null)]
}

export function Cost({ brief }: { readonly brief: Brief }) {
  const { lead, cost } = brief
  const lines = shownOf(cost.woods)
  const placeholder = brief.shop.placeholder && <> Placeholder prices.</>
  return (
    <Section
      id="cost"
      title="What it costs"
      margin={
        <>
          {brief.shop.placeholder && (
            <p>
              <b>Invented prices.</b> They come from a sample sheet, to show how the parts compare. Your framer has the
              real ones.
            </p>
          )}
          {cost.total !== null && (
            <dl class="bill">
              {[...cost.bill, { name: FIGURE_NAMES.jobCost, cost: cost.total }].map(({ name, cost: part }) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd class="num">
                    <Q q={part} plain={brief.shop.placeholder} />
                  </dd>
                </div>
              ))}
            </dl>
          )}
        </>
      }
    >
      <Paragraphs of={cost.says} />
      {lines.length > 1 && (
        <div class="two cost-pair">
          <figure class="figure brief-figure">
            <CostBars
              items={lines.map((line) => ({
                label: line.short,
                timber: amount(line.timber),
                rest: amount(line.job) - amount(line.timber),
                text: `${formatUs(line.timber)} of ${formatUs(line.job)}`,
                lead: line.option === lead?.option.id
              }))}
            />
            <figcaption>Timber, of the whole.{placeholder}</figcaption>
          </figure>
          <table class="data cost-table">
            <caption>What each adds to the cheapest that does the job: to its timber, and to the whole.</caption>
            <Heads words={['Wood']} numbers={['to the timber', 'to the whole']} />
            <tbody>
              {lines.map(({ option, short, adds }) => (
                <tr key={option} class={option === lead?.option.id ? 'lead' : ''}>
                  <th scope="row">{short}</th>
                  {adds === null ? (
                    <td class="num soft" colSpan={2}>
                      the cheapest
                    </td>
                  ) : (
                    <>
                      <td class="num">
                        <Q q={adds.timber} plain />
                      </td>
                      <td class="num">
                        <Q q={adds.job} plain />
                      </td>
                    </>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </Section>
  )
}
