/** The wood that is looked into: every timber with all its checks, its joints, and a way out where it does not pass. */
import type { Origin, Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Check } from '../../frame/check'
import type { Joint } from '../../frame/joint'
import { type MemberSize, sizeMember } from '../../frame/member'
import type { SizedMember } from '../../frame/member-parts'
import type { Refusal } from '../../frame/member-spec'
import type { DesignValues, Section } from '../../frame/values'
import type { Drawn } from '../drawn'
import { jointName } from '../joinery/says'
import { ANSWERED, capital, computed, quantity, sentence } from '../say'
import { liftLimit, liftOf, type Tried, tooLong } from './job'
import { memberRanges } from './member-for'
import { refusalSays, wayOutSays } from './member-says'
import { checkOrigin, jointOpens, lengthOf, loadInputs, weightOf } from './origins'
import type { CheckRow, JointLine, LadderDetail, LadderJob, Part } from './types'
import { checkName, clauseWords, KIND_NAMES, PART_NAMES } from './words'

/** A section of the series, with where the wood's strength comes from. */
export const sectionOf = (section: Section, values: DesignValues | null, reference: Reference): Quantity => {
  const origin = computed(reference, 'section')
  return quantity(
    'section',
    section,
    values ? { ...origin, mark: values.origin.mark, sources: [...values.origin.sources, { key: 'nds' }] } : origin
  )
}
export const usedOf = (check: Check, values: DesignValues | null, reference: Reference): Quantity =>
  quantity('percent', check.ratio, checkOrigin(check, values, reference))

/** The mass of one stick, kg. */
export const stickMass = (part: SizedMember, density: number): number => {
  const [b, d] = part.sized.section ?? [0, 0]
  return (density * b * d * part.length) / 1e9
}

const checkRow = (check: Check, values: DesignValues | null, reference: Reference): CheckRow => {
  const used = usedOf(check, values, reference)
  return {
    name: capital(checkName(check.id)),
    demand: quantity(check.kind, check.demand, used.origin),
    capacity: quantity(check.kind, check.capacity, used.origin),
    used,
    clause: clauseWords(check.clause)
  }
}

const force = (value: number, origin: Origin): Quantity | null =>
  Math.abs(value) < 1 ? null : quantity('force', Math.abs(value), origin)

function lighterSays({ lighter, sized }: SizedMember, reference: Reference): Sentence | null {
  if (!sized.section) return null
  if (!lighter?.governing) return sentence('The smallest of the series already.')
  return sentence(`Next lighter is {section}: {used} in ${checkName(lighter.governing.id)}.`, {
    section: sectionOf(lighter.section, null, reference),
    used: usedOf(lighter.governing, null, reference)
  })
}

/** "2 of 17 ft, 6 × 12 in, pushed along by as much as 8,370 lb." */
function partSays(pieces: number, values: Readonly<Record<string, Quantity | null>>): Sentence {
  const { section, push, pull, used } = values
  const text = [
    pieces > 1 ? `${pieces} sticks of {length}` : 'One stick of {length}',
    section ? ', {section}' : '',
    push ? '; pushed along by as much as {push}' : '',
    pull ? `${push ? ' or' : ';'} pulled by as much as {pull}` : '',
    used && section ? '; used to {used}' : ''
  ].join('')
  const known = Object.entries(values).filter((e): e is [string, Quantity] => e[1] !== null)
  return sentence(`${text}.`, Object.fromEntries(known.filter(([name]) => text.includes(`{${name}}`))))
}

function partOf(part: SizedMember, job: LadderJob, tried: Tried, reference: Reference): Part {
  const { sized, pieces } = part
  const along = computed(reference, 'member-force', loadInputs(job, tried.spec))
  const figures = {
    length: lengthOf(part, job, tried.spec, reference),
    section: sized.section ? sectionOf(sized.section, sized.values, reference) : null,
    push: force(part.push, along),
    pull: force(part.pull, along),
    used: sized.governing ? usedOf(sized.governing, sized.values, reference) : null
  }
  return {
    name: PART_NAMES[part.id],
    pieces,
    ...figures,
    says: partSays(pieces, figures),
    checks: sized.checks.map((check) => checkRow(check, sized.values, reference)),
    lighter: lighterSays(part, reference)
  }
}

const HOIST = {
  two: 'two people carry it (up to {most})',
  hoist: 'it wants a hoist or more hands (two people carry up to {most})',
  crane: 'it wants a crane or a planned lift (from {most})'
} as const

function saysOf(job: LadderJob, tried: Tried, sheet: ShopSheetContent, reference: Reference): Sentence[] {
  const says: Sentence[] = []
  const { parts, spec, wood } = tried
  const [first] = parts
  const loads = loadInputs(job, spec)
  const values = first?.sized.values
  if (first?.ends && first.bearing && values)
    says.push(
      sentence('Each end brings {end} to its support and needs {bearing} of bearing along the beam.', {
        end: quantity('force', first.ends.end, computed(reference, 'end-load', loads)),
        bearing: quantity(
          'gap',
          first.bearing.end,
          computed(reference, 'bearing', {
            reaction: quantity('force', first.ends.end, computed(reference, 'end-load')),
            breadth: quantity('gap', first.sized.section?.[0] ?? 0, computed(reference, 'section')),
            'Fc⊥': quantity('stress', values.compressionPerp, values.origin)
          })
        )
      })
    )
  if (job.kind === 'post' && first && first.push > 0)
    says.push(
      sentence('It stands on {push}, its own weight in it.', {
        push: quantity('force', first.push, computed(reference, 'member-force', loads))
      })
    )
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
          length: lengthOf(heaviest, job, spec, reference),
          weight: weightOf(heaviest, mass, spec, reference),
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
          { section: sectionOf(largest, null, reference), used: usedOf(check, null, reference) }
        )
      : sentence(what)
  return [says, ...wayOutSays(job.kind, sized.wayOut)]
}

function drawnOf(job: LadderJob, tried: Tried, reference: Reference): Drawn | null {
  // The figures open in the sentences beside the drawing, where they stand again.
  const along = computed(reference, 'member-force')
  const parts = tried.parts.flatMap((p) =>
    p.sized.section
      ? [
          {
            id: p.id,
            name: PART_NAMES[p.id],
            section: p.sized.section,
            push: force(p.push, along),
            pull: force(p.pull, along)
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
    end: end === undefined ? null : quantity('force', end, computed(reference, 'end-load')),
    ...(job.points.length > 0
      ? { points: job.points.map(({ at, load }) => ({ at, load: quantity('force', load, ANSWERED) })) }
      : {})
  }
}

const jointLine = (joint: Joint, job: LadderJob, reference: Reference): JointLine => ({
  name: jointName(joint.id, job.kind === 'queen'),
  joinery: joint.verdict === 'joinery',
  says: jointOpens(joint, reference)
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
      parts: tried.parts.map((p) => partOf(p, job, tried, reference)),
      joints: joints.map((j) => jointLine(j, job, reference)),
      says: [...(passes ? saysOf(job, tried, sheet, reference) : []), ...strengthSays(job, first)],
      ways: passes ? [] : waysOf(job, sized, tried, reference),
      drawn: drawnOf(job, tried, reference)
    },
    left: sized.ok ? sized.notChecked : []
  }
}
