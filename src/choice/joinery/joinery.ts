/** The joints of an option's frame, sized as a first look: what each is asked, how it is cut, whether steel must be thought of. */
import type { Reference, Wood } from '../../data/reference'
import { INCH } from '../../data/units'
import { loadCases } from '../../frame/cases'
import { type MemberId, mainLineLoads, ownWeight, trussTimbers } from '../../frame/job'
import { jointsFor, jointWood } from '../../frame/joinery'
import type { Joint, JointSetting } from '../../frame/joint'
import type { Piece } from '../../frame/seat'
import { trussJoints } from '../../frame/truss-joinery'
import type { Section } from '../../frame/values'
import { limit } from '../facts'
import { frameJob, gradeOf, valuesOf } from '../frame-for'
import type { OptionFacts } from '../option-facts'
import type { Context } from '../rule'

/** Sections in place of those that were sized. */
export type Instead = Readonly<Partial<Record<MemberId, Section>>>

/** A section of the option's wood with its strength. */
function pieceAt(section: Section, wood: Wood, { reference, sheet }: Context): Piece | null {
  const values = valuesOf(wood, gradeOf(sheet, wood), reference)(section)
  return values ? { section, values } : null
}

/** The member of the frame as a piece with its strength; null where it was not sized. */
function pieceOf(o: OptionFacts, id: MemberId, instead: Instead, c: Context): Piece | null {
  const other = instead[id]
  if (other) return pieceAt(other, o.wood, c)
  const sized = o.frame.members.find((m) => m.id === id)?.sized
  return sized?.section && sized.values ? { section: sized.section, values: sized.values } : null
}

/** How joints are cut: draw-bored, with the usual peg, which stands first of its list. */
export const jointSetting = (reference: Reference, wet: boolean): JointSetting => ({
  pegGravity: reference.joints.pegWoods[0]?.gravity ?? reference.joints.peg.gravityLeast,
  tenon: limit(reference, 'mortise-width') * INCH,
  drawBored: true,
  wet
})

/**
 * Joints of the main frame under every load case; nothing where it carries nothing, or has no strength or no section.
 * A truss: heel, its posts' feet, a plain king post's head, and the tie on its post. A beam: on its post, and housed into one.
 * Source: nds, tfec-1 (recalled); see `frame/joinery.ts`. @param instead other sections than those that were sized
 */
export function joineryOf(o: OptionFacts, c: Context, instead: Instead = {}): readonly Joint[] {
  const { facts, reference } = c
  if (!facts.loaded || !o.frame.passes) return []
  const unseasoned = o.option.seasoning === 'green' || o.option.seasoning === 'air'
  const job = frameJob(facts, reference, o.wood, unseasoned)
  const { dead, variable } = mainLineLoads(job)
  const wood = jointWood(o.wood, reference.design)
  const post = pieceOf(o, 'post', instead, c)
  if (facts.carries !== 'truss') {
    const beam = pieceOf(o, 'beam', instead, c)
    const stands = post ?? (beam && pieceAt([beam.section[0], beam.section[0]], o.wood, c))
    if (!beam || !stands) return []
    const cases = loadCases(dead + ownWeight(beam.section, job.density), variable).map(({ load, duration }) => ({
      load: (load * facts.span) / 2,
      duration
    }))
    return jointsFor(
      reference.joints,
      { kind: 'beam', cases, beam, post: stands },
      wood,
      jointSetting(reference, facts.wet)
    )
  }
  return trussJoints(
    reference.joints,
    trussTimbers(job, facts.size !== null),
    (id) => pieceOf(o, id, instead, c),
    { eave: job.eave, post },
    wood,
    jointSetting(reference, facts.wet)
  )
}
