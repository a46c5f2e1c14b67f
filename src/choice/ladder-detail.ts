/** The wood that is looked into: every timber with all its checks, its joints, and a way out where it does not pass. */
import type { Quantity, Sentence } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Check } from '../frame/check'
import type { Joint } from '../frame/joint'
import { type MemberSize, sizeMember } from '../frame/member'
import type { SizedMember } from '../frame/member-parts'
import type { Refusal } from '../frame/member-spec'
import type { DesignValues, Section } from '../frame/values'
import type { Drawn } from './drawn'
import { checkFigures } from './figures'
import { jointName, jointSays } from './joinery-says'
import { liftLimit, liftOf, type Tried, tooLong } from './ladder-job'
import type { CheckRow, JointLine, LadderDetail, LadderJob, Part } from './ladder-types'
import { checkName, clauseWords, KIND_NAMES, PART_NAMES } from './ladder-words'
import { memberRanges } from './member-for'
import { refusalSays, wayOutSays } from './member-says'
import { capital, computed, quantity, sentence } from './say'

/** A section of the series, with where the wood's strength comes from. */
export const sectionOf = (section: Section, values: DesignValues | null, reference: Reference): Quantity => {
  const origin = computed(reference, 'section')
  return quantity(
    'section',
    section,
    values ? { ...origin, mark: values.origin.mark, sources: [...values.origin.sources, { key: 'nds' }] } : origin
  )
}
export const usedOf = (check: Check, reference: Reference): Quantity =>
  quantity('percent', check.ratio, computed(reference, check.id))

/** The mass of one stick, kg. */
export const stickMass = (part: SizedMember, density: number): number => {
  const [b, d] = part.sized.section ?? [0, 0]
  return (density * b * d * part.length) / 1e9
}

const checkRow = (check: Check, reference: Reference): CheckRow => {
  const { demand, capacity } = checkFigures(check, reference)
  return {
    name: capital(checkName(check.id)),
    demand,
    capacity,
    used: usedOf(check, reference),
    clause: clauseWords(check.clause)
  }
}

const force = (value: number, reference: Reference): Quantity | null =>
  Math.abs(value) < 1 ? null : quantity('force', Math.abs(value), computed(reference, 'member-force'))

function lighterSays({ lighter, sized }: SizedMember, reference: Reference): Sentence | null {
  if (!sized.section) return null
  if (!lighter?.governing) return sentence('The smallest of the series already.')
  return sentence(`Next lighter is {section}: {used} in ${checkName(lighter.governing.id)}.`, {
    section: sectionOf(lighter.section, null, reference),
    used: usedOf(lighter.governing, reference)
  })
}

const partOf = (part: SizedMember, reference: Reference): Part => ({
  name: PART_NAMES[part.id],
  pieces: part.pieces,
  length: quantity('span', part.length, computed(reference, 'section')),
  section: part.sized.section ? sectionOf(part.sized.section, part.sized.values, reference) : null,
  push: force(part.push, reference),
  pull: force(part.pull, reference),
  used: part.sized.governing ? usedOf(part.sized.governing, reference) : null,
  checks: part.sized.checks.map((check) => checkRow(check, reference)),
  lighter: lighterSays(part, reference)
})

const HOIST = {
  two: 'two people carry it (up to {most})',
  hoist: 'it wants a hoist or more hands (two people carry up to {most})',
  crane: 'it wants a crane or a planned lift (from {most})'
} as const

function saysOf(job: LadderJob, tried: Tried, sheet: ShopSheetContent, reference: Reference): Sentence[] {
  const says: Sentence[] = []
  const { parts, spec, wood } = tried
  const [first] = parts
  const at = (value: number, formula: string, kind: 'force' | 'gap' | 'mass' | 'span') =>
    quantity(kind, value, computed(reference, formula))
  if (first?.ends && first.bearing)
    says.push(
      sentence('Each end brings {end} to its support and needs {bearing} of bearing along the beam.', {
        end: at(first.ends.end, 'end-load', 'force'),
        bearing: at(first.bearing.end, 'bearing', 'gap')
      })
    )
  if (job.kind === 'post' && first && first.push > 0)
    says.push(sentence('It stands on {push}, its own weight in it.', { push: at(first.push, 'member-force', 'force') }))
  const heaviest = parts.reduce<SizedMember | null>(
    (most, p) => (most && stickMass(most, spec.density) >= stickMass(p, spec.density) ? most : p),
    null
  )
  if (heaviest?.sized.section) {
    const mass = stickMass(heaviest, spec.density)
    const lift = liftOf(mass, reference)
    says.push(
      sentence(
        `Its heaviest stick, ${PART_NAMES[heaviest.id].toLowerCase()} of {length}, weighs about {weight} ${job.unseasoned ? 'green' : 'dry'}: ${HOIST[lift]}.`,
        {
          length: at(heaviest.length, 'section', 'span'),
          weight: at(mass, 'weight', 'mass'),
          most: liftLimit(reference, lift === 'crane' ? 'heavy-stick' : 'two-carry')
        }
      )
    )
  }
  const longest = tooLong(tried, sheet)
  if (longest !== null)
    says.push(
      sentence(
        `A stick of that length is more than ${wood.said} usually comes in, {longest}: ask your mill, or scarf it.`,
        {
          longest: quantity('span', longest, wood.supply.origin)
        }
      )
    )
  return says
}

/** Whence the strength of the timbers. */
function strengthSays(job: LadderJob, values: DesignValues | null): Sentence[] {
  if (!values) return []
  const cite = (text: string) => sentence(text, undefined, values.origin.sources, values.origin.mark)
  return [
    values.derived
      ? cite(
          'No table holds this wood as timbers: its strength is derived here from small clear specimens, and is an indication only.'
        )
      : cite(
          `Its strength is the table’s for ${job.grade === 'Select Structural' ? job.grade : job.grade.replace('No.', 'No.\u00a0')}.`
        )
  ]
}

/** What is impossible, and what would make it possible. */
function waysOf(job: LadderJob, sized: MemberSize | Refusal, tried: Tried, reference: Reference): Sentence[] {
  if (!sized.ok) return [refusalSays(sized, tried.spec)]
  if (!sized.wayOut) return []
  const failed = sized.members.filter((m) => m.sized.section === null)
  const worst = failed.reduce<SizedMember | undefined>(
    (most, m) => ((most?.sized.governing?.ratio ?? 0) >= (m.sized.governing?.ratio ?? 0) ? (most ?? m) : m),
    undefined
  )
  const check = worst?.sized.governing
  const largest = tried.series.at(-1)
  const what = `Impossible in ${tried.wood.said} of this grade: no section of the series carries this ${KIND_NAMES[job.kind]}.`
  const says =
    check && worst && largest
      ? sentence(
          `${what} In its largest, {section}, the ${PART_NAMES[worst.id].toLowerCase()} is at {used} in ${checkName(check.id)}.`,
          { section: sectionOf(largest, null, reference), used: usedOf(check, reference) }
        )
      : sentence(what)
  return [says, ...wayOutSays(job.kind, sized.wayOut)]
}

function drawnOf(job: LadderJob, tried: Tried, reference: Reference): Drawn | null {
  const parts = tried.parts.flatMap((p) =>
    p.sized.section
      ? [
          {
            id: p.id,
            name: PART_NAMES[p.id],
            section: p.sized.section,
            push: force(p.push, reference),
            pull: force(p.pull, reference)
          }
        ]
      : []
  )
  if (parts.length < tried.parts.length) return null
  const end = tried.parts[0]?.ends?.end
  return {
    kind: job.kind,
    span: job.span,
    slope: job.slope,
    height: job.height,
    queenAt: tried.spec.queenAt,
    parts,
    end: end === undefined ? null : quantity('force', end, computed(reference, 'end-load'))
  }
}

const jointLine = (joint: Joint, job: LadderJob, reference: Reference): JointLine => ({
  name: jointName(joint.id, job.kind === 'queen'),
  joinery: joint.verdict === 'joinery',
  says: jointSays(joint, reference)
})

/** Everything of the chosen wood, and what its checks leave out. */
export function ladderDetail(
  job: LadderJob,
  tried: Tried | null,
  joints: readonly Joint[],
  sheet: ShopSheetContent,
  reference: Reference
): { readonly detail: LadderDetail; readonly left: MemberSize['notChecked'] } {
  const { wood, kind } = job
  const named = { wood: wood.id, said: wood.said }
  if (!tried) {
    const ways = [sentence(`No strength is published for ${wood.said} that a size could rest on: choose another wood.`)]
    return { detail: { ...named, parts: [], joints: [], says: [], ways, drawn: null }, left: [] }
  }
  const sized = sizeMember(kind, tried.spec, tried.series, tried.values, memberRanges(reference))
  const first = tried.parts.find((p) => p.sized.values)?.sized.values ?? null
  const passes = tried.parts.every((p) => p.sized.section !== null)
  return {
    detail: {
      ...named,
      parts: tried.parts.map((p) => partOf(p, reference)),
      joints: joints.map((j) => jointLine(j, job, reference)),
      says: [...(passes ? saysOf(job, tried, sheet, reference) : []), ...strengthSays(job, first)],
      ways: passes ? [] : waysOf(job, sized, tried, reference),
      drawn: drawnOf(job, tried, reference)
    },
    left: sized.ok ? sized.notChecked : []
  }
}
