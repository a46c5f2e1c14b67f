/** Every check of every member of an option, with demand, capacity and ratio, and every reason for and against it. */
import type { MemberReport, OptionReport } from '../../../choice/types'
import { asList } from '../../say/as-list'
import { Heads } from '../../say/Heads'
import { Q } from '../../say/Q'
import { Say } from '../../say/Say'
import { Cell } from '../Cell'

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
          <Heads words={['Check']} numbers={['Demand', 'Capacity', 'Ratio']} />
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

/** The reasons of the leading wood stand in other parts of the brief already. */
export function Checks({ report, reasons }: { readonly report: OptionReport; readonly reasons: boolean }) {
  return (
    <>
      {report.members.map((member) => (
        <Member key={member.id} member={member} />
      ))}
      {reasons && report.reasons.length > 0 && (
        <ul class="list plain" {...asList}>
          {report.reasons.map((reason) => (
            <li key={reason.rule}>
              <b>{({ out: 'Out', caution: 'Caution', favour: 'For it' } as const)[reason.effect]}.</b>{' '}
              <Say s={reason.says} />
            </li>
          ))}
        </ul>
      )}
    </>
  )
}
