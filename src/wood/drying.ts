/**
 * How a timber dries: from the yard through the open frame to the heated room, or in a kiln, stage after stage.
 * Moisture spreads through the section as in diffusion.ts, with the diffusion of Siau's model times one factor a wood,
 * fitted to the published times of boards (see drying-fit.ts). Days, mm, fractions.
 */
import { saturationPressure } from './air'
import { CELLS, type Conduct, endOf, evenField, type Field, meanOver, PACE, scratchFor, stepField } from './diffusion'
import { transverseDiffusion } from './diffusivity'

/** Air that stays as it is: a kiln's. */
export interface SteadyAir {
  readonly temperatureC: number
  readonly equilibrium: number
}
/** Air of a place or a room, January to December. */
export interface YearlyAir {
  readonly temperatureC: readonly number[]
  readonly equilibrium: readonly number[]
}

export interface Stage {
  readonly air: SteadyAir | YearlyAir
  /** How long it lasts at most. */
  readonly days: number
  /** Ends sooner, once the mean is down to this. */
  readonly untilMean?: number
  /** Surface coefficient at 20 degrees C for wood of green specific gravity 1 and factor 1, mm a day. */
  readonly surface: number
  /** Times as fast as the wood dries elsewhere; 1 if not given. */
  readonly pace?: number
}

export interface DryingWood {
  /** Oven-dry mass over green volume. */
  readonly gravityGreen: number
  readonly fibreSaturation: number
  /** Times Siau's coefficient, and times the surface's, from the fit. */
  readonly factor: number
}

export interface DryingSpec {
  readonly wood: DryingWood
  readonly breadth: number
  readonly depth: number
  /** Moisture throughout at the start, fraction. */
  readonly moisture: number
  /** Day of the year on which it starts, 0 for the first of January. */
  readonly startDay: number
  readonly stages: readonly Stage[]
  /** Cells of half a side; `CELLS`, the finest, if not given. */
  readonly cells?: number
}

export interface Course {
  readonly days: readonly number[]
  readonly mean: readonly number[]
  /** Outer half inch, in the middle of a broad face. */
  readonly shell: readonly number[]
  readonly core: readonly number[]
  /** Part of the shrinkage to oven-dry that the section has made, each bit of it by its own moisture: 0 to 1. */
  readonly shrunk: readonly number[]
  /** Day on which each stage ended. */
  readonly ends: readonly number[]
  /** Water lost through the faces, by the flows: mean moisture. For the books: start less this is the last mean. */
  readonly lost: number
  /** Across the thinner side as each stage ended, face to middle. */
  readonly profiles: readonly Profile[]
}

/** Moisture by the distance from the face, mm, along the middle of the thinner side. */
export type Profile = readonly { readonly from: number; readonly moisture: number }[]

const YEAR = 365.25
const MONTH = YEAR / 12
const TABLE_STEP = 0.005
/** Depth of the shell, mm: half an inch, as shell and core are cut from a slice. Source: common-practice. */
const SHELL = 12.7
/** Steps follow the seasons: no longer than this, days. */
const LONGEST_STEP = 20
const isYearly = (air: Stage['air']): air is YearlyAir => typeof air.equilibrium !== 'number'

/**
 * D summed up from dry to beyond fibre saturation at one temperature. Source: siau-1984.
 */
export function conductAt({ gravityGreen, fibreSaturation, factor }: DryingWood, temperatureC: number): Conduct {
  const size = Math.ceil(fibreSaturation / TABLE_STEP) + 2
  const sums = new Float64Array(size)
  for (let i = 1; i < size; i++) {
    const middle = (i - 0.5) * TABLE_STEP
    const d = transverseDiffusion(middle, temperatureC, gravityGreen, fibreSaturation)
    sums[i] = (sums[i - 1] as number) + factor * d * TABLE_STEP
  }
  return { step: TABLE_STEP, sums }
}

/** What the air asks of a section at one moment. `pull` is its vapour pressure against that at 20 degrees C. */
interface Asked {
  readonly conduct: Conduct
  readonly air: number
  readonly pull: number
}

const ROOM = saturationPressure(20)
const pullAt = (temperatureC: number): number => saturationPressure(temperatureC) / ROOM

/** The air of one stage, ready to be asked by the day of the year: blended between the middles of months. */
function askedOf(air: Stage['air'], table: (temperatureC: number) => Conduct): (day: number) => Asked {
  if (!isYearly(air)) {
    const steady = { conduct: table(air.temperatureC), air: air.equilibrium, pull: pullAt(air.temperatureC) }
    return () => steady
  }
  const months = air.temperatureC.map(table)
  const blend: Conduct = { step: TABLE_STEP, sums: new Float64Array((months[0] as Conduct).sums.length) }
  return (day) => {
    const at = (((day / MONTH - 0.5) % 12) + 12) % 12
    const before = Math.floor(at)
    const after = (before + 1) % 12
    const part = at - before
    const mix = (a: number, b: number) => a * (1 - part) + b * part
    const low = (months[before] as Conduct).sums
    const high = (months[after] as Conduct).sums
    for (let i = 0; i < blend.sums.length; i++) blend.sums[i] = mix(low[i] as number, high[i] as number)
    return {
      conduct: blend,
      air: mix(air.equilibrium[before] as number, air.equilibrium[after] as number),
      pull: pullAt(mix(air.temperatureC[before] as number, air.temperatureC[after] as number))
    }
  }
}

/** The line of cells through the middle of the thinner side. */
const thinLine = ({ x, y }: Field): readonly [Field['x'], number] => (x.half <= y.half ? [x, 1] : [y, x.size])

/** Mean moisture of the outer half inch along that line. */
function shellOf(field: Field): number {
  const [line, stride] = thinLine(field)
  const whole = Math.min(SHELL, line.half)
  let left = whole
  let sum = 0
  for (let i = line.size - 1; i >= 0 && left > 0; i--) {
    const part = Math.min(left, line.width)
    sum += part * (field.moisture[i * stride] as number)
    left -= part
  }
  return sum / whole
}

function profileOf(field: Field): Profile {
  const [line, stride] = thinLine(field)
  return Array.from({ length: line.size }, (_, k) => ({
    from: (k + 0.5) * line.width,
    moisture: field.moisture[(line.size - 1 - k) * stride] as number
  }))
}

/**
 * The course of a section's moisture through its stages. Source: derived (diffusion.ts) with siau-1984.
 * @throws RangeError where a size, a moisture or a stage is not one that can be.
 */
export function dryingCourse(spec: DryingSpec): Course {
  const { wood, breadth, depth } = spec
  if (!(wood.factor > 0 && wood.fibreSaturation > 0 && wood.gravityGreen > 0)) throw new RangeError('no such wood')
  const field = evenField(breadth, depth, spec.moisture, spec.cells ?? CELLS)
  const scratch = scratchFor(field)
  const shrunkAt = (m: number) => (m >= wood.fibreSaturation ? 0 : 1 - m / wood.fibreSaturation)
  const kept = { days: [], mean: [], shell: [], core: [], shrunk: [] } as Record<Kept, number[]>
  const keep = (day: number) => {
    kept.days.push(day)
    kept.mean.push(meanOver(field))
    kept.shell.push(shellOf(field))
    kept.core.push(field.moisture[0] as number)
    kept.shrunk.push(meanOver(field, shrunkAt))
  }
  const ends: number[] = []
  const profiles: Profile[] = []
  let day = 0
  let lost = 0
  let turn = 0
  keep(0)
  for (const stage of spec.stages) {
    if (!(stage.days >= 0 && Number.isFinite(stage.days))) throw new RangeError('a stage lasts a number of days')
    if (!(stage.surface > 0)) throw new RangeError('a surface coefficient is above zero')
    const paced = { ...wood, factor: wood.factor * (stage.pace ?? 1) }
    const surface = (stage.surface * paced.factor) / wood.gravityGreen
    const ask = askedOf(stage.air, (temperatureC) => conductAt(paced, temperatureC))
    const until = day + stage.days
    const own = ownTime(field, ask(spec.startDay + day).conduct)
    let length = PACE.first * own
    for (let n = 0; day < until - 1e-9 && (kept.mean.at(-1) as number) > (stage.untilMean ?? -1); n++) {
      const days = Math.min(length, until - day)
      const { conduct, air, pull } = ask(spec.startDay + day + days)
      const step = { conduct, air, days, surface: surface * pull, wettest: wood.fibreSaturation }
      lost += stepField(field, { ...step, end: endOf(n), xFirst: turn++ % 2 === 0 }, scratch)
      day += days
      length = Math.min(length * PACE.growth, LONGEST_STEP, PACE.longest * own)
      keep(day)
    }
    ends.push(day)
    profiles.push(profileOf(field))
  }
  return { ...kept, ends, lost: (4 * lost) / (breadth * depth), profiles }
}

type Kept = 'days' | 'mean' | 'shell' | 'core' | 'shrunk'

/** Days in which moisture spreads through half the thinner side when wet. */
function ownTime({ x, y }: Field, { step, sums }: Conduct): number {
  const half = Math.min(x.half, y.half)
  return (half * half * step) / ((sums.at(-1) as number) - (sums.at(-2) as number))
}

/** A figure of the course on a day, between the steps on either side. Days after the end give the end. */
export function onDay({ days }: Course, figure: readonly number[], day: number): number {
  let high = days.findIndex((d) => d >= day)
  if (high < 0) high = days.length - 1
  const low = Math.max(0, high - 1)
  const span = (days[high] as number) - (days[low] as number)
  const part = span > 0 ? Math.min(1, (day - (days[low] as number)) / span) : 0
  return (figure[low] as number) * (1 - part) + (figure[high] as number) * part
}

/** First day on which the mean is at or below `target`, between the steps; Infinity where it never is. */
export function dayOfMean({ days, mean }: Course, target: number): number {
  const high = mean.findIndex((m) => m <= target)
  if (high < 0) return Number.POSITIVE_INFINITY
  if (high === 0) return 0
  const [m0, m1] = [mean[high - 1] as number, mean[high] as number]
  const [d0, d1] = [days[high - 1] as number, days[high] as number]
  return m0 === m1 ? d1 : d0 + ((d1 - d0) * (m0 - target)) / (m0 - m1)
}
