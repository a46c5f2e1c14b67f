/**
 * From the order to a settled frame: a row of stages for each way of drying on one line of months, the client's date
 * across them. Stages are told apart by outline and hatching, moments by shape, so that print and forced colours lose
 * nothing.
 */
import type { Schedule, ScheduleMarkId, ScheduleRow, ScheduleStageId } from '../../choice/schedule/types'
import { formatUs } from '../format/quantity'
import { plainSentence } from '../say/sentence'
import { Both, Pic, T } from './parts'
import {
  BAR,
  LEFT,
  LETTERS,
  lastWeek,
  monthTicks,
  nameOf,
  placeKey,
  placeRows,
  SAMPLE,
  SHEET,
  shownMarks,
  TOP,
  weekAt,
  widthOf,
  winterWeeks
} from './timetable-scale'
import './timetable.css'

/** A drawing unit is as fine as a pen here. */
const fix = Math.round

/** What stands for the drawing where it is read out. */
export function timetableSays({ rows }: Schedule): string {
  const told = rows.map((row) => `${row.name} ${row.stages.length === 0 ? 'ruled out' : formatUs(row.ready)}`)
  return `Time from the order until it can be raised: ${told.join('; ')}. The list below tells all of it.`
}

export function Timetable({ of }: { readonly of: Schedule }) {
  const end = lastWeek(of)
  const x = weekAt(end)
  const { rows, foot } = placeRows(of.rows)
  const key = placeKey(of.rows, end, foot + LETTERS + 6)
  const ticks = monthTicks(of, end)
  return (
    <div class="timetable">
      <Pic says={timetableSays(of)} w={SHEET} h={(key.at(-1)?.y ?? foot) + 6}>
        {of.named &&
          winterWeeks(of.orderDay, end).map(([a, b]) => (
            <rect
              key={a}
              class="clock-winter"
              x={fix(x(a))}
              y={TOP}
              width={fix(x(b) - x(a))}
              height={fix(foot - TOP)}
            />
          ))}
        <path
          class="rule"
          d={ticks.map((t) => `M${fix(t.x)} ${TOP}${t.label === null ? 'v-4' : `v-9V${fix(foot)}`}`).join('')}
        />
        <path class="seen" d={`M${LEFT} ${TOP}H${fix(x(end))}M${LEFT} ${fix(foot)}H${fix(x(end))}`} />
        {rows.map(({ row, bar }) => (
          <Bars key={row.option} row={row} x={x} y={bar} end={end} />
        ))}
        {of.dateWeek !== null && (
          <>
            <path class="timetable-date" d={`M${fix(x(of.dateWeek))} 17V${fix(foot)}`} />
            <T
              x={fix(Math.max(widthOf(DATE), Math.min(SHEET - 3, x(of.dateWeek) + widthOf(DATE) / 2)))}
              y={12}
              at="end"
              chalk
            >
              {DATE}
            </T>
          </>
        )}
        {ticks.map(
          (t) =>
            t.label !== null && (
              <T key={t.x} x={fix(t.x + 3)} y={TOP - 4} at="start" halo>
                {t.label}
              </T>
            )
        )}
        {rows.map(({ row, name, told }) => (
          <g key={row.option}>
            <T x={LEFT} y={fix(name)} at="start" ink halo>
              {nameOf(row)}
            </T>
            <T x={told === name ? fix(x(end)) : LEFT} y={fix(told)} at={told === name ? 'end' : 'start'} halo>
              <Both us={plainSentence(row.short, 'us')} si={plainSentence(row.short, 'si')} />
            </T>
          </g>
        ))}
        {key.map(({ of: { id, label }, x: left, y }) => (
          <g key={id}>
            {isStage(id) ? (
              <Stage id={id} from={left} to={left + SAMPLE} y={y - 10} high={11} />
            ) : (
              <Mark id={id} x={left + SAMPLE / 2} y={y - 4.5} />
            )}
            <T x={fix(left + SAMPLE + 5)} y={fix(y)} at="start">
              {label}
            </T>
          </g>
        ))}
      </Pic>
    </div>
  )
}

const DATE = 'your date'

/** What the key cannot leave to the caption. */
export const goesOn = (of: Schedule): boolean => of.rows.some((row) => row.marks.some((m) => m.week > lastWeek(of)))

interface BarsProps {
  readonly row: ScheduleRow
  readonly x: (week: number) => number
  readonly y: number
  readonly end: number
}
function Bars({ row, x, y, end }: BarsProps) {
  if (row.stages.length === 0) return null
  const shown = shownMarks(row, end)
  const beyond = row.marks.some((m) => m.week > end)
  const mid = y + BAR / 2
  const stop = beyond ? end : Math.max(...shown.map((m) => m.week))
  return (
    <g class={row.in ? undefined : 'dimmed'}>
      <path
        class="seen"
        d={`M${fix(x(shown[0]?.week ?? 0))} ${fix(mid)}H${fix(x(stop))}${beyond ? 'l-5-4m5 4l-5 4' : ''}`}
      />
      {row.stages.map(({ id, label, from, to }) => (
        <g key={id}>
          <Stage id={id} from={x(from)} to={x(to)} y={y} high={BAR} />
          {id !== 'joinery' && x(to) - x(from) > widthOf(label) + 10 && (
            <T x={fix((x(from) + x(to)) / 2)} y={fix(mid + 5)} ink halo>
              {label}
            </T>
          )}
        </g>
      ))}
      {shown.map((mark) => (
        <Mark key={mark.id} id={mark.id} x={x(mark.week)} y={mid} />
      ))}
    </g>
  )
}

const FILL: Readonly<Record<ScheduleStageId, string>> = {
  asked: 'hid f-paper',
  lead: 'seen f-paper',
  yard: 'seen f-pale',
  kiln: 'seen f-wood',
  vacuum: 'seen f-wood',
  joinery: 'seen f-ink',
  waits: 'dim f-paper'
}
const isStage = (id: string): id is ScheduleStageId => id in FILL
/** Lean of the strokes: the yard slants, the kiln stands, the vacuum slants the other way. */
const LEAN: Partial<Record<ScheduleStageId, number>> = { yard: 8, kiln: 0, vacuum: -8 }

interface StageProps {
  readonly id: ScheduleStageId
  readonly from: number
  readonly to: number
  readonly y: number
  readonly high: number
}
function Stage({ id, from, to, y, high }: StageProps) {
  const lean = LEAN[id]
  // What lies cut does nothing: a low box.
  const [top, tall] = id === 'waits' ? [y + high * 0.3, high * 0.4] : [y, high]
  const width = Math.max(1.5, to - from)
  return (
    <>
      <rect class={FILL[id]} x={fix(from)} y={fix(top)} width={fix(width)} height={fix(tall)} />
      {lean !== undefined && <path class="dim" d={strokes(lean, from, from + width, y, high)} />}
    </>
  )
}

function strokes(lean: number, from: number, to: number, y: number, high: number): string {
  const step = lean === 0 ? 4 : 9
  let d = ''
  for (let at = from + 2 + Math.max(0, -lean); at + Math.max(0, lean) <= to - 1; at += step) {
    d += `${d === '' ? `M${fix(at)} ${fix(y + high)}` : `m${step - lean} ${high}`}l${lean} ${-high}`
  }
  return d
}

interface MarkProps {
  readonly id: ScheduleMarkId
  readonly x: number
  readonly y: number
}
function Mark({ id, x, y }: MarkProps) {
  switch (id) {
    case 'raised':
      return <path class="cut" d={`M${fix(x)} ${fix(y - 8)}v16`} />
    case 'heated':
      return <circle class="seen f-paper" cx={fix(x)} cy={fix(y)} r="4.5" />
    case 'outside':
      return <path class="seen f-paper" d={`M${fix(x)} ${fix(y - 6)}l5 6-5 6-5-6z`} />
    case 'settled':
      return <rect class="f-ink" x={fix(x - 4)} y={fix(y - 4)} width="8" height="8" />
  }
}
