/** The joints of a sized truss of any form: what comes to each under every state of load. N, mm, MPa, radians. */
import type { JointRules } from '../data/reference'
import { jointsFor } from './joinery'
import type { Joint, JointSetting } from './joint'
import type { Piece } from './seat'
import type { JointWood } from './tenon'
import { type PartId, trussParts } from './truss-forces'
import type { TrussCase } from './truss-joints'
import { loadStates } from './truss-parts'
import { ownLoads, type TrussTimbers } from './truss-size'
import type { Section } from './values'

const hangs = (form: TrussTimbers['form']): PartId => (form === 'queen' ? 'queen-post' : 'king-post')

/**
 * Forces at the joints under every state of load, own weights included. The load beyond the foot comes down on its post too.
 * Source: asce-7, 2.4.1 and 7.6.1; derived (statics). @param eave beyond the foot on plan, mm
 */
export function trussCases(job: TrussTimbers, sections: ReadonlyMap<PartId, Section>, eave: number): TrussCase[] {
  const { span } = job.shape
  return loadStates(job, ownLoads(job, sections)).map((state) => {
    const parts = trussParts(job.form, job.shape, state)
    const push = (id: PartId) => parts.filter((p) => p.id === id).map((p) => p.push)
    return {
      rafter: Math.max(0, ...push('rafter')),
      tie: Math.max(0, ...push('tie').map((n) => -n)),
      kingPost: Math.max(0, ...push(hangs(job.form)).map((n) => -n)),
      reaction: Math.max(state.left, state.right) * (span / 2 + eave) + (state.tie * span) / 2,
      duration: state.duration
    }
  })
}

/**
 * Joints of a truss: rafter heel and the foot of each post; of a king post without struts its head too; and the tie on its
 * post where one stands under it. None where a timber has no section. Source: nds, 3.10 and Appendix E, tfec-1 (recalled).
 * @param pieceOf each timber with its strength @param post null where walls carry
 */
export function trussJoints(
  rules: JointRules,
  job: TrussTimbers,
  pieceOf: (id: PartId) => Piece | null,
  frame: { readonly eave: number; readonly post: Piece | null },
  wood: JointWood,
  setting: JointSetting
): readonly Joint[] {
  const [rafter, tie, king] = [pieceOf('rafter'), pieceOf('tie'), pieceOf(hangs(job.form))]
  if (!rafter || !tie || !king) return []
  const ids: readonly PartId[] = ['rafter', 'upper-rafter', 'tie', 'king-post', 'queen-post', 'strut', 'straining-beam']
  const sections = new Map(
    ids.flatMap((id) => {
      const section = pieceOf(id)?.section
      return section ? [[id, section] as const] : []
    })
  )
  const { span, pitch, queenAt } = job.shape
  const whole = {
    kind: 'king-post' as const,
    cases: trussCases(job, sections, frame.eave),
    // A queen post stands nearer to the tie's end: half of this is what its foot is from there.
    span: job.form === 'queen' ? 2 * queenAt * span : span,
    angle: Math.atan(pitch),
    rafter,
    tie,
    king,
    post: frame.post,
    beyond: null
  }
  const all = jointsFor(rules, whole, wood, setting)
  // Struts or a straining beam press against the head too, in a way that is not looked at here.
  return job.form === 'king' ? all : all.filter((joint) => joint.id !== 'king-head')
}
