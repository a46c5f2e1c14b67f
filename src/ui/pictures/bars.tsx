/** Bars that compare: scores against what matters, costs against the whole job. */
import type { Criterion } from '../../choice/types'
import { Pic, T } from './parts'

export interface ScoreProps {
  readonly scores: Readonly<Partial<Record<Criterion, number>>>
  readonly weights: Readonly<Partial<Record<Criterion, number>>>
  readonly labels?: Readonly<Partial<Record<Criterion, string>>>
  /** Another option's scores, drawn as a mark on each bar. */
  readonly against?: Readonly<Partial<Record<Criterion, number>>>
}

const NAMES: Readonly<Record<Criterion, string>> = {
  cost: 'Cost',
  movement: 'Stays put',
  durability: 'Lasts',
  look: 'Look',
  stoutness: 'Slender',
  time: 'Time',
  local: 'Local'
}

/** Length is the score, thickness the weight: so the area of a bar is what it adds. */
export function ScoreBars({ scores, weights, labels = {}, against }: ScoreProps) {
  const rows = (Object.keys(NAMES) as Criterion[]).filter((c) => scores[c] !== undefined && (weights[c] ?? 0) > 0)
  rows.sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0))
  const heaviest = Math.max(...rows.map((c) => weights[c] ?? 0), 1e-9)
  const left = 78
  const long = 236
  return (
    <Pic says="Score on each point; the thicker the bar, the more the point matters to you." h={rows.length * 28 + 18}>
      <line class="rule" x1={left + long} y1="0" x2={left + long} y2={rows.length * 28} />
      {rows.map((c, i) => {
        const y = i * 28 + 14
        const thick = 3 + 15 * ((weights[c] ?? 0) / heaviest)
        const other = against?.[c]
        return (
          <g key={c}>
            <T x={0} y={y + 4.5} at="start" ink>
              {labels[c] ?? NAMES[c]}
            </T>
            <rect
              class="f-chalk"
              x={left}
              y={y - thick / 2}
              width={Math.max(1, (scores[c] ?? 0) * long)}
              height={thick}
            />
            {other !== undefined && (
              <line class="tick" x1={left + other * long} y1={y - 12} x2={left + other * long} y2={y + 12} />
            )}
          </g>
        )
      })}
      <line class="cut" x1={left} y1="0" x2={left} y2={rows.length * 28} />
      <T x={left} y={rows.length * 28 + 13} at="start" size={12}>
        worst
      </T>
      <T x={left + long} y={rows.length * 28 + 13} at="end" size={12}>
        best
      </T>
    </Pic>
  )
}

export interface CostItem {
  readonly label: string
  readonly timber: number
  /** The rest of the job, in the same money. */
  readonly rest: number
  readonly text: string
  readonly lead?: boolean
}
/** Timber and the rest of the job, option by option, on one scale. */
export function CostBars({ items }: { readonly items: readonly CostItem[] }) {
  const most = Math.max(...items.map((item) => item.timber + item.rest), 1e-9)
  const size = (v: number): number => (v / most) * 318
  return (
    <Pic says="Cost of each choice: the timber, and the rest of the job." h={items.length * 50 + 22}>
      <rect class="seen f-wood" x="1" y="2" width="12" height="12" />
      <T x={18} y={13} at="start">
        timber
      </T>
      <rect class="seen f-paper" x="72" y="2" width="12" height="12" />
      <T x={89} y={13} at="start">
        the rest of the job
      </T>
      {items.map((item, i) => {
        const y = i * 50 + 42
        return (
          <g key={item.label}>
            <T x={1} y={y} at="start" ink size={14}>
              {item.label}
            </T>
            <T x={319} y={y} at="end" ink={item.lead === true} size={14}>
              {item.text}
            </T>
            <rect class="seen" x="1" y={y + 6} width={size(item.timber + item.rest)} height="16" />
            <rect
              class={`${item.lead ? 'cut' : 'seen'} f-wood`}
              x="1"
              y={y + 6}
              width={size(item.timber)}
              height="16"
            />
          </g>
        )
      })}
    </Pic>
  )
}

/** Timber as part of the whole: the answer to "is this where to save". Without a share the bar says only what is in it. */
export function Money({ share }: { readonly share?: number | undefined }) {
  const w = 316 * Math.min(1, Math.max(0, share ?? 0.3))
  const percent = share === undefined ? '' : `, about ${Math.round(share * 100)} %`
  return (
    <Pic
      says={`The timber${percent} is one part of the whole job; drawings, joinery, raising, finish and freight are the rest.`}
      h={92}
    >
      <rect class="seen" x="2" y="28" width="316" height="34" />
      <rect class={share === undefined ? 'f-wood' : 'cut f-wood'} x="2" y="28" width={w} height="34" />
      {share === undefined && <rect class="hid" x="2" y="28" width={w} height="34" />}
      <T x={2} y={19} at="start" ink>
        the timber{percent}
      </T>
      <T x={318} y={81} at="end">
        drawings, joinery, raising, finish, freight
      </T>
    </Pic>
  )
}

/** What matters, in the order given: the first bar is the longest. */
export function Order({ items }: { readonly items: readonly string[] }) {
  const n = items.length
  return (
    <Pic says={`What matters, in order: ${items.join(', ')}.`} h={Math.max(1, n) * 27 + 4}>
      {items.map((item, i) => (
        <g key={item}>
          <rect class={i === 0 ? 'f-chalk' : 'f-wood'} x="0" y={i * 27 + 21} width={(316 * (n - i)) / n} height="4" />
          <T x={0} y={i * 27 + 16} at="start" ink={i === 0} size={14}>
            {i + 1} {item}
          </T>
        </g>
      ))}
    </Pic>
  )
}

export interface Phase {
  readonly label: string
  /** Weeks from felling. */
  readonly from: number
  readonly to: number
}
/** From the order to the raising, and on to the first heating: phases on a line of weeks. */
export function Timeline({ items, total }: { readonly items: readonly Phase[]; readonly total: number }) {
  const x = (week: number): number => 4 + (week / total) * 312
  const base = items.length * 32 + 6
  const step = total > 104 ? 52 : total > 40 ? 13 : 4
  const marks: number[] = []
  for (let w = 0; w <= total; w += step) if (w === 0 || x(w) > 50) marks.push(w)
  return (
    <Pic says={`Time in weeks: ${items.map((p) => `${p.label} from ${p.from} to ${p.to}`).join(', ')}.`} h={base + 26}>
      {marks.map((w) => (
        <g key={w}>
          <line class="rule" x1={x(w)} y1="0" x2={x(w)} y2={base} />
          <T x={w === 0 ? 2 : Math.min(308, x(w))} y={base + 18} size={12} at={w === 0 ? 'start' : 'middle'}>
            {w === 0 ? 'week 0' : w}
          </T>
        </g>
      ))}
      {items.map((p, i) => (
        <g key={p.label}>
          <rect
            class={i === items.length - 1 ? 'cut f-wood' : 'seen f-pale'}
            x={x(p.from)}
            y={i * 32 + 20}
            width={Math.max(3, x(p.to) - x(p.from))}
            height="9"
          />
          {x(p.from) > 190 ? (
            <T x={Math.max(x(p.to), 190)} y={i * 32 + 13} at="end" ink halo>
              {p.label}
            </T>
          ) : (
            <T x={x(p.from)} y={i * 32 + 13} at="start" ink halo>
              {p.label}
            </T>
          )}
        </g>
      ))}
      <line class="cut" x1="4" y1={base} x2="316" y2={base} />
    </Pic>
  )
}
