/** The joints of a sized job: of a truss its heel and its posts' ends, of a beam its seat on a post. A first look. */
import type { Reference } from '../../data/reference'
import { GRAVITY } from '../../data/units'
import type { Duration } from '../../frame/factors'
import { jointsFor, jointWood } from '../../frame/joinery'
import type { Joint, JointSetting } from '../../frame/joint'
import { lineLoad } from '../../frame/loads'
import { type SizedMember, trussOf } from '../../frame/member-parts'
import { isTruss } from '../../frame/member-spec'
import type { Piece } from '../../frame/seat'
import { reactions } from '../../frame/span'
import type { PartId } from '../../frame/truss-forces'
import { trussJoints } from '../../frame/truss-joinery'
import { jointSetting } from '../joinery/joinery'
import type { Tried } from './job'
import type { LadderJob } from './types'

const pieceOf = (part: SizedMember | undefined): Piece | null =>
  part?.sized.section && part.sized.values ? { section: part.sized.section, values: part.sized.values } : null

/** Its post is as broad as the beam, square. All of the load counts as lasting as long as the longest variable load in it. */
function beamJoints(part: SizedMember, tried: Tried, reference: Reference, setting: JointSetting): readonly Joint[] {
  const beam = pieceOf(part)
  if (!beam || !part.ends) return []
  const [side, deep] = beam.section
  const values = tried.values([side, side])
  if (!values) return []
  const { spec } = tried
  const own = (spec.density * GRAVITY * side * deep) / 1e9
  const even = lineLoad(spec.dead * Math.hypot(1, spec.slope) + spec.floorDead, spec.width) + own
  const points = spec.points.map((p) => ({ at: p.at, load: p.dead }))
  // The end that bears more: loads at points need not stand in the middle.
  const dead = Math.max(...reactions({ span: spec.span, even, points, held: 0 }))
  const snowed = spec.roof.some((r) => r.duration === 'snow')
  const lasting: Duration = spec.floor.length > 0 ? 'ten-years' : snowed ? 'snow' : 'seven-days'
  const cases = [
    { load: Math.min(dead, part.ends.end), duration: 'permanent' as const },
    { load: part.ends.end, duration: lasting }
  ]
  const frame = { kind: 'beam' as const, cases, beam, post: { section: [side, side] as const, values } }
  return jointsFor(reference.joints, frame, jointWood(tried.wood, reference.design), setting)
}

/** The joints that are looked at; none for joists, purlins, rafters and posts, and where a timber has no section. */
export function ladderJoints(job: LadderJob, tried: Tried, reference: Reference): readonly Joint[] {
  const { kind } = job
  const setting = jointSetting(reference, tried.spec.wet)
  const [first] = tried.parts
  if (!first) return []
  if (isTruss(kind)) {
    const wood = jointWood(tried.wood, reference.design)
    const piece = (id: PartId) => pieceOf(tried.parts.find((p) => p.id === id))
    const frame = { eave: tried.spec.eave, post: null }
    return trussJoints(reference.joints, trussOf(kind, tried.spec), piece, frame, wood, setting)
  }
  return kind === 'beam' || kind === 'ridge' ? beamJoints(first, tried, reference, setting) : []
}

/** Whether joinery will do: a truss needs all of its joints, a beam one of its two seats. */
export function joineryDoes(kind: LadderJob['kind'], joints: readonly Joint[]): boolean | null {
  if (joints.length === 0) return null
  const good = (j: Joint) => j.verdict === 'joinery'
  return isTruss(kind) ? joints.every(good) : joints.some(good)
}
