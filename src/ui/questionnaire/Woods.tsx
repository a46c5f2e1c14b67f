/** What the answers settle: the woods still in, the one that leads, and those that went out with the reason. */
import { useEffect, useState } from 'preact/hooks'
import type { Settled } from '../../choice/settle'
import type { Answers } from '../../choice/types'
import { SizeCaution } from '../site/SizeCaution'
import type { Learnt } from './field-props'
import { LeftOpen } from './LeftOpen'
import { useSettled } from './use-settled'
import { WoodList } from './WoodList'

export function summaryOf(settled: Settled): string {
  const leader = settled.woods.find((wood) => wood.lead)
  const counts = `${settled.inCount} wood${settled.inCount === 1 ? '' : 's'} in, ${settled.outCount} out`
  return leader === undefined ? counts : `${counts}, ${leader.short} leads`
}

/** Some words on a wood name a section. */
const sized = ({ says }: Settled['woods'][number]): boolean =>
  Object.values(says.values ?? {}).some((q) => q.kind === 'section')

/** Whether there is room beside the question. */
function useWide(): boolean {
  const [wide, setWide] = useState(() => matchMedia('(min-width: 60rem)').matches)
  useEffect(() => {
    const room = matchMedia('(min-width: 60rem)')
    const follow = () => setWide(room.matches)
    room.addEventListener('change', follow)
    return () => room.removeEventListener('change', follow)
  }, [])
  return wide
}

interface Props {
  readonly answers: Answers
  readonly onLearn: (learnt: Learnt) => void
}

/** Beside the question where there is room, always open; a line at the top of a phone, opened by a press. */
export function Woods({ answers, onLearn }: Props) {
  const { settled, news, failed, retry } = useSettled(answers, onLearn)
  const wide = useWide()
  const [open, setOpen] = useState(wide)
  useEffect(() => setOpen(wide), [wide])
  return (
    <aside
      class={settled === null && !failed ? 'settled settled--none' : 'settled'}
      aria-label="What your answers settle"
    >
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary tabIndex={wide ? -1 : 0}>
          <span class="label">What your answers settle</span>
          {settled !== null && <span class="settled-line">{summaryOf(settled)}</span>}
        </summary>
        {failed && (
          <div class="notice">
            <p>The numbers about wood could not be loaded. Your answers are kept.</p>
            <button type="button" class="btn btn--small" onClick={retry}>
              Try again
            </button>
          </div>
        )}
        {settled !== null && (
          <>
            <LeftOpen />
            <WoodList settled={settled} />
            {settled.woods.some(sized) && <SizeCaution small />}
          </>
        )}
      </details>
      <p class="visually-hidden" role="status">
        {news}
      </p>
    </aside>
  )
}
