/** For the framer: every check of every member, option by option, with demand, capacity and ratio. */

import type { Brief, MemberReport, OptionReport } from '../../choice/types'
import { asList } from '../say/as-list'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { Cell } from './Cell'
import { Figures } from './Figures'
import { FIGURE_NAMES, howOf } from './names'
import { Section } from './Section'

function Member({ member }: { readonly member: MemberReport }) {
  return (
    <div class="stack member">
      <h3>
        {member.name}
        {member.section && (
          <>
            , <Q q={member.section} />
          </>
        )}
      </h3>
      <p>
        <Say s={member.says} />
      </p>
      {member.checks.length > 0 && (
        <table class="data data--stack">
          <thead>
            <tr>
              <th scope="col">Check</th>
              <th scope="col" class="num">
                Demand
              </th>
              <th scope="col" class="num">
                Capacity
              </th>
              <th scope="col" class="num">
                Ratio
              </th>
            </tr>
          </thead>
          <tbody>
            {member.checks.map((check) => (
              <tr key={check.id} class={check.id === member.governing ? 'lead' : ''}>
                <th scope="row">
                  {check.name}
                  {check.id === member.governing && <span class="soft"> governs</span>}
                </th>
                <Cell label="Demand" num>
                  <Q q={check.demand} />
                </Cell>
                <Cell label="Capacity" num>
                  <Q q={check.capacity} />
                </Cell>
                <Cell label="Ratio" num>
                  <Q q={check.ratio} />
                  {!check.passes && <b> fails</b>}
                </Cell>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  )
}

function Detail({ report }: { readonly report: OptionReport }) {
  const { figures } = report
  return (
    <details class="detail">
      <summary>
        {report.wood}, {howOf(report)}
        {report.rank !== null && <span class="soft"> · {report.rank === 1 ? 'leads' : `no. ${report.rank}`}</span>}
      </summary>
      <div class="stack">
        <Figures
          of={(Object.keys(FIGURE_NAMES) as (keyof typeof figures)[]).map(
            (key) => [FIGURE_NAMES[key], figures[key]] as const
          )}
        />
        {report.members.map((member) => (
          <Member key={member.id} member={member} />
        ))}
        {report.reasons.length > 0 && (
          <ul class="list plain" {...asList}>
            {report.reasons.map((reason) => (
              <li key={reason.rule}>
                <b>{({ out: 'Out', caution: 'Caution', favour: 'For it' } as const)[reason.effect]}.</b>{' '}
                <Say s={reason.says} />
              </li>
            ))}
          </ul>
        )}
      </div>
    </details>
  )
}

/** The leading options; the others are one edit of an answer away. */
const MOST = 5

export function ShopDetail({ brief }: { readonly brief: Brief }) {
  const reports = brief.woods.map((line) => line.report)
  const first = [brief.lead, brief.runnerUp].filter((report) => report !== null)
  const shown = [...first, ...reports.filter((report) => !first.some((f) => f.option.id === report.option.id))].slice(
    0,
    MOST
  )
  return (
    <Section
      id="shop"
      title="Shop detail"
      margin={
        <p>For the framer: open a wood for its checks, with demand, capacity and ratio. A ratio of 1 is used up.</p>
      }
    >
      {shown.map((report) => (
        <Detail key={report.option.id} report={report} />
      ))}
    </Section>
  )
}
