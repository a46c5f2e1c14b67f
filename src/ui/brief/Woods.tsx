/** Every wood of the shop, accounted for: those still in by rank, then those that went out with every reason. */

import type { Brief } from '../../choice/brief-types'
import { bare, lean, middle } from '../../choice/say'
import type { WoodLine } from '../../choice/types'
import type { Quantity } from '../../data/quantity'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { useShelf } from '../say/shelf'
import { Cell } from './Cell'
import { howOf } from './names'
import { Out } from './Out'

function Row({ line, lead }: { readonly line: WoodLine; readonly lead: boolean }) {
  const { figures } = line.report
  // A page without script carries every note: there the first choice alone tells what went into its figures.
  const brief = useShelf() !== null && !lead
  const own = (q: Quantity) => (brief ? bare(q) : q)
  return (
    <tr class={lead ? 'lead' : line.in ? '' : 'out'}>
      <th scope="row">
        {line.wood}
        {line.note !== null && <span class="soft wood-note">{line.note}</span>}
      </th>
      <Cell label="As">{howOf(line.report)}</Cell>
      <Cell label="Section" num>
        <Q q={own(figures.section)} />
      </Cell>
      <Cell label="Joint gap" num>
        <Q q={own(figures.shoulderGap)} />
      </Cell>
      <Cell label="Whole job, about" num>
        <Q q={own(middle(figures.jobCost))} plain />
      </Cell>
      <Cell label="In a word">
        <Say s={brief ? lean(line.says) : line.says} />
      </Cell>
    </tr>
  )
}

export function Woods({ brief }: { readonly brief: Brief }) {
  const still = brief.woods.filter((line) => line.in)
  const out = brief.woods.filter((line) => !line.in)
  return (
    <section class="sheet" id="woods" aria-labelledby="woods-title">
      <div class="stack bleed">
        <h2 id="woods-title">Every wood of this shop</h2>
        <p>
          {out.length === 0
            ? `${still.length === 1 ? 'It' : `All ${still.length}`} can do this job.`
            : `${still.length} can do this job, ${out.length} cannot.`}{' '}
          Each stands here at its best.
          {brief.shop.placeholder && <> The prices are invented placeholders, good only to compare.</>}
        </p>
        {still.length > 0 && (
          <table class="data data--stack woods-table">
            <Heads words={['Wood', 'As']} numbers={['Section', 'Joint gap', 'Whole job, about']} rest={['In a word']} />
            <tbody>
              {still.map((line) => (
                <Row key={line.species} line={line} lead={line.species === brief.lead?.option.species} />
              ))}
            </tbody>
          </table>
        )}
        {out.length > 0 && (
          <>
            <h3>What went out, and why</h3>
            <Out lines={out} />
          </>
        )}
      </div>
    </section>
  )
}
