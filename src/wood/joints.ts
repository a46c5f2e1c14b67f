/**
 * What four joints of a frame do as their timbers dry: the gap at the shoulder, the drop of what it carries, and the housing
 * that hides the gap. Lengths in mm, strains as fractions still to come, in bands. Strains at any moisture may be given, so a
 * gap can be followed through time. Joints are free to open: friction, pegs and load close part of it.
 * Source: derived. Each function says what moves against what; nothing moves but by shrinkage.
 */

export interface Band {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** Share of a joint's gap and where it comes from. */
export interface JointPart {
  readonly from: 'post' | 'length' | 'peg' | 'key' | 'halves' | 'plate' | 'rafter'
  readonly band: Band
}

export interface JointMovement {
  /** Opening at the shoulder, butt or heel. */
  readonly gap: Band
  /** How far what the joint carries comes down, or its bearing faces part. */
  readonly drop: Band
  /** Least depth of a housing that hides the widest gap. */
  readonly housing: number
  /** What the gap is made of. */
  readonly parts: readonly JointPart[]
}

export const NOTHING: Band = { value: 0, low: 0, high: 0 }

/** A band times a number that is not negative. Source: derived. */
export const times = (band: Band, by: number): Band => ({
  value: band.value * by,
  low: band.low * by,
  high: band.high * by
})

/** Sum of bands: lows with lows, since all follow the same drying. Source: derived. */
export const sum = (...bands: readonly Band[]): Band =>
  bands.reduce((a, b) => ({ value: a.value + b.value, low: a.low + b.low, high: a.high + b.high }), NOTHING)

function refuse(sizes: readonly number[], strains: readonly Band[]): void {
  if (!sizes.every((n) => Number.isFinite(n) && n > 0)) throw new RangeError('sizes of a joint must be above zero')
  if (!strains.every((s) => s.low >= 0 && s.value >= 0 && s.high >= 0 && Math.max(s.value, s.high) < 1))
    throw new RangeError('strains of a joint must lie from 0 to 1')
}

const joint = (parts: readonly JointPart[], drop: Band, margin: number, gap = sum(...parts.map((p) => p.band))) => ({
  gap,
  drop,
  housing: gap.high + margin,
  parts
})

/**
 * A beam housed into a post, its lower edge on the seat. The post's face draws back by half of its shrinkage; the beam
 * shortens by half of its length change at each end. Its top comes down by the shrinkage of its depth; the seat is end
 * grain of the post and stays. Source: derived.
 * @param length between the shoulders, mm
 * @param post strain across the post, in the way of the beam
 * @param beam strain across the beam's depth
 * @param along strain along the beam's grain
 * @param margin by which a housing must be deeper than the gap, mm
 */
export function housedBeam(spec: {
  readonly postSide: number
  readonly beamDepth: number
  readonly length: number
  readonly post: Band
  readonly beam: Band
  readonly along: Band
  readonly margin: number
}): JointMovement {
  const { postSide, beamDepth, length, post, beam, along } = spec
  refuse([postSide, beamDepth, length], [post, beam, along])
  return joint(
    [
      { from: 'post', band: times(post, postSide / 2) },
      { from: 'length', band: times(along, length / 2) }
    ],
    times(beam, beamDepth),
    spec.margin
  )
}

/**
 * A girt tenoned into a post, its square shoulder against the face, draw-bored. Where the pegs hold and the posts follow, only
 * the wood between face and peg draws back (low); where the posts cannot follow, half of the girt's length change is
 * added (middle); where the pegs give, it opens as a housed beam does (high). It hangs on pegs at half its depth, so its
 * top comes down by half the shrinkage of its depth. Source: derived.
 * @param pegFrom from the post's face to the centre of the pegs, mm, at most half of the post
 */
export function tenonedGirt(spec: {
  readonly postSide: number
  readonly girtDepth: number
  readonly length: number
  readonly pegFrom: number
  readonly post: Band
  readonly girt: Band
  readonly along: Band
  readonly margin: number
}): JointMovement {
  const { postSide, girtDepth, length, pegFrom, post, girt, along } = spec
  refuse([postSide, girtDepth, length, pegFrom], [post, girt, along])
  if (pegFrom > postSide / 2) throw new RangeError('pegs lie between the face and the middle of the post')
  return joint(
    [
      {
        from: 'peg',
        band: { value: pegFrom * post.value, low: pegFrom * post.low, high: (postSide / 2) * post.high }
      },
      { from: 'length', band: { value: (length / 2) * along.value, low: 0, high: (length / 2) * along.high } }
    ],
    times(girt, girtDepth / 2),
    spec.margin
  )
}

/**
 * A bladed or wedged scarf, keyed at its middle. The halves shorten alike from the key outwards, so alike halves do not
 * open the butts: what does is the key, which shrinks across its grain, and a half that shrinks lengthwise more than its
 * fellow over half of the scarf (middle: by half of the range; high: by all of it). Across the grain the two halves shrink
 * away from bolts or bands by the whole depth: the drop is what there is to take up. Source: derived.
 * @param scarf length of the scarf, mm
 * @param key width of the key or of the pair of wedges, mm
 */
export function scarf(spec: {
  readonly depth: number
  readonly scarf: number
  readonly key: number
  readonly across: Band
  readonly along: Band
  readonly margin: number
}): JointMovement {
  const { depth, across, along } = spec
  refuse([depth, spec.scarf, spec.key], [across, along])
  const unlike = (spec.scarf / 2) * Math.max(0, along.high - along.low)
  return joint(
    [
      { from: 'key', band: times(across, spec.key) },
      { from: 'halves', band: { value: unlike / 2, low: 0, high: unlike } }
    ],
    times(across, depth),
    spec.margin
  )
}

export interface RafterFoot extends JointMovement {
  /** By how much the notch opens beyond square, radians: its cuts turn towards the grain. */
  readonly turn: Band
}

/**
 * A rafter notched over a plate. The roof comes down by the plate's depth and by the wood left above the seat, which stands
 * square to the slope: (d - n)/cos. Wood shrinks across the grain and hardly along it, so a cut at an angle a to the
 * grain turns by (e - eL) sin a cos a; seat and heel turn apart, and the notch opens by twice that. The heel opens by half of the
 * plate's breadth, held at its middle, and by the heel's length n/cos times its turn. Source: derived.
 * @param slope angle of the rafter, radians, above 0 and below a right angle
 * @param notch depth of the notch square to the rafter, mm, less than its depth
 * @param plate strain across the plate
 * @param rafter strain across the rafter's depth
 */
export function rafterFoot(spec: {
  readonly plateBreadth: number
  readonly plateDepth: number
  readonly rafterDepth: number
  readonly notch: number
  readonly slope: number
  readonly plate: Band
  readonly rafter: Band
  readonly along: Band
  readonly margin: number
}): RafterFoot {
  const { plateBreadth, plateDepth, rafterDepth, notch, slope, plate, rafter, along } = spec
  refuse([plateBreadth, plateDepth, rafterDepth, notch], [plate, rafter, along])
  if (!(slope > 0 && slope < Math.PI / 2)) throw new RangeError(`a rafter's slope lies above 0 and below 90 degrees`)
  if (!(notch < rafterDepth)) throw new RangeError('a notch must leave wood of the rafter')
  const unlike = (across: number, lengthwise: number) => Math.max(0, across - lengthwise)
  const turned: Band = {
    value: unlike(rafter.value, along.value),
    low: unlike(rafter.low, along.high),
    high: unlike(rafter.high, along.low)
  }
  const turn = times(turned, Math.sin(slope) * Math.cos(slope))
  const parts: JointPart[] = [
    { from: 'plate', band: times(plate, plateBreadth / 2) },
    { from: 'rafter', band: times(turn, notch / Math.cos(slope)) }
  ]
  const drop = sum(times(plate, plateDepth), times(rafter, (rafterDepth - notch) / Math.cos(slope)))
  return { ...joint(parts, drop, spec.margin), turn: times(turn, 2) }
}
