/** The joints of a sized job: of a truss its heel and its posts' ends, of a beam its seat on a post. A first look. */
import type { Reference } from '../data/reference'
import { GRAVITY } from '../data/units'
import type { Duration } from '../frame/factors'
import { jointsFor, jointWood } from '../frame/joinery'
import type { Joint, JointSetting } from '../frame/joint'
import { lineLoad } from '../frame/loads'
import type { SizedMember } from '../frame/member-parts'
import { isTruss } from '../frame/member-spec'
import type { Piece } from '../frame/seat'
import { type PartId, type TrussForm, trussParts } from '../frame/truss-forces'
import { heelJoint, kingFoot, type TrussCase } from '../frame/truss-joints'
import { type LoadState, loadStates, type OwnLoads } from '../frame/truss-parts'
import { jointSetting } from './joinery'
import type { Tried } from './ladder-job'
import type { LadderJob } from './ladder-types'

const pieceOf = (part: SizedMember | undefined): Piece | null =>
  part?.sized.section && part.sized.values ? { section: part.sized.section, values: part.sized.values } : null

/** Own weights of the sized truss as even loads, N/mm: what hangs above counts as if all of it got to the joints. */
function ownLoads(tried: Tried): OwnLoads {
  const { spec } = tried
  const line = (part: SizedMember) => {
    const [b, d] = part.sized.section ?? [0, 0]
    return (spec.density * GRAVITY * b * d) / 1e9
  }
  const of = (id: PartId) => tried.parts.filter((p) => p.id === id).reduce((n, p) => n + line(p), 0)
  const web = tried.parts.filter((p) => !['rafter', 'upper-rafter', 'tie'].includes(p.id))
  const hanging = web.reduce((n, p) => n + p.pieces * line(p) * p.length, 0)
  return {
    roof: Math.max(of('rafter'), of('upper-rafter')) * Math.hypot(1, spec.slope) + (2 * hanging) / spec.span,
    tie: of('tie'),
    straining: of('straining-beam')
  }
}

function statesOf(form: TrussForm, tried: Tried): readonly LoadState[] {
  const { spec } = tried
  const lines = <T extends { readonly load: number }>(list: readonly T[]) =>
    list.map((v) => ({ ...v, load: lineLoad(v.load, spec.width) }))
  return loadStates(
    {
      ...spec,
      form,
      shape: { span: spec.span, pitch: spec.slope, queenAt: spec.queenAt },
      dead: lineLoad(spec.dead * Math.hypot(1, spec.slope), spec.width),
      tieDead: lineLoad(spec.floorDead, spec.width),
      roof: lines(spec.roof),
      floor: lines(spec.floor),
      oneSided: spec.oneSided && {
        leeward: lineLoad(spec.oneSided.leeward, spec.width),
        windward: lineLoad(spec.oneSided.windward, spec.width)
      },
      unseasonedOrWet: spec.unseasoned || spec.wet
    },
    ownLoads(tried)
  )
}

function trussCases(form: TrussForm, tried: Tried): TrussCase[] {
  const { span, slope: pitch, queenAt } = tried.spec
  return statesOf(form, tried).map((state) => {
    const parts = trussParts(form, { span, pitch, queenAt }, state)
    const push = (id: PartId) => parts.filter((p) => p.id === id).map((p) => p.push)
    return {
      rafter: Math.max(0, ...push('rafter')),
      tie: Math.max(0, ...push('tie').map((n) => -n)),
      kingPost: Math.max(0, ...push(form === 'queen' ? 'queen-post' : 'king-post').map((n) => -n)),
      reaction: ((Math.max(state.left, state.right) + state.tie) * span) / 2,
      duration: state.duration
    }
  })
}

function trussJoints(form: TrussForm, tried: Tried, reference: Reference, setting: JointSetting): readonly Joint[] {
  const piece = (id: PartId) => pieceOf(tried.parts.find((p) => p.id === id))
  const [rafter, tie, king] = [piece('rafter'), piece('tie'), piece(form === 'queen' ? 'queen-post' : 'king-post')]
  if (!rafter || !tie || !king) return []
  const { span, slope, queenAt } = tried.spec
  const wood = jointWood(tried.wood, reference.design)
  const frame = {
    kind: 'king-post' as const,
    cases: trussCases(form, tried),
    // A queen post stands nearer to the tie's end: half of this is what its foot is from there.
    span: form === 'queen' ? 2 * queenAt * span : span,
    angle: Math.atan(slope),
    rafter,
    tie,
    king,
    post: null,
    beyond: null
  }
  if (form === 'king') return jointsFor(reference.joints, frame, wood, setting)
  return [heelJoint(reference.joints, frame, setting), kingFoot(reference.joints, frame, wood, setting)]
}

/** Its post is as broad as the beam, square. All of the load counts as lasting as long as the longest variable load in it. */
function beamJoints(part: SizedMember, tried: Tried, reference: Reference, setting: JointSetting): readonly Joint[] {
  const beam = pieceOf(part)
  if (!beam || !part.ends) return []
  const [side, deep] = beam.section
  const values = tried.values([side, side])
  if (!values) return []
  const { spec } = tried
  const own = (spec.density * GRAVITY * side * deep) / 1e9
  const lying = lineLoad(spec.dead * Math.hypot(1, spec.slope) + spec.floorDead, spec.width) + own
  const dead = (lying * spec.span + spec.points.reduce((n, p) => n + p.dead, 0)) / 2
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
  if (isTruss(kind)) return trussJoints(kind, tried, reference, setting)
  return kind === 'beam' || kind === 'ridge' ? beamJoints(first, tried, reference, setting) : []
}

/** Whether joinery will do: a truss needs all of its joints, a beam one of its two seats. */
export function joineryDoes(kind: LadderJob['kind'], joints: readonly Joint[]): boolean | null {
  if (joints.length === 0) return null
  const good = (j: Joint) => j.verdict === 'joinery'
  return isTruss(kind) ? joints.every(good) : joints.some(good)
}
