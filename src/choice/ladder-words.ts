/** The names of timbers, checks and joints on the size ladder, and what a joint says. */
import type { Quantity, Sentence } from '../data/quantity'
import type { Joint, SizeId } from '../frame/joint'
import type { SizedMember } from '../frame/member-parts'
import type { MemberKind } from '../frame/member-spec'
import { CHECK_NAMES } from './rules/strength'
import { quantity, sentence } from './say'

export const KIND_NAMES: Readonly<Record<MemberKind, string>> = {
  king: 'king-post truss',
  'king-struts': 'king-post truss with struts',
  queen: 'queen-post truss',
  rafter: 'rafter on a ridge beam',
  ridge: 'ridge beam',
  purlin: 'purlin',
  beam: 'beam',
  joist: 'floor joist',
  post: 'post'
}

export const PART_NAMES: Readonly<Record<SizedMember['id'], string>> = {
  beam: 'Beam',
  joist: 'Joist',
  purlin: 'Purlin',
  ridge: 'Ridge beam',
  rafter: 'Rafter',
  'upper-rafter': 'Upper rafter',
  post: 'Post',
  tie: 'Tie',
  'king-post': 'King post',
  'queen-post': 'Queen post',
  strut: 'Strut',
  'straining-beam': 'Straining beam'
}

export const checkName = (id: string): string => CHECK_NAMES[id] ?? id

/** "nds 3.9.2" as a framer would look it up. */
export const clauseWords = (clause: string): string => clause.replace(/^(nds|ibc|asce-7)\b/, (s) => s.toUpperCase())

const NAMES: Readonly<Record<Joint['id'], string>> = {
  heel: 'Rafter’s heel',
  'king-foot': 'King post’s foot',
  'king-head': 'King post’s head',
  'post-top': 'On top of its post',
  housed: 'Housed into its post'
}
export const jointName = (id: Joint['id'], queen: boolean): string =>
  queen && id === 'king-foot' ? 'Queen post’s foot' : NAMES[id]

const WHY: Readonly<Record<NonNullable<Joint['reason']>, string>> = {
  'step-too-deep': 'the step that the push asks for is deeper than the tie may be cut',
  'tie-too-short': 'the tie is too short beyond the step',
  'tie-too-weak': 'what the step leaves of the tie does not hold the pull',
  'tenon-too-narrow': 'no peg fits with the wood that it needs beside it',
  'tenon-full': 'more pegs are needed than the tenon holds',
  'tenon-breaks': 'the tenon would break across its peg holes',
  'timber-too-shallow': 'the mortised timber is too shallow for the pegs',
  'housing-too-deep': 'the housing that the load asks for is deeper than a post is cut',
  'seat-too-small': 'the seat is too small and would be crushed',
  'face-too-small': 'the faces that meet are too small and would be crushed'
}

const GOOD: Readonly<Record<Joint['id'], string>> = {
  heel: 'A step {step} deep bears the push; leave {plane} of tie beyond it.',
  'king-foot': '{count} pegs of {peg} hold the pull, {end} from the end of a tenon {tenon} long.',
  'king-head': 'The rafters bear on its sides; leave {head} of post above them.',
  'post-top': 'The top of a post as broad as the beam bears it.',
  housed: 'A housing {seat} deep in a post as broad as the beam bears it.'
}
const SIZES: Readonly<Record<string, SizeId>> = {
  step: 'step',
  plane: 'plane',
  end: 'peg-end',
  tenon: 'tenon-length',
  head: 'head',
  seat: 'seat'
}

/** One joint in a sentence: how it is cut, and how far it is used; or why steel must be thought of. */
export function jointSays(joint: Joint): Sentence {
  const { origin, governing } = joint
  const all: Record<string, Quantity> = {}
  for (const [name, id] of Object.entries(SIZES)) {
    const size = joint.sizes[id]
    if (size !== undefined) all[name] = quantity('gap', size, origin)
  }
  if (joint.pegs) {
    all['count'] = quantity('count', joint.pegs.count, origin)
    all['peg'] = quantity('gap', joint.pegs.diameter, origin)
  }
  if (governing) all['used'] = quantity('percent', governing.ratio, origin)
  const joinery = joint.verdict === 'joinery'
  // A step or a housing is cut as deep as its load asks: that it is then used to the full says nothing.
  const cutToFit = joinery && (joint.id === 'heel' || joint.id === 'housed')
  const used = governing && governing.ratio > 0.005 && !cutToFit ? ' Used to {used}.' : ''
  const text = joinery
    ? `${GOOD[joint.id]}${used}`
    : `Steel, or larger timbers, must be thought of: ${joint.reason ? WHY[joint.reason] : 'it does not hold'}.${used}`
  return sentence(text, Object.fromEntries(Object.entries(all).filter(([name]) => text.includes(`{${name}}`))))
}
