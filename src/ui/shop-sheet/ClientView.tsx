/** A brief in small: what leads, what each wood comes to, and the shop's own words as they are read. */
import type { Brief } from '../../choice/brief-types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { howOf } from '../brief/names'
import { asList } from '../say/as-list'
import { Heads } from '../say/Heads'
import { type Library, LibraryProvider } from '../say/library'
import { Q } from '../say/Q'
import { Say } from '../say/Say'

const MOST = 8

interface Props {
  readonly brief: Brief
  readonly sheet: ShopSheetContent
  readonly library: Library
}
export function ClientView({ brief, sheet, library }: Props) {
  const still = brief.woods.filter((line) => line.in)
  const out = brief.woods.filter((line) => !line.in)
  return (
    <LibraryProvider value={library}>
      <p class="shop-lead">
        <Say s={brief.headline} bare />
      </p>
      {still.length > 0 && (
        <table class="data shop-woods">
          <caption>
            At its best, each.{' '}
            {sheet.placeholder ? 'All prices are placeholders.' : 'The main timbers cut and raised, by your rates.'}
          </caption>
          <Heads words={['Wood']} numbers={['Timber', 'Whole job']} />
          <tbody>
            {still.slice(0, MOST).map(({ species, report }) => (
              <tr key={species} class={species === brief.lead?.option.species ? 'lead' : undefined}>
                <th scope="row">
                  {report.short}
                  <span class="shop-how">{howOf(report)}</span>
                </th>
                <td class="num">
                  <Q q={report.figures.timberCost} plain />
                </td>
                <td class="num">
                  <Q q={report.figures.jobCost} plain />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {still.length > MOST && <p class="note">and {still.length - MOST} more that can do it.</p>}
      {out.length > 0 && (
        <details>
          <summary>
            {out.length} {out.length === 1 ? 'wood goes' : 'woods go'} out for this job
          </summary>
          <ul class="list" {...asList}>
            {out.map((line) => (
              <li key={line.species}>
                <b>{line.wood}.</b> <Say s={line.says} bare />
              </li>
            ))}
          </ul>
        </details>
      )}
      <dl class="title-block">
        <div class="wide">
          <dt>Shop sheet</dt>
          <dd>
            <b>{sheet.name}</b>
            {sheet.contact && <span class="shop-lines">{sheet.contact}</span>}
          </dd>
        </div>
      </dl>
      {sheet.note && <p class="shop-lines">{sheet.note}</p>}
      {sheet.cautions?.map((caution) => (
        <p key={caution} class="caution">
          {caution}
        </p>
      ))}
    </LibraryProvider>
  )
}
