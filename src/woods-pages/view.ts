/** A wood's page as plain data: its words, looks, log ends, the truss in it, how it dries and lasts, and all its numbers. */
import { agedColour, coated, silverGrey, swatchOf } from '../choice/finish/looks'
import type { LadderLine } from '../choice/ladder/types'
import { limitQuantity, sentence } from '../choice/say'
import type { LogEnd, Swatch } from '../choice/types'
import type { Sentence } from '../data/quantity'
import type { Wood } from '../data/reference'
import { reportAsked } from '../ui/size-ladder/at-build'
import { told } from './figures'
import { against, jobOf, type Measure, woodOf } from './measure'
import { logEndsOf } from './movement'
import { boardsOf, lineOf, rankOf, yardOf } from './numbers'
import { PART_NAMES, type Prose, type ProsePart } from './prose'
import { type Group, groupsOf } from './rows'
import { SIDE, SIZES } from './sizes'

export interface Look {
  readonly label: string
  readonly swatch: Swatch
}
export interface PartView extends Pick<ProsePart, 'id' | 'mark'> {
  readonly name: string
  readonly says: readonly Sentence[]
  readonly others: readonly Pick<Wood, 'id' | 'name'>[]
}
export interface Rung {
  readonly label: string
  /** Within a sentence. */
  readonly said: string
  readonly section: readonly [number, number]
}
export interface WoodView {
  readonly wood: Wood
  readonly other: Wood
  readonly parts: readonly PartView[]
  readonly looks: readonly Look[]
  readonly logEnds: readonly LogEnd[]
  readonly traits: readonly Sentence[]
  readonly cautions: readonly Sentence[]
  /** The truss in this wood and the one that it is held against; those that no section carries are left out. */
  readonly rungs: readonly Rung[]
  readonly truss: readonly Sentence[]
  readonly drying: readonly Sentence[]
  readonly trials: readonly Sentence[]
  readonly regions: readonly string[]
  readonly groups: readonly Group[]
}

/** Fresh, after years of light, oiled, and left out to go grey. */
export function looksOf(wood: Wood, { reference }: Measure): Look[] {
  const oil = reference.finishes.find((finish) => finish.id === 'clear')
  return [
    { label: 'Freshly planed', swatch: swatchOf(wood.colour) },
    { label: 'Years of light indoors', swatch: swatchOf(agedColour(wood, reference)) },
    ...(oil ? [{ label: oil.name, swatch: swatchOf(coated(wood.colour, oil)) }] : []),
    { label: 'Left out to go grey', swatch: swatchOf(silverGrey(reference)) }
  ]
}

const pairOf = (value: unknown): readonly [number, number] | null =>
  Array.isArray(value) && value.length === 2 ? [Number(value[0]), Number(value[1])] : null

/** The section of a wood for the truss, to be drawn. */
export function rungOf(wood: Wood, measure: Measure): Rung | null {
  const section = pairOf(lineOf(wood, measure)?.section?.value)
  return section && { label: wood.short, said: wood.said, section }
}

const need = (line: LadderLine | null) => (line?.passes ? line.section : null)

function trussSays(wood: Wood, other: Wood, measure: Measure): Sentence[] {
  const { reference, ladder } = measure
  const job = sentence(
    'One job for every wood: a king-post truss of {span}, one every {width}, under {snow} of snow on the ground, over a heated room; green, No. 1.',
    jobOf(measure)
  )
  const line = lineOf(wood, measure)
  const own = need(line)
  const theirs = need(lineOf(other, measure))
  if (!line)
    return [
      job,
      sentence(`No strength of ${wood.said} is published, so it is not tried: it is for what carries nothing.`)
    ]
  const { parts, ways } = reportAsked({ wood: wood.id }, reference).chosen
  if (!own) return [job, ...ways]
  const rank = rankOf(wood, measure) ?? 0
  const passing = ladder.lines.filter((l) => l.passes).length
  const sections = parts.flatMap((p, i) => (p.section ? [[p.name.toLowerCase(), `part${i}`, p.section] as const] : []))
  return [
    job,
    sentence(
      `In ${wood.said} it takes ${sections.map(([name, key]) => `{${key}} for the ${name}`).join(', ')}. What decides is the ${line.governs}.${theirs ? ` The stoutest timber in ${other.said} is {theirs}.` : ''}`,
      { ...Object.fromEntries(sections.map(([, key, q]) => [key, q])), ...(theirs ? { theirs } : {}) }
    ),
    sentence(
      rank === 1
        ? `Of ${passing} woods that carry it, none needs less timber.`
        : `Of ${passing} woods that carry it, ${rank - 1} ${rank === 2 ? 'needs' : 'need'} less timber, or the same and less of its strength.`
    )
  ]
}

function dryingSays(wood: Wood, soldDry: boolean, measure: Measure): Sentence[] {
  if (soldDry)
    return [
      sentence('Sold dry, from old buildings. Inch boards of it took {boards} days when it was new.', {
        boards: boardsOf(wood)
      })
    ]
  const { place, reference } = measure
  const section = SIZES.square
  const dry = limitQuantity(reference, 'air-dry', 'moisture', 0.01)
  const yard = yardOf(wood, [SIDE, SIDE], measure)
  return [
    yard
      ? sentence(
          `Felled in winter and stacked under cover at ${place.name}, a green {section} is down to {dry} on the average in {yard}. Published inch boards of it take {boards} days.`,
          { section, dry, yard, boards: boardsOf(wood) }
        )
      : sentence(
          `Stacked under cover at ${place.name}, a green {section} takes longer than is tried to come to {dry}.`,
          {
            section,
            dry
          }
        )
  ]
}

const known = (origin: Wood['cautions'][number]['origin']) => [origin.sources, origin.mark] as const

export function viewOf(prose: Prose, measure: Measure): WoodView {
  const wood = woodOf(prose.id, measure)
  const other = against(wood, measure)
  const rungs = [wood, other].map((w) => rungOf(w, measure)).filter((r): r is Rung => r !== null)
  return {
    wood,
    other,
    parts: prose.parts.map(({ id, mark, paragraphs, others }) => ({
      id,
      mark,
      name: PART_NAMES[id],
      says: paragraphs.map((text) => told(text, wood, measure)),
      others: others.map((o) => woodOf(o, measure))
    })),
    looks: looksOf(wood, measure),
    logEnds: logEndsOf(wood, [SIDE, SIDE], measure),
    traits: Object.values(wood.traits)
      .filter((t) => t.level > 0 && t.says)
      .sort((a, b) => b.level - a.level)
      .map((t) => sentence(t.says ?? '', undefined, ...known(t.origin))),
    cautions: wood.cautions.map((c) => sentence(c.says, undefined, ...known(c.origin))),
    rungs,
    truss: trussSays(wood, other, measure),
    drying: dryingSays(wood, prose.soldDry, measure),
    trials: wood.durability.fieldTests.map((t) => sentence(t.says, undefined, ...known(t.origin))),
    regions: measure.reference.regions.filter((r) => wood.regions.includes(r.id)).map((r) => r.name),
    groups: groupsOf(wood, measure)
  }
}
