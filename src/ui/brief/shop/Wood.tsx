/** One wood opened: its figures, its cut list, how it moves, how its joints are set out, and every check. */
import { useState } from 'preact/hooks'
import type { WoodDetail } from '../../../choice/detail-types'
import type { JointLine, OptionReport } from '../../../choice/types'
import { useShelf } from '../../say/shelf'
import { Figures } from '../Figures'
import { Joints } from '../Movement'
import { FIGURE_NAMES, howOf } from '../names'
import { Paragraphs } from '../Sentences'
import { Checks } from './Checks'
import { CutTable } from './CutTable'
import { MoveTable } from './MoveTable'
import { SetOuts } from './SetOuts'

export const whatOf = (report: OptionReport): string => `${report.wood}, ${howOf(report)}`

interface TimberProps {
  readonly report: OptionReport
  readonly detail: WoodDetail
  readonly joints: readonly JointLine[]
  readonly placeholder: boolean
}

/** Cut list, movement and joints. */
export function Timber({ report, detail, joints, placeholder }: TimberProps) {
  return (
    <>
      <h3>Cut list</h3>
      <CutTable of={detail.cutList} what={whatOf(report)} placeholder={placeholder} />
      <h3>Movement and joints</h3>
      <MoveTable of={detail.moves} />
      <Paragraphs of={detail.movesSay} />
      {joints.length > 0 && (
        <div class="shop-gaps">
          <Joints of={joints} />
        </div>
      )}
      <SetOuts of={detail.setOut} />
    </>
  )
}

interface Props {
  readonly report: OptionReport
  /** null for the leading wood, whose timber stands above in full. */
  readonly detail: WoodDetail | null
  readonly placeholder: boolean
}

/** Drawn when it is first opened; a page without script carries it from the start, without its timber. */
export function Wood({ report, detail, placeholder }: Props) {
  const still = useShelf() !== null
  const [opened, open] = useState(false)
  return (
    <details class="detail" onToggle={(event) => event.currentTarget.open && open(true)}>
      <summary>
        {whatOf(report)}
        {report.rank !== null && <span class="soft"> · {report.rank === 1 ? 'leads' : `no. ${report.rank}`}</span>}
      </summary>
      {(still || opened) && (
        <div class="stack">
          {!still && (
            <Figures
              of={(Object.keys(FIGURE_NAMES) as (keyof typeof FIGURE_NAMES)[]).map(
                (key) => [FIGURE_NAMES[key], report.figures[key]] as const
              )}
            />
          )}
          {!still && detail && (
            <Timber report={report} detail={detail} joints={detail.joints} placeholder={placeholder} />
          )}
          <Checks report={report} reasons={!still} />
        </div>
      )}
    </details>
  )
}
