/** The frame of a job in one wood: what section its timbers need, once a wood, heart and dryness. */
import type { Grade, Reference, Wood } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { FOOT, INCH, percent } from '../data/units'
import { temperatureFactors } from '../frame/factors'
import { type FrameJob, type Member, sizeFrame } from '../frame/job'
import { inTryingOrder } from '../frame/sizing'
import {
  atTemperature,
  type DesignValues,
  derivedValues,
  type Section,
  type SizeClass,
  sizeClassOf,
  tabulated
} from '../frame/values'
import { logDiameterNeeded } from '../wood/section'
import { densityAt } from '../wood/weight'
import { type Facts, limit } from './facts'
import type { Heart } from './types'

/** What a wood may be sawn to: the shop's word where it has one, else the trade's. mm. */
export interface Available {
  readonly longest: number
  readonly largest: Section
  readonly log: number
}

export function availableOf(sheet: ShopSheetContent, wood: Wood): Available {
  const own = sheet.woods.find((w) => w.species === wood.id)
  const [short, long] = own?.largestIn ?? []
  return {
    longest: own?.longestFt ? own.longestFt * FOOT : wood.supply.longest,
    largest: short && long ? [short * INCH, long * INCH] : wood.supply.largest,
    log: wood.supply.log
  }
}

/** The grade this wood is sold at: its own where the sheet names one. */
export const gradeOf = (sheet: ShopSheetContent, wood: Wood): Grade =>
  sheet.woods.find((w) => w.species === wood.id)?.grade ?? sheet.grade

export const canBeSawn = (section: Section, heart: Heart, available: Available): boolean =>
  section[0] <= available.largest[0] + 0.1 &&
  section[1] <= available.largest[1] + 0.1 &&
  logDiameterNeeded(heart, section[0], section[1]) <= available.log + 0.1

/**
 * The sheet's sections at their actual size, mm. Sizes in inches come half an inch under where they are planed; sizes in mm
 * are named as they come. Source: nds, Supplement Table 1B.
 */
export function seriesOf(sheet: ShopSheetContent): Section[] {
  const { unit, sizes } = sheet.sections
  const less = unit === 'in' && sheet.surface === 'planed' ? 0.5 : 0
  const side = (named: number) => (named - less) * (unit === 'in' ? INCH : 1)
  return inTryingOrder(sizes.map(([p = 0, q = 0]): Section => [side(Math.min(p, q)), side(Math.max(p, q))]))
}

type ValuesOf = (section: Section) => DesignValues | null

/** Design values of a wood by section: its table row, or derived from clear wood, or none. */
export function valuesOf(wood: Wood, grade: Grade, reference: Reference): ValuesOf {
  // A reference and its woods are never changed in place, and hundreds of frames ask for the same few rows.
  const woods = known.get(reference) ?? new WeakMap<Wood, Map<Grade, ValuesOf>>()
  known.set(reference, woods)
  const kept = woods.get(wood) ?? new Map<Grade, ValuesOf>()
  woods.set(wood, kept)
  const values = kept.get(grade) ?? valuesAfresh(wood, grade, reference)
  kept.set(grade, values)
  return values
}
const known = new WeakMap<Reference, WeakMap<Wood, Map<Grade, ValuesOf>>>()

function valuesAfresh(wood: Wood, grade: Grade, reference: Reference): ValuesOf {
  const rows = reference.design.filter((r) => r.group === wood.designGroup && r.grade === grade)
  const ratio = (id: string) => limit(reference, id)
  const derived = derivedValues(wood.strengthGreen, grade, {
    ratio: {
      'Select Structural': ratio('ratio-select-structural'),
      'No.1': ratio('ratio-no1'),
      'No.2': ratio('ratio-no2')
    },
    caution: ratio(wood.kind === 'hardwood' ? 'derived-hardwood' : 'derived-softwood'),
    origin: { mark: 'derived', sources: [{ key: 'astm-d2555' }, { key: 'astm-d245' }] }
  })
  const byClass = new Map<SizeClass, DesignValues | null>()
  return (section) => {
    const wanted = sizeClassOf(section)
    let values = byClass.get(wanted)
    if (values === undefined) {
      values = (wood.designGroup ? tabulated(rows, wood.designGroup, grade, section) : null) ?? derived
      byClass.set(wanted, values)
    }
    return values
  }
}

export function frameJob(facts: Facts, reference: Reference, wood: Wood, unseasoned: boolean): FrameJob {
  const deflection = reference.loads.deflection.find(
    (d) => d.id === (facts.carries === 'floor' ? 'floor' : facts.joints === 'tight' ? 'roof-plaster' : 'roof')
  )
  return {
    carries: facts.carries,
    form: facts.truss,
    queenAt: limit(reference, 'queen-usual'),
    span: facts.span,
    spacing: facts.spacing,
    slope: facts.slope,
    dead: facts.dead.pressure,
    variable: facts.variable,
    oneSided: facts.oneSided,
    postHeight: facts.postHeight,
    eave: limit(reference, 'eave') * FOOT,
    liveRatio: deflection?.liveRatio ?? 360,
    totalRatio: deflection?.totalRatio ?? 240,
    wet: facts.wet,
    unseasoned,
    mortise: limit(reference, 'mortise-width') * INCH,
    tieLeastDepth: limit(reference, 'tie-least-depth') * INCH,
    ends: limit(reference, 'end-allowance') * FOOT,
    density: densityAt(
      wood.gravityGreen,
      unseasoned ? wood.greenWhole : percent(limit(reference, 'dry-density-moisture'))
    )
  }
}

export interface Frame {
  readonly members: readonly Member[]
  /** Section of the main timber; the one asked for, or a common size, where none is computed or none passes. */
  readonly section: Section
  readonly passes: boolean
  /** Area that would just pass if every size were sold, mm2: a section that is barely used is as good as a leaner one. */
  readonly neededArea: number
  /** True where a section would pass if there were no limit on depth. */
  readonly withoutLimit: Section | null
  /** No table row and no clear-wood strength to derive from. */
  readonly noValues: boolean
}

/** Size the frame in one wood. For looks only, the section is the one asked for or a common size, and nothing is checked. */
export function frameOf(
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent,
  wood: Wood,
  heart: Heart,
  unseasoned: boolean,
  shopSeries: readonly Section[]
): Frame {
  const side = limit(reference, 'looks-size') * INCH
  const usual: Section = facts.size ?? [side, side]
  if (!facts.loaded)
    return {
      members: [],
      section: usual,
      passes: true,
      neededArea: usual[0] * usual[1],
      withoutLimit: null,
      noValues: false
    }
  const available = availableOf(sheet, wood)
  const sawn = shopSeries.filter((s) => canBeSawn(s, heart, available))
  const cap = facts.depthLimit
  const series = facts.size ? [facts.size] : cap === null ? sawn : sawn.filter((s) => s[1] <= cap + 0.1)
  const own = valuesOf(wood, gradeOf(sheet, wood), reference)
  const ct = temperatureFactors(Math.max(...facts.service.temperatureC), facts.wet)
  const values = (section: Section) => {
    const cold = own(section)
    return cold && atTemperature(cold, ct)
  }
  const job = frameJob(facts, reference, wood, unseasoned)
  const members = sizeFrame(job, series, sawn, values, facts.size !== null)
  const main = members.filter((m) => m.id !== 'post')
  const passes = members.length > 0 && members.every((m) => m.sized.section !== null)
  const largest = main.reduce<Section | null>((most, m) => {
    const s = m.sized.section
    return s && (!most || s[0] * s[1] > most[0] * most[1]) ? s : most
  }, null)
  // Strength grows with b d^2, so an area that is used to a ratio could shrink by about its two-thirds power.
  const neededArea = main.reduce((most, { sized: { section: s, ratio } }) => {
    return Math.max(most, s && ratio !== null ? s[0] * s[1] * ratio ** (2 / 3) : 0)
  }, 0)
  const noValues = values(usual) === null
  const withoutLimit =
    !passes && cap !== null && !facts.size && !noValues
      ? (sizeFrame(job, sawn, sawn, values).find((m) => m.id !== 'post')?.sized.section ?? null)
      : null
  return { members, section: largest ?? facts.size ?? sawn.at(-1) ?? usual, passes, neededArea, withoutLimit, noValues }
}
