/** A brief that was worked out here, with all that can be done with it. */
import { $invite } from '../../stores/invite'
import { useSaved } from '../../stores/use-saved'
import { givenIn } from '../invite/marks'
import { ShopLine } from '../invite/ShopLine'
import { useGlossary } from '../words/load'
import { GlossaryProvider } from '../words/scope'
import { Actions } from './Actions'
import { BriefView } from './BriefView'
import { codeOf } from './code'
import { useWhatIf } from './use-what-if'
import type { Worked } from './worked'

export function WorkedBrief({ shown }: { readonly shown: Worked }) {
  const { brief, compare, engine, linked, from, given } = shown
  const { sheet } = engine
  const whatIf = useWhatIf(engine, brief.answers)
  const invite = useSaved($invite)
  const mine = from === 'invite' && !linked && invite !== null ? givenIn(invite, brief.answers) : undefined
  const code = codeOf(brief.answers, from === 'sample' ? null : sheet, given ?? mine)
  return (
    <GlossaryProvider value={useGlossary()}>
      <BriefView
        key={JSON.stringify(brief.answers)}
        brief={brief}
        compare={compare}
        library={engine.library}
        whatIf={whatIf}
        code={code}
        given={given ?? mine}
        actions={
          <>
            <ShopLine sheet={sheet} sample={from === 'sample'} />
            <Actions
              brief={brief}
              sheet={sheet}
              code={code}
              sample={from === 'sample'}
              linked={linked}
              invited={from === 'invite' && !linked}
              sheetLinked={from === 'link'}
            />
          </>
        }
      />
    </GlossaryProvider>
  )
}
