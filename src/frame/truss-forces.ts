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
function king({ span, pitch }: TrussShape, { left, right, tie }: TrussLoad): Part[] {
  const angle = Math.atan(pitch)
  const hung = (tie * span) / 2
  const thrust = (((left + right) * span) / 4 + hung) / 2 / pitch
  const rafter = (own: number, other: number): Part => ({
    id: 'rafter',
    push: thrust * Math.cos(angle) + ((3 * own + other) * (span / 8) + hung / 2) * Math.sin(angle),
    moment: even(own, span / 2),
    shear: ((own * span) / 4) * Math.cos(angle)
  })
  return [
    rafter(left, right),
    rafter(right, left),
    { id: 'tie', push: -thrust, moment: even(tie, span / 2), shear: (tie * span) / 4 },
    { id: 'king-post', push: -hung, moment: 0, shear: 0 }
  ]
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
function kingStruts({ span, pitch }: TrussShape, { left, right, tie }: TrussLoad): Part[] {
  const panel = span / 4
  const angle = Math.atan(pitch)
  const forces = kingStrutJoints(pitch, {
    left: 1.25 * left * panel,
    right: 1.25 * right * panel,
    ridge: 0.375 * (left + right) * panel,
    hung: (tie * span) / 2
  })
  const side = (i: 0 | 1, load: number): Part[] => [
    // At its foot a rafter also carries the end of its own load.
    {
      id: 'rafter',
      push: forces.lower[i] + 0.375 * load * panel * Math.sin(angle),
      moment: even(load, panel),
      shear: 0.625 * load * panel * Math.cos(angle)
    },
    { id: 'strut', push: forces.strut[i], moment: 0, shear: 0 },
    { id: 'tie', push: -forces.tie[i], moment: even(tie, span / 2), shear: (tie * span) / 4 }
  ]
  return [...side(0, left), ...side(1, right), { id: 'king-post', push: -forces.kingPost, moment: 0, shear: 0 }]
}

/**
 * Queen posts with a straining beam between their heads; principal rafters end at the heads, upper rafters stand on them. The
 * part of the load that both sides share goes by push and pull alone. Its panel between the queens has no diagonal: what one
 * side has more comes down through its queen post, goes up through the other, and the tie, one stick, bears it by bending.
 * No help is taken from rafters that run through. Source: derived (statics).
 */
function queen({ span, pitch, queenAt }: TrussShape, { left, right, tie }: TrussLoad): Part[] {
  const angle = Math.atan(pitch)
  const outer = queenAt * span
  const upper = span / 2 - outer
  const mean = (left + right) / 2
  const uneven = (left - right) / 2
  const hung = (tie * (span - outer)) / 2
  // At a queen's head: half the principal's load, half the upper rafters' load, and the tie that hangs on it.
  const lowerThrust = (mean * (outer / 2 + upper) + hung) / pitch
  const upperThrust = (mean * upper) / 2 / pitch
  const sway = (uneven * span) / 4
  const bend = (sway * 2 * outer * upper) / span
  const side = (load: number, more: 1 | -1): Part[] => [
    {
      id: 'rafter',
      push:
        lowerThrust * Math.cos(angle) + (mean * (outer + upper) + hung + (more * uneven * outer) / 2) * Math.sin(angle),
      moment: even(load, outer),
      shear: ((load * outer) / 2) * Math.cos(angle)
    },
    {
      id: 'upper-rafter',
      push: upperThrust * Math.cos(angle) + (mean + (more * uneven) / 2) * upper * Math.sin(angle),
      moment: even(load, upper),
      shear: ((load * upper) / 2) * Math.cos(angle)
    },
    { id: 'queen-post', push: more * sway - hung, moment: 0, shear: 0 }
  ]
  const tieMoment = Math.max(
    bentBetween(tie, outer, 0, bend),
    bentBetween(tie, outer, 0, -bend),
    bentBetween(tie, 2 * upper, bend, -bend)
  )
  const tieShear = Math.max((tie * outer) / 2 + Math.abs(bend) / outer, tie * upper + Math.abs(bend) / upper)
  return [
    ...side(left, 1),
    ...side(right, -1),
    { id: 'tie', push: -lowerThrust, moment: tieMoment, shear: tieShear },
    { id: 'straining-beam', push: lowerThrust - upperThrust, moment: 0, shear: 0 }
  ]
}

/**
 * Every timber of a truss with what it is asked; a timber that differs from side to side stands there twice.
 * Source: derived (statics). @throws RangeError where span, pitch or the queens' place make no truss
 */
export function trussParts(form: TrussForm, shape: TrussShape, load: TrussLoad): Part[] {
  if (!(shape.span > 0) || !(shape.pitch > 0) || !Number.isFinite(shape.pitch))
    throw new RangeError('a truss needs a span and a pitch above zero')
  if (form === 'king') return king(shape, load)
  if (form === 'king-struts') return kingStruts(shape, load)
  if (!(shape.queenAt > 0 && shape.queenAt < 0.5)) throw new RangeError('queen posts stand between foot and middle')
  return queen(shape, load)
}
