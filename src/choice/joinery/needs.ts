/** What the joints of a truss ask for beyond what its timbers do: the sections at which timber joinery alone would do. */
import type { MemberId } from '../../frame/job'
import type { Joint } from '../../frame/joint'
import type { Section } from '../../frame/values'
import { canBeSawn, seriesOf } from '../frame-for'
import type { OptionFacts } from '../option-facts'
import type { Context } from '../rule'
import { type Instead, joineryOf } from './joinery'

const TIE_JOINTS: ReadonlySet<Joint['id']> = new Set(['heel', 'post-top'])

/**
 * Sections of the shop at which every joint of the truss works in timber, those that differ from the sized ones only; null
 * where none of the shop's do. A stouter tie is looked for first, then a stouter post in its middle. Of no use where the size
 * is settled, the job no truss, or the joints work already: then nothing differs.
 * Source: nds, tfec-1 (recalled), as the joints themselves.
 */
export function joineryNeeds(o: OptionFacts, c: Context): Instead | null {
  const { facts, sheet } = c
  if (facts.carries !== 'truss' || facts.size !== null) return {}
  const works = (joints: readonly Joint[], tie: boolean) =>
    joints.every((j) => TIE_JOINTS.has(j.id) !== tie || j.verdict === 'joinery')
  const sectionOf = (id: MemberId) => o.frame.members.find((m) => m.id === id)?.sized.section ?? null
  const [rafter, tie] = [sectionOf('rafter'), sectionOf('tie')]
  const middle: MemberId = facts.truss === 'queen' ? 'queen-post' : 'king-post'
  const post = sectionOf(middle)
  if (!rafter || !tie || !post) return {}
  const cap = facts.depthLimit ?? Number.POSITIVE_INFINITY
  const series = seriesOf(sheet).filter(
    (s) => s[0] >= rafter[0] - 0.1 && s[1] <= cap + 0.1 && canBeSawn(s, o.option.heart, o.available)
  )
  const area = ([b, d]: Section) => b * d
  const first = (than: Section, does: (section: Section) => boolean) =>
    does(than) ? than : series.find((s) => area(s) > area(than) && s[1] >= than[1] - 0.1 && does(s))
  let stouter = tie
  let held = post
  // A stouter post weighs more on the tie, which may tip its own joints: so until both stand.
  for (;;) {
    const tieNow = first(stouter, (section) => works(joineryOf(o, c, { tie: section, [middle]: held }), true))
    if (!tieNow) return null
    const postNow = first(held, (section) => works(joineryOf(o, c, { tie: tieNow, [middle]: section }), false))
    if (!postNow) return null
    const settled = tieNow === stouter && postNow === held
    stouter = tieNow
    held = postNow
    if (settled) break
  }
  return { ...(stouter === tie ? {} : { tie: stouter }), ...(held === post ? {} : { [middle]: held }) }
}
