/**
 * Moisture moving across a rectangular section, in time: finite volumes over a quarter of it (it is alike about both
 * middles), implicit along one side and then along the other. What leaves one cell enters the next, so no water is
 * lost or made.
 * Source: derived (locally one-dimensional splitting of dM/dt = div(D grad M), surface flux S (M - E)).
 * Lengths in mm, time in days, moisture as a fraction, D in mm2 a day, S in mm a day.
 */

/** D summed up over moisture, so that a steep change of D between two cells is met exactly: an even grid of moistures from 0. */
export interface Conduct {
  /** Distance between moistures of `sums`, fraction. */
  readonly step: number
  /** Integral of D from 0 to i * step, mm2 a day. Beyond the last entry D stays as in the last step. */
  readonly sums: Float64Array
}

/** Cells of half a side, all of one width. */
export interface Line {
  readonly size: number
  /** Half the side, mm. */
  readonly half: number
  readonly width: number
}

export interface Field {
  readonly x: Line
  readonly y: Line
  /** Row by row: cell (i, j) at j * x.size + i, middle of the section first. */
  readonly moisture: Float64Array
}

/** Times its thickness from which a board is taken as endlessly wide. */
const WIDE = 100

function lineOf(half: number, size: number): Line {
  return { size, half, width: half / size }
}

/**
 * A section at one moisture throughout. Source: derived.
 * @param cells of half a side
 * @throws RangeError where a side is not above zero or moisture is below zero.
 */
export function evenField(breadth: number, depth: number, moisture: number, cells: number): Field {
  if (!(breadth > 0 && depth > 0)) throw new RangeError('section sizes must be above zero')
  if (!(moisture >= 0 && Number.isFinite(moisture)))
    throw new RangeError(`moisture must not be below zero: ${moisture}`)
  // A board far wider than it is thick is alike all along its width.
  const along = (side: number, other: number) => lineOf(side / 2, side > WIDE * other ? 1 : cells)
  const x = along(breadth, depth)
  const y = along(depth, breadth)
  return { x, y, moisture: new Float64Array(x.size * y.size).fill(moisture) }
}

/** Integral of D from 0 to a moisture. */
function sumAt(sums: Float64Array, perStep: number, moisture: number): number {
  const place = moisture * perStep
  const last = sums.length - 2
  const i = place < last ? place | 0 : last
  const low = sums[i] as number
  return low + (place - i) * ((sums[i + 1] as number) - low)
}

/** D at a moisture. */
function slopeAt({ step, sums }: Conduct, moisture: number): number {
  const i = Math.min(sums.length - 2, Math.floor(moisture / step))
  return ((sums[i + 1] as number) - (sums[i] as number)) / step
}

/** Work space of `stepField`, made once a course. */
export interface Scratch {
  readonly flow: Float64Array
  readonly up: Float64Array
  readonly value: Float64Array
}
export const scratchFor = (field: Field): Scratch => {
  const longest = Math.max(field.x.size, field.y.size)
  return { flow: new Float64Array(longest), up: new Float64Array(longest), value: new Float64Array(longest) }
}

/**
 * Solve one line of cells over a step, from the middle outwards. `at` and `stride` pick the line out of the field.
 * @returns water that left through the face, mm of moisture times width
 */
function solveLine(
  m: Float64Array,
  at: number,
  stride: number,
  line: Line,
  step: Step,
  { flow, up, value }: Scratch
): number {
  const { size, width } = line
  const { conduct, air, days, end } = step
  const { sums } = conduct
  const perStep = 1 / conduct.step
  const perWidth = 1 / width
  const last = size - 1
  // Conductance from each cell to the next one out, and from the last to the air: D averaged over what lies between.
  let here = m[at] as number
  let sum = sumAt(sums, perStep, here)
  let k = at
  for (let i = 0; i < last; i++) {
    k += stride
    const next = m[k] as number
    const sumNext = sumAt(sums, perStep, next)
    flow[i] = perWidth * meanD(conduct, here, next, sum, sumNext)
    here = next
    sum = sumNext
  }
  const out = outflow(2 * perWidth * meanD(conduct, here, air, sum, sumAt(sums, perStep, air)), here, step)
  const start = 1 - end
  const store = width / days
  let inner = 0
  let into = 0
  let before = 0
  let beyond = 0
  here = m[at] as number
  k = at
  for (let i = 0; i < last; i++) {
    k += stride
    const outer = flow[i] as number
    const next = m[k] as number
    const outOf = outer * (here - next)
    const unit = 1 / (store + end * (inner + outer - inner * beyond))
    before = (store * here + start * (into - outOf) + end * inner * before) * unit
    beyond = end * outer * unit
    up[i] = beyond
    value[i] = before
    inner = outer
    into = outOf
    here = next
  }
  const known = store * here + start * (into - out * (here - air)) + end * out * air
  let next = (known + end * inner * before) / (store + end * (inner + out - inner * beyond))
  const left = (start * (here - air) + end * (next - air)) * out * days
  m[k] = next
  for (let i = last - 1; i >= 0; i--) {
    k -= stride
    next = (value[i] as number) + (up[i] as number) * next
    m[k] = next
  }
  return left
}

/** Mean D between two moistures. */
function meanD(conduct: Conduct, a: number, b: number, sumA: number, sumB: number): number {
  const rise = b - a
  return rise > 1e-7 || rise < -1e-7 ? (sumB - sumA) / rise : slopeAt(conduct, a)
}

/** Conductance from the last cell to the air: through half the cell and off the face, but no faster than a wet face gives. */
function outflow(through: number, here: number, { surface, air, wettest }: Step): number {
  const out = 1 / (1 / surface + 1 / through)
  const over = here - air
  return over > 0 && wettest > air ? Math.min(out, (surface * (wettest - air)) / over) : out
}

export interface Step {
  readonly conduct: Conduct
  /** Surface coefficient S, mm a day; Infinity holds the face at the air's equilibrium. */
  readonly surface: number
  /** Moisture above which a face gives water off no faster: fibre saturation; Infinity where there is no such limit. */
  readonly wettest: number
  /** Equilibrium of the air at the end of the step, fraction. */
  readonly air: number
  readonly days: number
  /** How far the flow is taken at the end of the step rather than its start: see `endOf`. */
  readonly end: number
  /** Which side is solved first: turned about from step to step. */
  readonly xFirst: boolean
}

/** Cells of half a side with which moisture stays within 0.1 % of the exact series. */
export const CELLS = 12

/** Steps in time after a jump of the air, as parts of the section's own time L2/D: small at first, then growing. */
export const PACE = { first: 0.0003, growth: 1.3, longest: 0.03, jump: 3 } as const
/** Nearly halfway: second order in time, and what little swings dies out. */
const EVEN = 0.52
/** Where in the step the flow is taken, by how many steps came since the jump. */
export const endOf = (stepsSinceJump: number): number => (stepsSinceJump < PACE.jump ? 1 : EVEN)

/**
 * Carry a field forward by one step. Changes the field in place. Source: derived (see the head of this file).
 * @returns water that left through the faces of the quarter, moisture times mm2
 */
export function stepField(field: Field, step: Step, scratch: Scratch): number {
  const { x, y, moisture } = field
  let left = 0
  for (const alongX of [step.xFirst, !step.xFirst]) {
    if (alongX) {
      for (let j = 0; j < y.size; j++) {
        left += y.width * solveLine(moisture, j * x.size, 1, x, step, scratch)
      }
    } else {
      for (let i = 0; i < x.size; i++) {
        left += x.width * solveLine(moisture, i, x.size, y, step, scratch)
      }
    }
  }
  return left
}

/** Mean over the section of `of(moisture)`; the moisture itself where nothing is given. Source: derived. */
export function meanOver({ moisture }: Field, of?: (moisture: number) => number): number {
  let sum = 0
  for (let k = 0; k < moisture.length; k++) sum += of ? of(moisture[k] as number) : (moisture[k] as number)
  return sum / moisture.length
}
