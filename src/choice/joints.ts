/** The joints of an option's frame, as they will be once dry, or at any moisture on the way there. */
import type { Reference } from '../data/reference'
import { INCH } from '../data/units'
import {
  type Band,
  housedBeam,
  type JointMovement,
  NOTHING,
  type RafterFoot,
  rafterFoot,
  scarf,
  tenonedGirt
} from '../wood/joints'
import { widened } from '../wood/scatter'
import { changeBetween } from '../wood/shrinkage'
import { type Facts, limit } from './facts'
import { mix, type OptionFacts } from './option-facts'
import { lengthwiseTotal } from './piece-facts'

export interface Joints {
  readonly housed: JointMovement
  readonly girt: JointMovement
  readonly scarf: JointMovement
  /** null where no rafter stands on the frame. */
  readonly rafter: RafterFoot | null
}

/** What the joints move by: strains still to come, across the rings' two ways and along the grain. */
export type Strains = Pick<OptionFacts, 'radial' | 'tangential' | 'lengthStrain'>

/**
 * Strains of an option once part of its shrinkage is made: what `jointsOf` needs to tell a gap before all is settled, as
 * against the drying clock. On delivery nothing has moved. The bands of delivery and of
 * the wood itself are carried; that of the seasons is not.
 * @param shrunk part of the shrinkage to oven-dry that the section has made, 0 to 1
 */
export function strainsAt(o: OptionFacts, shrunk: number, reference: Reference): Strains {
  const { wood, asIf } = o
  const fsp = wood.fibreSaturation
  const by = (total: number, from: number) => Math.max(0, changeBetween(total, from, fsp * (1 - shrunk), fsp))
  const band = (total: number): Band =>
    widened(
      { value: by(total, asIf.value), low: by(total, asIf.low), high: by(total, asIf.high) },
      reference.scatter.shrinkage.of
    )
  const [low, high] = lengthwiseTotal(wood, reference)
  return {
    radial: band(wood.radial),
    tangential: band(wood.tangential),
    lengthStrain: [by(low, asIf.value), by(high, asIf.value)]
  }
}

/**
 * Four joints of an option: a beam housed into a post of its own breadth, a girt tenoned into it, a scarf in the beam, and the
 * rafter on a plate as large as the post. Sizes of what is cut come from `content/limits.json`.
 */
export function jointsOf(o: OptionFacts, facts: Facts, reference: Reference, strains: Strains = o): Joints {
  const [b, d] = o.section
  const inches = (id: string) => limit(reference, id) * INCH
  const [low, high] = strains.lengthStrain
  const along: Band = { value: (low + high) / 2, low, high }
  const across = (share: number) => mix(strains.radial, strains.tangential, share)
  const post = across(o.postShare)
  const depth = across(o.shares.depth)
  const margin = inches('housing-margin')
  const length = facts.stick
  const rafter = o.frame.members.find((m) => m.id === 'rafter')?.sized.section?.[1] ?? d
  return {
    housed: housedBeam({ postSide: b, beamDepth: d, length, post, beam: depth, along, margin }),
    girt: tenonedGirt({
      postSide: b,
      girtDepth: d,
      length,
      pegFrom: Math.min(inches('joint-peg'), b / 2),
      post,
      girt: depth,
      along,
      margin
    }),
    scarf: scarf({
      depth: d,
      scarf: d * limit(reference, 'joint-scarf'),
      key: inches('joint-key'),
      across: depth,
      along,
      margin
    }),
    rafter:
      facts.slope > 0 && facts.loaded
        ? rafterFoot({
            plateBreadth: b,
            plateDepth: b,
            rafterDepth: rafter,
            notch: rafter * limit(reference, 'joint-notch'),
            slope: Math.atan(facts.slope),
            plate: post,
            rafter: depth,
            along,
            margin
          })
        : null
  }
}

/** What a part of a joint adds to its gap; nothing where it has no such part. */
export const partOf = (j: JointMovement, from: JointMovement['parts'][number]['from']): Band =>
  j.parts.find((p) => p.from === from)?.band ?? NOTHING

/** Least housing that hides what a housed shoulder may open, mm. Closed, for judging every option. */
export const housingNeeded = (o: OptionFacts, reference: Reference): number =>
  o.gapHigh + limit(reference, 'housing-margin') * INCH
