/**
 * Scales and letters of the drying clock: where a day and a moisture lie in the drawing, which winters pass behind them,
 * and where a name can stand beside its line without touching another. Drawing units throughout; nothing about wood.
 */
import type { Pt } from './parts'

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

const YEAR = 365.25
const MONTH = YEAR / 12

/** Winters, December to February, as days from felling, between two such days. `month`: of felling, at its middle. */
export function wintersBetween(month: number, from: number, to: number): (readonly [number, number])[] {
  const december = 11 * MONTH - (month - 0.5) * MONTH
  const first = Math.floor((from - december) / YEAR)
  const found: (readonly [number, number])[] = []
  for (let start = december + first * YEAR; start < to; start += YEAR) {
    const [a, b] = [Math.max(from, start), Math.min(to, start + 3 * MONTH)]
    if (b > a) found.push([a, b])
  }
  return found
}

export interface MoistureScale {
  readonly y: (moisture: number) => number
  /** Percent. */
  readonly ticks: readonly number[]
  /** Percent above which the scale is drawn closer, so that a very wet start leaves room for what follows. */
  readonly closer: number | null
  /** Whether fibre saturation lies within it. */
  readonly saturation: boolean
}

/** Above this, percent, one even scale would press what matters into its lowest third. */
const WETTEST_EVEN = 60
const LOWER_PART = 0.68

const upTo = (to: number, step: number, from = 0): number[] =>
  Array.from({ length: Math.max(0, Math.floor((to - from) / step) + 1) }, (_, i) => from + i * step)

export function moistureScale(wettest: number, saturation: number, top: number, bottom: number): MoistureScale {
  const most = wettest * 100
  const high = bottom - top
  // What never comes near fibre saturation is not pressed down by it.
  const within = most > saturation * 75
  const needed = within ? Math.max(most, saturation * 100 + 2) : most + 1
  if (needed > WETTEST_EVEN) {
    const closer = Math.ceil((saturation * 100 + 3) / 5) * 5
    const step = needed > 120 ? 40 : 20
    const end = Math.ceil(needed / step) * step
    const knee = bottom - high * LOWER_PART
    const y = (m: number): number =>
      m * 100 <= closer
        ? bottom - ((m * 100) / closer) * (bottom - knee)
        : knee - ((m * 100 - closer) / (end - closer)) * (knee - top)
    const above = upTo(end, step, step).filter((t) => t > closer + step / 2)
    return { y, ticks: [...upTo(closer, 10), ...above], closer, saturation: within }
  }
  const step = needed <= 25 ? 5 : 10
  const end = Math.ceil(needed / step) * step
  return {
    y: (m) => bottom - ((m * 100) / end) * high,
    ticks: upTo(end, step),
    closer: null,
    saturation: within
  }
}

/** The fewest of the points that draw the same line to within `slack`: a curve's bytes are mostly its points. */
export function simplified(list: readonly Pt[], slack = 0.3): readonly Pt[] {
  const [first, last] = [list[0], list.at(-1)]
  if (first === undefined || last === undefined || list.length < 3) return list
  let worst = 0
  let at = 0
  list.forEach(([x, y], i) => {
    const along = last[0] === first[0] ? 0 : (x - first[0]) / (last[0] - first[0])
    const off = Math.abs(y - (first[1] + along * (last[1] - first[1])))
    if (off > worst) {
      worst = off
      at = i
    }
  })
  if (worst <= slack) return [first, last]
  return [...simplified(list.slice(0, at + 1), slack), ...simplified(list.slice(at), slack).slice(1)]
}

export const pathOf = (list: readonly Pt[]): string => stepsOf(simplified(list))

/** A path in steps from point to point on a grid of tenths: shorter to write than where each point lies. */
export function stepsOf(list: readonly Pt[]): string {
  let [left, top] = [0, 0]
  return list
    .map(([px, py], i) => {
      const [x, y] = [Math.round(px * 10), Math.round(py * 10)]
      const step = `${i === 0 ? 'M' : 'l'}${(x - left) / 10} ${(y - top) / 10}`
      ;[left, top] = [x, y]
      return step
    })
    .join('')
    .replace(/ -/g, '-')
}

/** Keys in a row, each as near to its own place as it can stand with `apart` between neighbours. */
export function spread(places: readonly number[], apart: number, from: number, to: number): number[] {
  const out = [...places]
  for (let i = 0; i < out.length; i++) out[i] = Math.max(out[i] ?? 0, i === 0 ? from : (out[i - 1] ?? 0) + apart)
  for (let i = out.length - 1; i >= 0; i--)
    out[i] = Math.min(out[i] ?? 0, i === out.length - 1 ? to : (out[i + 1] ?? 0) - apart)
  return out
}

/** Height of a line at x, or null beyond its ends. */
export function heightAt(line: readonly Pt[], x: number): number | null {
  const next = line.findIndex(([px]) => px >= x)
  const b = line[next]
  const a = line[next - 1] ?? b
  if (a === undefined || b === undefined || x < a[0]) return null
  return b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])
}

export interface Wanted {
  readonly id: string
  readonly width: number
  readonly line: readonly Pt[]
  /** Where along the line it is looked for first, 0 to 1. */
  readonly from: number
}
export interface Placed {
  readonly id: string
  readonly x: number
  /** Of the letters' foot. */
  readonly y: number
  readonly box: Box
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

/** How far from its line a name may hang, in its own heights: at it, and further only where there is no room. */
const HANGS = [0, 1, 2, 3, 4, 5, 6]

/** A name beside each line, within `area`, never over another name, and over another line only where it must be. */
export function placeNames(wanted: readonly Wanted[], area: Box, size: number): Placed[] {
  const placed: Placed[] = []
  for (const own of wanted) {
    let best: Candidate | null = null
    // First along the line as it should be, then where only part of the name lies along it, then hanging off it.
    for (const hang of HANGS) {
      for (const whole of [true, false]) best ??= bestPlace(own, wanted, placed, area, size, hang * size, whole)
    }
    if (best !== null) placed.push(best.at)
  }
  return placed
}

interface Candidate {
  readonly cost: number
  readonly at: Placed
}

function bestPlace(
  { id, width, line, from }: Wanted,
  wanted: readonly Wanted[],
  placed: readonly Placed[],
  area: Box,
  size: number,
  off: number,
  whole: boolean
): Candidate | null {
  const steps = 40
  let best: Candidate | null = null
  for (let i = 0; i <= steps; i++) {
    const x = area.left + width / 2 + 3 + ((area.right - area.left - width - 6) * i) / steps
    const heights = [-0.5, -0.25, 0, 0.25, 0.5].map((part) => heightAt(line, x + part * width))
    const known = heights.filter((h) => h !== null)
    if (known.length < (whole ? heights.length : 1)) continue
    const [high, low] = [Math.min(...known), Math.max(...known)]
    for (const side of [-1, 1] as const) {
      const own = side < 0 ? high - 5 - off : low + 5 + off
      const box: Box = {
        left: x - width / 2 - 2,
        right: x + width / 2 + 2,
        top: side < 0 ? own - size * 0.8 : own,
        bottom: side < 0 ? own + 1 : own + size * 0.8
      }
      if (box.left < area.left || box.right > area.right || box.top < area.top || box.bottom > area.bottom) continue
      if (placed.some((other) => overlap(other.box, box))) continue
      const cost =
        crossings(box, wanted, id) * 10 +
        (nearer(box, x, wanted, id) ? 5 : 0) +
        Math.abs(i / steps - from) * 2 +
        // Beside a steep line a name hangs in the air.
        (low - high)
      if (best === null || cost < best.cost) best = { cost, at: { id, x, y: side < 0 ? own : own + size * 0.72, box } }
    }
  }
  return best
}

/** How much of a box other lines run through: 1 for one line from side to side. */
function crossings(box: Box, all: readonly Wanted[], own: string): number {
  const steps = 12
  let count = 0
  for (const { id, line } of all) {
    if (id === own) continue
    for (let i = 0; i <= steps; i++) {
      const y = heightAt(line, box.left + ((box.right - box.left) * i) / steps)
      if (y !== null && y > box.top - 2 && y < box.bottom + 2) count++
    }
  }
  return count / (steps + 1)
}

/** Another line passes as near as the own one, so that the name could be taken for its. */
function nearer(box: Box, x: number, all: readonly Wanted[], own: string): boolean {
  const middle = (box.top + box.bottom) / 2
  const half = (box.bottom - box.top) / 2
  return all.some(({ id, line }) => {
    const y = id === own ? null : heightAt(line, x)
    return y !== null && Math.abs(y - middle) < half + 7
  })
}
