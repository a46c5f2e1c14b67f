/** Every figure the brief shows of an option, as a quantity that opens to its formula, inputs and source. */
import type { Origin, Quantity } from '../data/quantity'
import type { Reference } from '../data/reference'
import { originOf, type Sourced } from '../data/reference'
import { INCH } from '../data/units'
import type { Check } from '../frame/check'
import { times } from '../wood/joints'
import { inverselyScattered } from '../wood/scatter'
import { checkOpening, PITH_CLEARANCE } from '../wood/section'
import { cornerOff } from '../wood/twist'
import { densityAt } from '../wood/weight'
import type { Facts } from './facts'
import { housingNeeded } from './joints'
import { GRAIN_ANGLES, mix, type OptionFacts } from './option-facts'
import { ANSWERED, computed, limitQuantity, PRACTICE, quantity } from './say'
import { heaviestOf } from './sticks'

export type FigureOf = (o: OptionFacts, facts: Facts, reference: Reference) => Quantity

/** An origin that also tells how far the number may be off. */
const withBand = (origin: Origin, low: number, high: number): Origin => ({
  ...origin,
  inputs: {
    ...origin.inputs,
    'may be from': quantity('moisture', low, practice),
    to: quantity('moisture', high, practice)
  }
})

const practice = { mark: 'practice', sources: [PRACTICE] } as const

export const serviceMoistureFigure = (facts: Facts, reference: Reference): Quantity =>
  quantity('moisture', facts.service.mean, computed(reference, 'service', placeInputs(facts, reference)), {
    low: facts.service.driest,
    high: facts.service.wettest
  })

function placeInputs(facts: Facts, reference: Reference): Record<string, Quantity> {
  const mean = (xs: readonly number[]) => xs.reduce((s, x) => s + x, 0) / xs.length
  return {
    'mean temperature outside': quantity('temperature', mean(facts.place.temperatureC), reference.placesOrigin),
    'mean humidity outside': quantity('percent', mean(facts.place.humidity), reference.placesOrigin),
    ...(facts.exposure === 'heated'
      ? { 'room temperature': quantity('temperature', reference.room.heatedC, reference.roomOrigin) }
      : {}),
    'driest month': quantity('moisture', facts.service.driest, practice),
    'wettest month': quantity('moisture', facts.service.wettest, practice),
    ...(facts.exposure === 'weather'
      ? { 'added by rain': limitQuantity(reference, 'weather-adds', 'percent', 0.01) }
      : {})
  }
}

export const hazardFigure = (facts: Facts, reference: Reference): Quantity =>
  quantity(
    'index',
    facts.hazardIndex,
    computed(reference, 'scheffer', {
      'days of rain a year': quantity(
        'count',
        Math.round(facts.place.wetDays.reduce((s, d) => s + d, 0)),
        reference.placesOrigin
      )
    })
  )

export const sectionFigure: FigureOf = (o, facts, reference) => {
  if (facts.size) return quantity('section', o.section, ANSWERED)
  if (!facts.loaded) return quantity('section', o.section, reference.limits.get('looks-size')?.origin ?? practice)
  return quantity('section', o.section, computed(reference, 'section'))
}

export const deliveredFigure: FigureOf = (o, _facts, reference) => {
  const { deliveredLow: low, deliveredHigh: high } = o
  return quantity('moisture', o.delivered, withBand(deliveredOrigin(o, reference), low, high), { low, high })
}

function deliveredOrigin(o: OptionFacts, reference: Reference): Origin {
  if (o.option.seasoning === 'green') return o.wood.greenOrigin
  if (o.option.seasoning !== 'air') return originOf(o.seasoning as Sourced)
  const { min: low, max: high } = o.wood.airDays
  return computed(reference, 'air-moisture', {
    'M at the saw': quantity('moisture', o.wood.greenWhole, o.wood.greenOrigin),
    t: quantity('weeks', o.yardWeeks, practice),
    k: quantity('ratio', o.wood.drying.factor, computed(reference, 'drying-fit'), {
      low: o.wood.drying.slowest,
      high: o.wood.drying.quickest
    }),
    'days for a 1 in board': quantity('count', Math.round(Math.sqrt(low * high)), o.wood.airDays.origin, { low, high })
  })
}

/** How far the wood's shrinkage lies from its mean, piece by piece. */
const scatterOf = (reference: Reference): Quantity =>
  quantity('percent', reference.scatter.shrinkage.of, reference.scatter.shrinkage.origin)

function strainFigure(o: OptionFacts, facts: Facts, reference: Reference, share: number): Quantity {
  const { value, low, high } = mix(o.radial, o.tangential, share)
  return quantity(
    'percent',
    value,
    computed(reference, 'shrinkage', {
      'radial, to oven-dry': quantity('percent', o.wood.radial, o.wood.shrinkageOrigin),
      'tangential, to oven-dry': quantity('percent', o.wood.tangential, o.wood.shrinkageOrigin),
      Mf: quantity('moisture', o.wood.fibreSaturation, o.wood.fibreSaturationOrigin),
      k: quantity('ratio', share, computed(reference, 'face-share')),
      'M on delivery': deliveredFigure(o, facts, reference),
      'M in service': serviceMoistureFigure(facts, reference),
      c: scatterOf(reference)
    }),
    { low, high }
  )
}

function faceOf(share: number, side: number, o: OptionFacts, facts: Facts, reference: Reference): Quantity {
  const { value, low, high } = times(mix(o.radial, o.tangential, share), side)
  return quantity(
    'gap',
    value,
    computed(reference, 'face', {
      strain: strainFigure(o, facts, reference, share),
      k: quantity('ratio', share, computed(reference, 'face-share')),
      face: quantity('gap', side, practice)
    }),
    { low, high }
  )
}

export const faceFigure: FigureOf = (o, facts, reference) => faceOf(o.shares.depth, o.section[1], o, facts, reference)

export const breadthFigure: FigureOf = (o, facts, reference) =>
  faceOf(o.shares.breadth, o.section[0], o, facts, reference)

/** Change of the longest stick's own length: always a range. */
export const lengthFigure: FigureOf = (o, facts, reference) => {
  const [low, high] = o.lengthStrain
  const id = o.wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high'
  return quantity('gap', (facts.stick * (low + high)) / 2, reference.limits.get(id)?.origin ?? practice, {
    low: facts.stick * low,
    high: facts.stick * high
  })
}

/** How fast moisture moves through the wood where it lives. */
export const diffusivityFigure: FigureOf = (o, facts, reference) =>
  quantity(
    'ratio',
    o.diffusivity,
    computed(reference, 'diffusivity', {
      k: quantity('ratio', o.wood.drying.factor, computed(reference, 'drying-fit')),
      M: serviceMoistureFigure(facts, reference),
      Gb: quantity('ratio', o.wood.gravityGreen, o.wood.gravityOrigin)
    })
  )

export const swingFigure: FigureOf = (o, facts, reference) =>
  quantity(
    'gap',
    o.swing,
    computed(reference, 'swing', {
      'driest month': quantity('moisture', Math.min(...facts.service.months), practice),
      'wettest month': quantity('moisture', Math.max(...facts.service.months), practice),
      'D, mm² a day': diffusivityFigure(o, facts, reference),
      'share that the post follows': quantity('percent', o.swingShare, computed(reference, 'swing'))
    })
  )

/** A corner out of true over the longest stick: the band, of which two sticks in three fall inside. */
export const twistFigure: FigureOf = (o, facts, reference) => {
  const off = (turn: number) => cornerOff(turn, o.section[1])
  const degrees = (turn: number) => (turn * 180) / Math.PI
  const { value, low, high } = o.twist
  return quantity(
    'gap',
    off(high),
    computed(reference, 'twist', {
      'grain at the pith': limitQuantity(reference, GRAIN_ANGLES[o.wood.traits.twist.level], 'angle'),
      s: quantity('percent', o.tangentialToCome, o.wood.shrinkageOrigin),
      L: quantity('span', facts.stick, ANSWERED),
      c: scatterOf(reference),
      'turn, end to end': quantity('angle', degrees(value), computed(reference, 'twist'), {
        low: degrees(low),
        high: degrees(high)
      })
    })
  )
}

export const housingFigure: FigureOf = (o, facts, reference) =>
  quantity(
    'gap',
    housingNeeded(o, reference),
    computed(reference, 'housing', {
      'widest gap': quantity('gap', o.gapHigh, gapFigure(o, facts, reference).origin),
      margin: limitQuantity(reference, 'housing-margin', 'gap', INCH)
    })
  )

export const gapFigure: FigureOf = (o, facts, reference) =>
  quantity(
    'gap',
    o.gap,
    computed(reference, 'gap', {
      'strain across': strainFigure(o, facts, reference, o.postShare),
      'post’s face': quantity('diameter', o.section[0], practice),
      'strain along': quantity(
        'percent',
        (o.lengthStrain[0] + o.lengthStrain[1]) / 2,
        reference.limits.get('lengthwise-low')?.origin ?? practice,
        {
          low: o.lengthStrain[0],
          high: o.lengthStrain[1]
        }
      ),
      length: quantity('span', facts.stick, ANSWERED)
    }),
    { low: Math.min(o.gap, o.gapLow), high: Math.max(o.gap, o.gapHigh) }
  )

/** What checks round a boxed piece may open at the most, its wood shrinking more than the mean of its kind. */
export const checksAcross = (o: OptionFacts, depth: number, reference: Reference): Quantity =>
  quantity(
    'gap',
    checkOpening(depth / 2, o.dryRadial, o.dryTangential) * (1 + reference.scatter.shrinkage.of),
    computed(reference, 'checks', {
      d: quantity('gap', depth / 2, practice),
      'eT, green to driest': quantity('percent', o.dryTangential, o.wood.shrinkageOrigin),
      'eR, green to driest': quantity('percent', o.dryRadial, o.wood.shrinkageOrigin),
      c: scatterOf(reference)
    })
  )

export const checksFigure: FigureOf = (o, _facts, reference) => checksAcross(o, o.section[1], reference)

export const logFigure: FigureOf = (o, facts, reference) =>
  quantity(
    'diameter',
    o.logDiameter,
    computed(reference, o.option.heart === 'boxed' ? 'log-boxed' : 'log-free', {
      'b × d': sectionFigure(o, facts, reference),
      ...(o.option.heart === 'free' ? { c: quantity('gap', PITH_CLEARANCE, practice) } : {})
    })
  )

export const weightFigure: FigureOf = (o, facts, reference) => {
  const { section, length } = heaviestOf(o.sticks)
  return quantity(
    'mass',
    o.stickMass,
    computed(reference, 'weight', {
      Gb: quantity('ratio', o.wood.gravityGreen, o.wood.gravityOrigin),
      M: deliveredFigure(o, facts, reference),
      density: quantity('density', densityAt(o.wood.gravityGreen, o.delivered), computed(reference, 'weight')),
      'b × d': quantity('section', section, sectionFigure(o, facts, reference).origin),
      length: quantity('span', length, computed(reference, 'stick-length'))
    })
  )
}

export const durabilityFigure: FigureOf = (o, _facts, reference) => {
  const origin = computed(reference, 'durability')
  return quantity(
    'index',
    o.durabilityClass,
    { ...origin, mark: o.wood.durability.origin.mark, sources: o.wood.durability.origin.sources },
    {
      low: o.wood.durability.best,
      high: o.wood.durability.worst
    }
  )
}

export const readyFigure: FigureOf = ({ readyWeeks, readyLow: low, readyHigh: high }, _facts, reference) =>
  quantity('weeks', readyWeeks, computed(reference, 'ready'), low < high ? { low, high } : {})

/** Money carries the mark of the sheet: invented, or the shop's own. */
export const sheetOrigin = (placeholder: boolean) =>
  placeholder
    ? ({ mark: 'placeholder', sources: [{ key: 'placeholder' }] } as const)
    : ({ mark: 'seen', sources: [{ key: 'shop-sheet' }] } as const)

export function moneyFigures(o: OptionFacts, reference: Reference, placeholder: boolean) {
  const own = sheetOrigin(placeholder)
  const mark = <T extends Quantity>(q: T): T => ({
    ...q,
    origin: { ...q.origin, ...own, ...(q.origin.formula ? { formula: q.origin.formula } : {}) }
  })
  const price = mark(quantity('pricePerVolume', o.price.total, computed(reference, 'price')))
  const volume = quantity('volume', o.volume, computed(reference, 'volume'))
  const off = (sum: number) => ({ low: sum * (1 - o.bill.band), high: sum * (1 + o.bill.band) })
  const timber = mark(
    quantity('money', o.timberCost, computed(reference, 'timber-cost', { amount: volume, price }), off(o.timberCost))
  )
  const job = mark(quantity('money', o.jobCost, computed(reference, 'job-cost', { timber }), off(o.jobCost)))
  return {
    pricePerVolume: price,
    volume,
    timberCost: timber,
    jobCost: job,
    timberShare: mark(
      quantity(
        'percent',
        o.jobCost > 0 ? o.timberCost / o.jobCost : 0,
        computed(reference, 'share', { timber, frame: job })
      )
    )
  }
}

/** A sag with the range that the scatter of stiffness gives it. */
export function sagFigure(check: Check, reference: Reference): Quantity {
  const { of, origin } = reference.scatter.elasticity
  const { value, low, high } = inverselyScattered(check.demand, of)
  return quantity('gap', value, computed(reference, check.id, { 'scatter of E': quantity('percent', of, origin) }), {
    low,
    high
  })
}

/** A check of the frame as demand, capacity and ratio. */
export function checkFigures(check: Check, reference: Reference) {
  const origin = computed(reference, check.id)
  return {
    demand: check.kind === 'gap' ? sagFigure(check, reference) : quantity(check.kind, check.demand, origin),
    capacity: quantity(check.kind, check.capacity, origin),
    ratio: quantity('ratio', check.ratio, origin)
  }
}
