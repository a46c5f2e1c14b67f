/** The section that each wood needs for the same job, side by side on one ground line, to one scale, beside a rule. */
import { Both, Ground, Pic, Sec, T } from './parts'

export interface LadderItem {
  readonly label: string
  /** Shorter side, longer side, mm. */
  readonly section: readonly [number, number]
  readonly lead?: boolean
  readonly out?: boolean
  /** A last line, such as how many more take the same. */
  readonly note?: string
}

const COLUMN = 78
const TALL = 118 // drawing units for the deepest section

interface Props {
  readonly items: readonly LadderItem[]
  /** How many stand side by side on a phone. */
  readonly narrow?: number
}

export function SizeLadder({ items, narrow = 4 }: Props) {
  return (
    <div class="ladder">
      <Ladder items={items} perRow={narrow} class="pic--narrow" />
      <Ladder items={items} perRow={8} class="pic--wide" />
    </div>
  )
}

function Ladder({
  items,
  perRow,
  class: names
}: {
  readonly items: readonly LadderItem[]
  readonly perRow: number
  readonly class: string
}) {
  const deepest = Math.max(305, ...items.map((item) => item.section[1]))
  const broadest = Math.max(...items.map((item) => item.section[0]))
  // The deepest piece sets the scale, unless a broad one would run into its neighbour.
  const scale = Math.min(TALL / deepest, (COLUMN - 14) / broadest)
  const rowHeight = deepest * scale + (items.some((item) => item.note) ? 80 : 66)
  const rows: LadderItem[][] = []
  for (let i = 0; i < items.length; i += perRow) rows.push(items.slice(i, i + perRow))
  const first = 36
  // A few pieces are not blown up to fill the sheet, or their letters would outgrow the text.
  const columns = Math.min(perRow, Math.max(items.length, Math.ceil(perRow * 0.7)))
  const w = first + columns * COLUMN + 4
  const named = items.map((item) => item.label).join(', ')
  return (
    <Pic
      says={`The section that each wood needs, drawn to one scale: ${named}.`}
      w={w}
      h={rows.length * rowHeight}
      class={names}
    >
      {rows.map((row, r) => {
        const ground = r * rowHeight + deepest * scale + 6
        return (
          <g key={row[0]?.label}>
            <Rule x={4} ground={ground} scale={scale} />
            {row.map((item, i) => (
              <Piece key={item.label} item={item} x={first + (i + 0.5) * COLUMN} ground={ground} scale={scale} />
            ))}
            <Ground y={ground} to={w} />
          </g>
        )
      })}
    </Pic>
  )
}

function Piece({
  item,
  x,
  ground,
  scale
}: {
  readonly item: LadderItem
  readonly x: number
  readonly ground: number
  readonly scale: number
}) {
  const [b, d] = [item.section[0] * scale, item.section[1] * scale]
  // A column is about ten letters wide: a longer name breaks at its last space or hyphen.
  const gap = Math.max(item.label.lastIndexOf(' '), item.label.lastIndexOf('-'))
  const lines =
    item.label.length > 11 && gap > 0 ? [item.label.slice(0, gap + 1).trim(), item.label.slice(gap + 1)] : [item.label]
  const kind = item.out ? 'hid' : item.lead ? 'cut f-wood' : 'seen f-pale'
  return (
    <g>
      <rect class={kind} x={x - b / 2} y={ground - d} width={b} height={d} />
      {!item.out && (
        <path
          class="ring"
          d={`M${x - b / 2 + 3} ${ground - d * 0.3}q${b / 2 - 3} ${-b / 3} ${b - 6} 0M${x - b / 2 + 3} ${ground - d * 0.6}q${b / 2 - 3} ${-b / 3} ${b - 6} 0`}
        />
      )}
      <T x={x} y={ground + 17} ink={!item.out} size={14}>
        <Sec of={item.section} />
      </T>
      {lines.map((line, i) => (
        <T key={line} x={x} y={ground + 33 + i * 14} size={13} chalk={item.lead === true}>
          {line}
        </T>
      ))}
      {item.note && (
        <T x={x} y={ground + 33 + lines.length * 14} size={13}>
          {item.note}
        </T>
      )}
    </g>
  )
}

/** A rule stood on the ground: twelve inches, or 300 mm. */
function Rule({ x, ground, scale }: { readonly x: number; readonly ground: number; readonly scale: number }) {
  const rule = (length: number, parts: number, system: string) => {
    const top = ground - length * scale
    let ticks = ''
    for (let i = 1; i < parts; i++)
      ticks += `M${x} ${(ground - (length * scale * i) / parts).toFixed(1)}h${i % (parts / 2) === 0 ? 8 : 4}`
    return (
      <g class={system}>
        <rect class="seen f-paper" x={x} y={top} width="11" height={length * scale} />
        <path class="dim" d={ticks} />
      </g>
    )
  }
  return (
    <g>
      {rule(304.8, 12, 'us')}
      {rule(300, 6, 'si')}
      <T x={x} y={ground + 17} at="start" size={12}>
        <Both us="12 in" si="300" />
      </T>
    </g>
  )
}
