/** The size ladder of a job: what each wood needs for it, leanest first, and one of them looked into. Pure. */
import type { Quantity, Sentence } from '../../data/quantity'
import { originOf, type Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Joint } from '../../frame/joint'
import type { SizedMember } from '../../frame/member-parts'
import { isTruss } from '../../frame/member-spec'
import { computed, listed, quantity, sentence } from '../say'
import { ladderDetail, sectionOf, stickMass, usedOf } from './detail'
import { type LadderProblem, readLadder } from './door'
import { liftOf, loadsSays, type Tried, tryWood } from './job'
import { joineryDoes, ladderJoints } from './joints'
import { leftOutSays } from './member-says'
import { weightOf } from './origins'
import type { LadderAsked, LadderJob, LadderLine, LadderReport } from './types'
import { checkName, KIND_NAMES, PART_NAMES } from './words'

const areaOf = ({ sized: { section } }: SizedMember): number => (section ? section[0] * section[1] : 0)
const ratioOf = ({ sized: { governing } }: SizedMember): number => governing?.ratio ?? 0
const most = (parts: readonly SizedMember[], by: (p: SizedMember) => number): SizedMember | null =>
  parts.reduce<SizedMember | null>((best, p) => (best && by(best) >= by(p) ? best : p), null)

/** Where a wood stands: those that pass by their timber, in mm3, the rest behind. */
const volumeOf = (parts: readonly SizedMember[]): number =>
  parts.reduce((n, p) => n + areaOf(p) * p.length * p.pieces, 0)

/** "bending", or of a truss "tie: pull and bending together". */
const governsWords = (kind: LadderJob['kind'], part: SizedMember | null): string => {
  const id = part?.sized.governing?.id
  if (!part || !id) return ''
  return isTruss(kind) ? `${PART_NAMES[part.id].toLowerCase()}: ${checkName(id)}` : checkName(id)
}

function lineOf(job: LadderJob, tried: Tried, joints: readonly Joint[], reference: Reference): LadderLine {
  const { wood, parts, spec } = tried
  const failed = parts.filter((p) => p.sized.section === null)
  const passes = failed.length === 0
  const main = most(parts, areaOf)
  const worst = most(passes ? parts : failed, ratioOf)
  const heaviest = most(parts, (p) => stickMass(p, spec.density))
  const lighter = main?.lighter
  const weight = heaviest ? stickMass(heaviest, spec.density) : 0
  const values = main?.sized.values ?? tried.values(tried.series[0] ?? [0, 0])
  return {
    wood: wood.id,
    short: wood.short,
    passes,
    section: passes && main?.sized.section ? sectionOf(main.sized.section, main.sized.values, reference) : null,
    governs: governsWords(job.kind, worst),
    used: worst?.sized.governing ? usedOf(worst.sized.governing, worst.sized.values, reference) : null,
    lighter:
      passes && lighter?.governing
        ? {
            section: sectionOf(lighter.section, null, reference),
            lacks: checkName(lighter.governing.id),
            used: usedOf(lighter.governing, main?.sized.values ?? null, reference)
          }
        : null,
    volume: passes ? quantity('volume', volumeOf(parts) / 1e9, computed(reference, 'volume')) : null,
    heaviest:
      passes && heaviest
        ? { weight: weightOf(heaviest, weight, spec, reference), lift: liftOf(weight, reference) }
        : null,
    joinery: passes ? joineryDoes(job.kind, joints) : null,
    values: values?.origin.mark ?? 'derived'
  }
}

const whole = (q: Quantity | null): number => (q && typeof q.value === 'number' ? q.value : 0)

/** Leanest first; where two take the same timber, the one that is used less; what does not pass last, by how far it fails. */
function byTimber(a: LadderLine, b: LadderLine): number {
  if (a.passes !== b.passes) return a.passes ? -1 : 1
  const volume = Math.round((whole(a.volume) - whole(b.volume)) * 1e9)
  return volume || whole(a.used) - whole(b.used) || a.short.localeCompare(b.short)
}

function saysOf(job: LadderJob, lines: readonly LadderLine[]): Sentence[] {
  const what = KIND_NAMES[job.kind]
  const passing = lines.filter((l) => l.passes)
  const [leanest] = passing
  if (!leanest?.section)
    return [sentence(`None of ${lines.length} woods carries this ${what} in the sections of the series.`)]
  const same = passing.filter((l) => String(l.section?.value) === String(leanest.section?.value))
  const stoutest = passing.reduce((a, l) => (whole(l.volume) > whole(a.volume) ? l : a))
  const named = same.length <= 4 ? listed(same.map((l) => l.short)) : `${same.length} woods, ${leanest.short} first,`
  const some = `${named} ${same.length === 1 ? 'needs' : 'need'} {least}`
  const says = [
    stoutest.section && String(stoutest.section.value) !== String(leanest.section.value)
      ? sentence(
          `${some}${isTruss(job.kind) ? ' for the stoutest timber' : ''}, ${stoutest.short} as much as {most}.`,
          {
            least: leanest.section,
            most: stoutest.section
          }
        )
      : sentence(`${some}, the stoutest of the others no more.`, { least: leanest.section })
  ]
  const out = lines.length - passing.length
  if (out > 0) says.push(sentence(`In ${out} of ${lines.length} woods no section of the series passes at this grade.`))
  return says
}

/** Which sections were tried. The shop's name goes in as text, braces and all. */
function seriesSays({ series }: LadderJob, sheet: ShopSheetContent): Sentence {
  const shop = sheet.placeholder ? 'the sample shop' : sheet.name
  const { mark, sources } = originOf(series)
  return sentence(`Tried: ${series.about.replace('{shop}', () => shop)}.`, undefined, sources, mark)
}

function cautionsOf(job: LadderJob, left: Parameters<typeof leftOutSays>[0], looked: boolean): Sentence[] {
  const says = [leftOutSays(looked ? left.filter((id) => id !== 'joints') : left)]
  if (looked)
    says.push(
      sentence(
        `Joints are a first look${job.kind === 'king' ? '' : isTruss(job.kind) ? ' at heel and foot only' : ''}: the strengths of pegs and the rules for steps are recalled, not read.`
      )
    )
  says.push(
    sentence('A licensed engineer sizes the frame, to your local code and with the loads of your building office.')
  )
  return says
}

/** The ladder of a job that was read. Every wood that has values stands on it once. */
export function ladderOf(job: LadderJob, reference: Reference, sheet: ShopSheetContent): LadderReport {
  let chosen: { tried: Tried; joints: readonly Joint[] } | null = null
  const lines: LadderLine[] = []
  for (const wood of reference.woods.values()) {
    const tried = tryWood(job, reference, sheet, wood)
    if (!tried) continue
    const joints = ladderJoints(job, tried, reference)
    if (wood.id === job.wood.id) chosen = { tried, joints }
    lines.push(lineOf(job, tried, joints, reference))
  }
  const { detail, left } = ladderDetail(job, chosen?.tried ?? null, chosen?.joints ?? [], sheet, reference)
  const sorted = lines.sort(byTimber)
  return {
    asked: job.asked,
    loads: loadsSays(job, reference),
    lines: sorted,
    says: [...saysOf(job, sorted), seriesSays(job, sheet)],
    chosen: detail,
    cautions: cautionsOf(job, left, detail.joints.length > 0)
  }
}

/** The ladder of what is asked, or the fields that stand in its way. */
export function ladderReport(
  asked: LadderAsked,
  reference: Reference,
  sheet: ShopSheetContent
): LadderReport | { readonly problems: readonly LadderProblem[] } {
  const read = readLadder(asked, reference)
  return read.ok ? ladderOf(read.job, reference, sheet) : { problems: read.problems }
}
