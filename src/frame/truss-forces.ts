/**
 * Forces in three trusses, each side of the roof loaded evenly on plan and the tie along its length, the sides alike or not.
 * By statics: joints are pinned, rafters are bent between them. N, mm.
 */
export type TrussForm = 'king' | 'king-struts' | 'queen'

export interface TrussShape {
  /** Between the feet, mm. */
  readonly span: number
  /** Rise over run, above 0. */
  readonly pitch: number
  /** Queen posts: distance from the foot over the span, above 0 and below a half; the other forms do not use it. */
  readonly queenAt: number
}

/** Line loads, N/mm on plan: on the left and the right side of the roof, and on the tie. */
export interface TrussLoad {
  readonly left: number
  readonly right: number
  readonly tie: number
}

export type PartId = 'rafter' | 'upper-rafter' | 'tie' | 'king-post' | 'queen-post' | 'strut' | 'straining-beam'

/** The parts of a form, once each, in the order in which they are sized: what is heavy first. */
export const PARTS: Readonly<Record<TrussForm, readonly PartId[]>> = {
  king: ['rafter', 'tie', 'king-post'],
  'king-struts': ['rafter', 'tie', 'king-post', 'strut'],
  queen: ['rafter', 'upper-rafter', 'tie', 'queen-post', 'straining-beam']
}

/** What one timber, or one panel of it, is asked. */
export interface Part {
  readonly id: PartId
  /** Along it, N: pushed above zero, pulled below. */
  readonly push: number
  /** Bending between its joints or over them, N mm. */
  readonly moment: number
  /** Greatest shear across it, N. */
  readonly shear: number
}

/** Bending of a length under an even load, N mm. Source: derived (statics). */
const even = (load: number, length: number): number => (load * length * length) / 8

/**
 * Greatest moment in a length under an even load with a moment carried in at its ends (sagging above zero), by amount.
 * Source: derived (statics). N/mm, mm, N mm.
 */
export function bentBetween(load: number, length: number, start: number, end: number): number {
  const at = (x: number) => start + ((end - start) * x) / length + (load * x * (length - x)) / 2
  const zero = load > 0 ? length / 2 + (end - start) / (load * length) : 0
  return Math.max(Math.abs(start), Math.abs(end), Math.abs(at(Math.min(length, Math.max(0, zero)))))
}

/**
 * King post, no struts: each rafter spans from foot to ridge, half the tie's load hangs on the king post. The thrust is that
 * of a three-hinged frame. Source: derived (statics).
 */
function king({ span, pitch }: TrussShape, { left, right, tie }: TrussLoad, id: PartId): readonly Part[] {
  const hung = (tie * span) / 2
  if (id === 'king-post') return [{ id, push: -hung, moment: 0, shear: 0 }]
  const thrust = (((left + right) * span) / 4 + hung) / 2 / pitch
  if (id === 'tie') return [{ id, push: -thrust, moment: even(tie, span / 2), shear: (tie * span) / 4 }]
  const angle = Math.atan(pitch)
  const rafter = (own: number, other: number): Part => ({
    id: 'rafter',
    push: thrust * Math.cos(angle) + ((3 * own + other) * (span / 8) + hung / 2) * Math.sin(angle),
    moment: even(own, span / 2),
    shear: ((own * span) / 4) * Math.cos(angle)
  })
  return [rafter(left, right), rafter(right, left)]
}

/** Loads at the joints of a king-post truss with struts, N. */
export interface StrutJoints {
  /** At the middle of the left and the right rafter. */
  readonly left: number
  readonly right: number
  readonly ridge: number
  /** What the tie hangs on the king post's foot. */
  readonly hung: number
}

/**
 * King post with struts from its foot to the middle of each rafter, loads at the joints: pushes of the lower and the upper
 * rafters and the struts, pulls of the tie's halves and the king post, N. Source: derived (method of joints).
 */
export function kingStrutJoints(pitch: number, { left, right, ridge, hung }: StrutJoints) {
  const sine = 2 * Math.sin(Math.atan(pitch))
  const kingPost = (left + right) / 2 + hung
  const upper = (ridge + kingPost) / sine
  const tie = (own: number) => (ridge + kingPost + own) / 2 / pitch
  return {
    lower: [upper + left / sine, upper + right / sine],
    upper,
    strut: [left / sine, right / sine],
    tie: [tie(left), tie(right)],
    kingPost
  } as const
}

/**
 * Each rafter is one stick over its strut: 10/8 of a panel's load comes to the strut and 3/8 to each end, and the moment
 * over the strut is that of a panel alone. A strut that gives a little takes less. Source: derived (statics, three moments).
 */
function kingStruts({ span, pitch }: TrussShape, { left, right, tie }: TrussLoad, id: PartId): readonly Part[] {
  const panel = span / 4
  const forces = kingStrutJoints(pitch, {
    left: 1.25 * left * panel,
    right: 1.25 * right * panel,
    ridge: 0.375 * (left + right) * panel,
    hung: (tie * span) / 2
  })
  if (id === 'king-post') return [{ id, push: -forces.kingPost, moment: 0, shear: 0 }]
  const side = (i: 0 | 1, load: number): Part => {
    if (id === 'strut') return { id, push: forces.strut[i], moment: 0, shear: 0 }
    if (id === 'tie') return { id, push: -forces.tie[i], moment: even(tie, span / 2), shear: (tie * span) / 4 }
    const angle = Math.atan(pitch)
    return {
      id,
      // At its foot a rafter also carries the end of its own load.
      push: forces.lower[i] + 0.375 * load * panel * Math.sin(angle),
      moment: even(load, panel),
      shear: 0.625 * load * panel * Math.cos(angle)
    }
  }
  return [side(0, left), side(1, right)]
}

/**
 * Queen posts with a straining beam between their heads; principal rafters end at the heads, upper rafters stand on them. The
 * part of the load that both sides share goes by push and pull alone. Its panel between the queens has no diagonal: what one
 * side has more comes down through its queen post, goes up through the other, and the tie, one stick, bears it by bending.
 * No help is taken from rafters that run through. Source: derived (statics).
 */
function queen({ span, pitch, queenAt }: TrussShape, { left, right, tie }: TrussLoad, id: PartId): readonly Part[] {
  const outer = queenAt * span
  const upper = span / 2 - outer
  const mean = (left + right) / 2
  const uneven = (left - right) / 2
  const hung = (tie * (span - outer)) / 2
  // At a queen's head: half the principal's load, half the upper rafters' load, and the tie that hangs on it.
  const lowerThrust = (mean * (outer / 2 + upper) + hung) / pitch
  const upperThrust = (mean * upper) / 2 / pitch
  const sway = (uneven * span) / 4
  if (id === 'straining-beam') return [{ id, push: lowerThrust - upperThrust, moment: 0, shear: 0 }]
  if (id === 'tie') {
    // It sags under the queen of the heavier side and is lifted as much under the other: the first end panel is bent more.
    const bend = Math.abs((sway * 2 * outer * upper) / span)
    const moment = Math.max(bentBetween(tie, outer, 0, bend), bentBetween(tie, 2 * upper, bend, -bend))
    const shear = Math.max((tie * outer) / 2 + bend / outer, tie * upper + bend / upper)
    return [{ id, push: -lowerThrust, moment, shear }]
  }
  const [sine, cosine] = [Math.sin(Math.atan(pitch)), Math.cos(Math.atan(pitch))]
  const side = (load: number, more: 1 | -1): Part => {
    if (id === 'queen-post') return { id, push: more * sway - hung, moment: 0, shear: 0 }
    const length = id === 'rafter' ? outer : upper
    const push =
      id === 'rafter'
        ? lowerThrust * cosine + (mean * (outer + upper) + hung + (more * uneven * outer) / 2) * sine
        : upperThrust * cosine + (mean + (more * uneven) / 2) * upper * sine
    return { id, push, moment: even(load, length), shear: ((load * length) / 2) * cosine }
  }
  return [side(left, 1), side(right, -1)]
}

const FORMS = { king, 'king-struts': kingStruts, queen } as const

/**
 * What one timber of a truss is asked; one that differs from side to side stands there twice, and so may one that does not.
 * Source: derived (statics). @throws RangeError where span, pitch or the queens' place make no truss
 */
export function partsOf(form: TrussForm, shape: TrussShape, load: TrussLoad, id: PartId): readonly Part[] {
  if (!(shape.span > 0) || !(shape.pitch > 0) || !Number.isFinite(shape.pitch))
    throw new RangeError('a truss needs a span and a pitch above zero')
  if (form === 'queen' && !(shape.queenAt > 0 && shape.queenAt < 0.5))
    throw new RangeError('queen posts stand between foot and middle')
  return FORMS[form](shape, load, id)
}

/** Every timber of a truss with what it is asked. Source: derived (statics). @throws RangeError as `partsOf` */
export function trussParts(form: TrussForm, shape: TrussShape, load: TrussLoad): readonly Part[] {
  return PARTS[form].flatMap((id) => partsOf(form, shape, load, id))
}
