/** What the answers come to: every open answer filled with what is assumed, the place's climate worked out once. */
import type { Place, Reference } from '../data/reference'
import { FOOT, INCH, PSF, percent } from '../data/units'
import type { Variable } from '../frame/cases'
import type { Carries } from '../frame/job'
import { type OneSided, oneSidedSnow, roofSnow } from '../frame/loads'
import type { TrussForm } from '../frame/truss-forces'
import type { Section } from '../frame/values'
import {
  type Details,
  type Hazard,
  hazardOf,
  schefferIndex,
  schefferMonths,
  type UseClass,
  useClassOf
} from '../wood/decay'
import { type Exposure, type ServiceMoisture, serviceMoisture } from '../wood/service'
import { askedQuestions } from './questions'
import { type Answer, type Answers, CRITERIA, type Criterion, UNSURE } from './types'

export type LoadedBy = 'snow' | 'roof' | 'rooms' | 'deck' | 'storage'

export interface Facts {
  /** Answers as used: the person's own, with what was open filled in. */
  readonly answers: Answers
  /** Ids of the questions that were open and matter. */
  readonly assumed: readonly string[]
  readonly loaded: boolean
  readonly exposure: Exposure
  readonly place: Place
  readonly service: ServiceMoisture
  readonly hazardIndex: number
  readonly hazardMonths: readonly number[]
  readonly hazard: Hazard
  /** How water is kept off and let go; moves the use class where rain comes near. */
  readonly details: Details
  readonly useClass: UseClass
  readonly carries: Carries
  /** Form of the trusses; of no meaning to beams. */
  readonly truss: TrussForm
  readonly span: number
  readonly spacing: number
  readonly count: number
  readonly slope: number
  readonly groundSnow: number
  /** Variable loads on plan, Pa, each acting alone; `by` names what it is. */
  readonly variable: readonly (Variable & { readonly by: LoadedBy })[]
  /** Snow on one side of a truss, Pa on plan; null where none is asked. */
  readonly oneSided: OneSided | null
  readonly dead: { readonly pressure: number; readonly id: string }
  readonly postHeight: number | null
  readonly stick: number
  readonly size: Section | null
  readonly depthLimit: number | null
  readonly finish: string
  readonly knots: string
  readonly checks: string
  readonly joints: string
  readonly resin: string
  readonly upkeep: string
  /** Weeks until it must stand; null for no hurry. */
  readonly standsWeeks: number | null
  /** Month in which it is felled, 1 to 12. */
  readonly felledMonth: number
  readonly waits: string
  readonly heating: string
  readonly budget: string
  /** Most that the frame may cost, cut and raised; null for no limit. */
  readonly budgetSum: number | null
  readonly local: string
  /** null where all weigh alike. */
  readonly order: readonly Criterion[] | null
  /** Forest regions of the place. */
  readonly regions: readonly string[]
  readonly nearRegions: readonly string[]
  readonly wet: boolean
}

const WEEKS: Readonly<Record<string, number | null>> = { w6: 6, w13: 13, w26: 26, w52: 52, w104: 104, none: null }

/** A value of `content/unsure.json` as an answer in SI. */
export function plausibleAnswers(
  reference: Reference,
  question: string
): readonly { readonly answer: Answer; readonly weight: number }[] {
  const entry = reference.unsure[question]
  if (!entry) return []
  const factor = { id: 1, ratio: 1, count: 1, ft: FOOT, in: INCH, psf: PSF }[entry.unit]
  return entry.values.map(({ value, weight }) => ({
    answer: typeof value === 'number' ? value * factor : value,
    weight
  }))
}

/** The number of a limit of `content/limits.json`. @throws Error where there is no such limit: a fault of ours, not of the input. */
export function limit(reference: Reference, id: string): number {
  const found = reference.limits.get(id)
  if (!found) throw new Error(`no limit "${id}" in content/limits.json`)
  return found.value
}

function variableLoads(
  reference: Reference,
  carries: Carries,
  exposure: Exposure,
  project: string,
  snow: number
): Facts['variable'] {
  const { live } = reference.loads
  const pressure = (id: string) => live.get(id)?.pressure ?? 0
  const inside = exposure === 'heated' || exposure === 'unheated'
  if (carries === 'floor') {
    const by = project === 'barn' ? 'storage' : inside ? 'rooms' : 'deck'
    const floor = { load: pressure(by), duration: 'ten-years', by } as const
    // Snow lies on a deck as it lies on the ground, and is not added to the people on it.
    return inside ? [floor] : [floor, { load: snow, duration: 'snow', by: 'snow' }]
  }
  return [
    { load: pressure('roof'), duration: 'seven-days', by: 'roof' },
    { load: snowOnRoof(reference, exposure, snow), duration: 'snow', by: 'snow' }
  ]
}

/** Snow on the roof, Pa on plan: none is taken off for slope. */
function snowOnRoof({ loads }: Reference, exposure: Exposure, ground: number): number {
  const { flatRoofFactor, exposureFactor, thermalHeated, thermalUnheated } = loads.snow
  return roofSnow(ground, flatRoofFactor, exposureFactor, exposure === 'heated' ? thermalHeated : thermalUnheated)
}

/** Share of a truss's span that one panel of its rafter at the ridge covers. */
const panelShare = (truss: TrussForm, reference: Reference): number =>
  truss === 'king' ? 0.5 : truss === 'king-struts' ? 0.25 : 0.5 - limit(reference, 'queen-usual')

function snowOnOneSide(
  reference: Reference,
  exposure: Exposure,
  { truss, span, slope, groundSnow }: Pick<Facts, 'truss' | 'span' | 'slope' | 'groundSnow'>
): OneSided | null {
  if (!(span > 0)) return null
  const panel = panelShare(truss, reference) * span
  const roof = snowOnRoof(reference, exposure, groundSnow)
  return oneSidedSnow(groundSnow, roof, slope, span / 2, panel, reference.loads.snow.oneSided)
}

/**
 * Facts from valid answers (see `readAnswers`). Open answers take the first plausible value of their question.
 * A place that the reference does not hold counts as open.
 */
export function factsFrom(given: Answers, reference: Reference): Facts {
  const answers: Record<string, Answer> = {}
  const assumed: string[] = []
  const asked = new Set(askedQuestions(given).map((q) => q.id))
  const take = (id: string): Answer => {
    const own = given[id]
    const open = own === undefined || own === UNSURE || (id === 'place' && !reference.places.has(String(own)))
    const value = open ? (plausibleAnswers(reference, id)[0]?.answer ?? UNSURE) : own
    if (open && asked.has(id)) assumed.push(id)
    answers[id] = value
    return value
  }
  const word = (id: string) => String(take(id))
  const number = (id: string): number | null => {
    const value = take(id)
    return typeof value === 'number' ? value : null
  }

  const project = word('project')
  const loaded = word('role') !== 'looks'
  const exposure = word('exposure') as Exposure
  const details = word('details') as Details
  const place = reference.places.get(word('place')) ?? ([...reference.places.values()][0] as Place)
  const carries = word('carries') as Carries
  const truss = word('truss') as TrussForm
  const span = number('span') ?? 0
  // Not sure of the spacing: floors are framed closer than roofs.
  const usual = carries === 'floor' ? 4 * FOOT : 10 * FOOT
  const spacing = number('spacing') === null || assumed.includes('spacing') ? usual : Number(given['spacing'])
  answers['spacing'] = spacing
  const slope = number('slope') ?? 0
  const groundSnow = number('snow') ?? 0
  const stick = number('stick')
  const size = take('size')
  const order = given['order']
  if (!Array.isArray(order)) assumed.push('order')
  // Where posts touch the ground only their feet are soaked; what stands above moves as in the weather.
  const service = serviceMoisture(place, exposure === 'ground' ? 'weather' : exposure, reference.room, {
    weatherAdds: percent(limit(reference, 'weather-adds')),
    weatherWettest: percent(limit(reference, 'weather-wettest'))
  })
  const index = schefferIndex(place.temperatureF, place.wetDays)
  const { felledMonths } = reference.drying.stages
  const regions = reference.regions.filter((r) => r.states.includes(place.state))
  return {
    answers,
    loaded,
    exposure,
    place,
    service,
    hazardIndex: index,
    hazardMonths: schefferMonths(place.temperatureF, place.wetDays),
    hazard: hazardOf(index, reference.decay.hazard.moderateFrom, reference.decay.hazard.highFrom),
    details,
    useClass: useClassOf(exposure, details),
    carries,
    truss,
    span,
    spacing,
    count: number('count') ?? 1,
    slope: carries === 'floor' ? 0 : slope,
    groundSnow,
    variable: variableLoads(reference, carries, exposure, project, groundSnow),
    oneSided: carries === 'truss' ? snowOnOneSide(reference, exposure, { truss, span, slope, groundSnow }) : null,
    dead: deadLoad(reference, carries, exposure),
    postHeight: number('postHeight'),
    stick: stick ?? span + limit(reference, 'end-allowance') * FOOT,
    size: Array.isArray(size) && size.length === 2 && typeof size[0] === 'number' ? (size as unknown as Section) : null,
    depthLimit: number('depthLimit'),
    finish: word('finish'),
    knots: word('knots'),
    checks: word('checks'),
    joints: word('joints'),
    resin: word('resin'),
    upkeep: word('upkeep'),
    standsWeeks: WEEKS[word('stands')] ?? null,
    felledMonth: felledMonths[word('begins') as keyof typeof felledMonths] ?? felledMonths.winter,
    waits: word('waits'),
    // Beams go into a room that is heated already.
    heating: project === 'beams' ? 'at-once' : word('heating'),
    budget: word('budget'),
    budgetSum: number('budgetSum'),
    local: word('local'),
    order: Array.isArray(order) ? ([...order, ...CRITERIA.filter((c) => !order.includes(c))] as Criterion[]) : null,
    assumed,
    regions: regions.map((r) => r.id),
    nearRegions: regions.flatMap((r) => r.near),
    wet:
      Math.max(...service.months) > percent(limit(reference, 'wet-service')) ||
      exposure === 'weather' ||
      exposure === 'ground'
  }
}

function deadLoad(reference: Reference, carries: Carries, exposure: Exposure): Facts['dead'] {
  const id = carries === 'floor' ? 'floor' : exposure === 'heated' ? 'roof' : 'roof-open'
  return { pressure: reference.loads.dead.get(id)?.pressure ?? 0, id }
}
