/**
 * The section that each wood needs for the same job, end on, to one scale, beside a person. The timbers lie on a rack, a row
 * above a row, so that all of them are as near to the person as a phone allows; the person and a foot rule stand on the ground.
 */
import { Both, Ground, Len, PERSON_MM, Person, Pic, Sec, T } from './parts'

export interface LadderItem {
  readonly label: string
  /** Shorter side, longer side, mm. */
  readonly section: readonly [number, number]
  readonly lead?: boolean
  readonly out?: boolean
  /** A last line, such as how many more take the same. */
  readonly note?: string
}

/** Room of a timber with its letters, on a phone and on a desk. */
const NARROW = 70
const WIDE = 78
/** Drawing units per mm, unless a broad timber would run into its neighbour: a person is 245 tall, an 8 in side 28. */
const SCALE = 0.14
const GAP = 8
/** Room of the person and the rule. */
const SIDE = 96
const round = (n: number) => Number(n.toFixed(1))

interface Props {
  readonly items: readonly LadderItem[]
  /** How many lie side by side on a phone. */
  readonly narrow?: number
}

export function SizeLadder({ items, narrow = 3 }: Props) {
  return (
    <div class="ladder">
      <Ladder items={items} perRow={narrow} column={NARROW} class="pic--narrow" />
      <Ladder items={items} perRow={items.length > 12 ? 8 : 6} column={WIDE} class="pic--wide" />
    </div>
  )
}

interface LadderProps {
  readonly items: readonly LadderItem[]
  readonly perRow: number
  readonly column: number
  readonly class: string
}
function Ladder({ items, perRow, column, class: names }: LadderProps) {
  const scale = Math.min(SCALE, (column - 12) / Math.max(...items.map((item) => item.section[0])))
  const rows: LadderItem[][] = []
  for (let i = 0; i < items.length; i += perRow) rows.push(items.slice(i, i + perRow))
  // A row is as deep as its deepest timber, and its letters under it.
  const deep = rows.map((row) => Math.max(...row.map((item) => item.section[1])) * scale)
  const letters = rows.map((row) => (row.some((item) => item.note) ? 62 : 48))
  const stack = deep.reduce((sum, d, i) => sum + d + GAP + (letters[i] ?? 0), 0)
  const tall = PERSON_MM * scale + GAP
  const last = letters.at(-1) ?? 0
  const h = Math.max(stack, tall + last)
  const ground = h - last
  const columns = Math.min(perRow, Math.max(items.length, Math.ceil(perRow * 0.5)))
  const w = SIDE + columns * column + 4
  let y = h - stack
  const named = items.map((item) => item.label).join(', ')
  return (
    <Pic
      says={`The section that each wood needs, end on, drawn to one scale beside a person: ${named}.`}
      w={w}
      h={h}
      class={names}
    >
      <Person x={40} y={ground} scale={scale} />
      <T x={4} y={ground + 17} at="start" size={12}>
        <Len mm={PERSON_MM} />
      </T>
      <Rule x={80} ground={ground} scale={scale} />
      {rows.map((row, r) => {
        const shelf = y + GAP + (deep[r] ?? 0)
        y = shelf + (letters[r] ?? 0)
        return (
          <g key={row[0]?.label}>
            {row.map((item, i) => (
              <Piece key={item.label} item={item} x={SIDE + (i + 0.5) * column} ground={round(shelf)} scale={scale} />
            ))}
            {r < rows.length - 1 && <line class="seen" x1={SIDE} y1={round(shelf)} x2={w} y2={round(shelf)} />}
          </g>
        )
      })}
      <Ground y={round(ground)} to={w} />
    </Pic>
  )
}

/** Rings about a pith in the middle: whole ones within the breadth, arcs above and below beyond it. */
function rings(x: number, middle: number, b: number, d: number): string {
  const step = 6
  let path = ''
  for (let r = step / 2; r < d / 2 - 1; r += step) {
    if (r < b / 2 - 1) {
      path += `M${round(x - r)} ${round(middle)}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0`
      continue
    }
    const half = b / 2 - 1
    const up = Math.sqrt(r * r - half * half)
    for (const side of [-1, 1])
      path += `M${round(x - half)} ${round(middle + side * up)}A${r} ${r} 0 0 ${side < 0 ? 1 : 0} ${round(x + half)} ${round(middle + side * up)}`
  }
  return path
}

interface PieceProps {
  readonly item: LadderItem
  readonly x: number
  readonly ground: number
  readonly scale: number
}
function Piece({ item, x, ground, scale }: PieceProps) {
  const [b, d] = [item.section[0] * scale, item.section[1] * scale]
  // A column is about ten letters wide: a longer name breaks at its last space or hyphen.
  const gap = Math.max(item.label.lastIndexOf(' '), item.label.lastIndexOf('-'))
  const lines =
    item.label.length > 11 && gap > 0 ? [item.label.slice(0, gap + 1).trim(), item.label.slice(gap + 1)] : [item.label]
  const kind = item.out ? 'hid' : item.lead ? 'cut f-wood' : 'seen f-pale'
  return (
    <g>
      <rect class={kind} x={round(x - b / 2)} y={round(ground - d)} width={round(b)} height={round(d)} />
      {!item.out && <path class="ring" d={rings(x, ground - d / 2, b, d)} />}
      <T x={x} y={ground + 17} ink={!item.out} size={14}>
        <Sec of={item.section} />
      </T>
      {lines.map((line, i) => (
        <T key={line} x={x} y={ground + 32 + i * 13} size={13} chalk={item.lead === true}>
          {line}
        </T>
      ))}
      {item.note && (
        <T x={x} y={ground + 32 + lines.length * 13} size={12}>
          {item.note}
        </T>
      )}
    </g>
  )
}

/** A rule stood on the ground: twelve inches, or 300 mm. */
function Rule({ x, ground, scale }: Omit<PieceProps, 'item'>) {
  const rule = (length: number, parts: number, system: string) => {
    const top = ground - length * scale
    let ticks = ''
    for (let i = 1; i < parts; i++)
      ticks += `M${x} ${round(ground - (length * scale * i) / parts)}h${i % (parts / 2) === 0 ? 8 : 4}`
    return (
      <g class={system}>
        <rect class="seen f-paper" x={x} y={round(top)} width="11" height={round(length * scale)} />
        <path class="dim" d={ticks} />
      </g>
    )
  }
  return (
    <g>
      {rule(304.8, 12, 'us')}
      {rule(300, 6, 'si')}
      <T x={x + 6} y={ground + 17} size={12}>
        <Both us="12 in" si="300" />
      </T>
    </g>
  )
}
