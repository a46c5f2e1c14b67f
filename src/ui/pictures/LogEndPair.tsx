/** Boxed heart beside free of heart centre, to one scale, so that the larger log shows. */
import type { LogEnd } from '../../choice/types'
import { LogEndPicture } from './LogEndPicture'
import { sampleLogEnd } from './samples'

interface Props {
  readonly logEnds?: readonly LogEnd[] | undefined
  readonly dim?: LogEnd['heart'] | undefined
  readonly dims?: boolean
  /** A line under each name. */
  readonly notes?: Readonly<Record<LogEnd['heart'], string>> | undefined
}

/** An 8 in square of a wood that shrinks about as most framing woods do, from green to a heated room. */
const sample = (): LogEnd[] => [sampleLogEnd('boxed', 203, 0.031, 0.05), sampleLogEnd('free', 203, 0.031, 0.05)]

export function LogEndPair({ logEnds, dim, dims = false, notes }: Props) {
  const pair = logEnds && logEnds.length > 0 ? logEnds : sample()
  const reach = Math.max(...pair.map((l) => l.logRadius)) * 1.03
  return (
    <div class="pair">
      {pair.map((logEnd) => (
        <div key={logEnd.heart} class={dim === logEnd.heart ? 'faint' : undefined}>
          <LogEndPicture logEnd={logEnd} reach={reach} dims={dims} letters={20} />
          <p class="pair-name">{logEnd.heart === 'boxed' ? 'Boxed heart' : 'Free of heart'}</p>
          {notes && <p class="pair-note">{notes[logEnd.heart]}</p>}
        </div>
      ))}
    </div>
  )
}
