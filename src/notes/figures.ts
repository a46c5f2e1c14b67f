/**
 * The figures that notes quote. A note names one in double braces; the engine works it out when the site is built, and it
 * opens to its formula, inputs and source like any other. No note states a computed number itself.
 */
import { limit } from '../choice/facts'
import { coated, opticsOf } from '../choice/finish/looks'
import { valuesOf } from '../choice/frame-for'
import { lengthwiseTotal } from '../choice/piece-facts'
import { computed, limitQuantity, quantity } from '../choice/say'
import type { Origin, Quantity, QuantityKind } from '../data/quantity'
import type { Reference } from '../data/reference'
import { type Mark, markSchema } from '../data/schema'
import type { ShopSheetContent } from '../data/shop-schema'
import { BOARD_FOOT, FOOT, INCH, POUND, PSF, PSI, percent, toCelsius } from '../data/units'
import { partsFor, reachable } from '../wood/colour'
import { schefferIndex } from '../wood/decay'
import { equilibriumMoisture } from '../wood/moisture'
import { checkOpening, logDiameterNeeded, PITH_CLEARANCE } from '../wood/section'
import { changeBetween } from '../wood/shrinkage'
import { densityAt } from '../wood/weight'
import { Args, EXAMPLE, serviceAt } from './args'
import { clockFigure } from './clock'
import { costFigure } from './cost'
import { jobFigure } from './job'
import { ladderFigure } from './ladder'
import type { Call } from './parse'

/** A figure to be drawn. Plain ones are sizes that the note chose: they follow the reader's units and open nothing. */
export interface Shown {
  readonly quantity: Quantity
  readonly plain: boolean
}

type Maker = (args: Args, sheet: ShopSheetContent) => Quantity

const WAYS = ['radial', 'tangential'] as const

/** Strain between two moistures, with all that goes into it. */
function strain(args: Args): Quantity {
  const wood = args.wood()
  const way = args.word('way', WAYS)
  const from = args.moisture('from', wood, 'green')
  const to = args.moisture('at', wood)
  const held = (q: Quantity) => Math.min(Number(q.value), wood.fibreSaturation)
  return quantity(
    'percent',
    changeBetween(wood[way], held(from), held(to), wood.fibreSaturation),
    computed(args.reference, 'shrinkage', {
      [`S₀, ${way}, to oven-dry`]: quantity('percent', wood[way], wood.shrinkageOrigin),
      Mf: quantity('moisture', wood.fibreSaturation, wood.fibreSaturationOrigin),
      'M before': from,
      'M after': to
    })
  )
}

function shrink(args: Args): Quantity {
  const e = strain(args)
  const face = args.inches('face')
  return quantity('gap', face * Number(e.value), {
    ...e.origin,
    inputs: { ...e.origin.inputs, strain: { ...e, origin: EXAMPLE }, face: quantity('gap', face, EXAMPLE) }
  })
}

/** The most that the checks on a face can open, from green, if one took all. */
export function checksAt(args: Args): Quantity {
  const { reference } = args
  const wood = args.wood()
  const [, depth] = args.section()
  const to = args.moisture('at', wood)
  const by = (total: number) => changeBetween(total, wood.fibreSaturation, Number(to.value), wood.fibreSaturation)
  const [radial, tangential] = [by(wood.radial), by(wood.tangential)]
  return quantity(
    'gap',
    checkOpening(depth / 2, radial, tangential),
    computed(reference, 'checks', {
      d: quantity('gap', depth / 2, EXAMPLE),
      eT: quantity('percent', tangential, wood.shrinkageOrigin),
      eR: quantity('percent', radial, wood.shrinkageOrigin)
    })
  )
}

function logNeeded(args: Args): Quantity {
  const heart = args.word('heart', ['boxed', 'free'])
  const [b, d] = args.section()
  return quantity(
    'diameter',
    logDiameterNeeded(heart, b, d),
    computed(args.reference, `log-${heart}`, {
      'b × d': quantity('section', [b, d], EXAMPLE),
      ...(heart === 'free' ? { c: quantity('gap', PITH_CLEARANCE, EXAMPLE) } : {})
    })
  )
}

/** Weight of a stick, heartwood green or at a given moisture. */
function weight(args: Args): Quantity {
  const wood = args.wood()
  const [b, d] = args.section()
  const length = args.feet()
  const at = args.maybe('at')
  const moisture = at === null ? wood.greenHeartwood : percent(Number(at))
  return quantity(
    'mass',
    (densityAt(wood.gravityGreen, moisture) * b * d * length) / 1e9,
    computed(args.reference, 'weight', {
      Gb: quantity('ratio', wood.gravityGreen, wood.gravityOrigin),
      M: quantity('moisture', moisture, at === null ? wood.greenOrigin : EXAMPLE),
      'b × d': quantity('section', [b, d], EXAMPLE),
      length: quantity('span', length, EXAMPLE)
    })
  )
}

/** Change of a length between two moistures: a range, since sticks differ. */
function lengthwise(args: Args): Quantity {
  const wood = args.wood()
  const length = args.feet()
  const to = args.moisture('at', wood)
  const [low, high] = lengthwiseTotal(wood, args.reference).map(
    (total) => length * changeBetween(total, wood.fibreSaturation, Number(to.value), wood.fibreSaturation)
  ) as [number, number]
  const id = wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high'
  return quantity('gap', (low + high) / 2, args.reference.limits.get(id)?.origin ?? EXAMPLE, { low, high })
}

function emc(args: Args): Quantity {
  const t = toCelsius(args.number('f'))
  const humidity = percent(args.number('rh'))
  return quantity(
    'moisture',
    equilibriumMoisture(t, humidity),
    computed(args.reference, 'emc', {
      'temperature of the air': quantity('temperature', t, EXAMPLE),
      'relative humidity h': quantity('percent', humidity, EXAMPLE)
    })
  )
}

function service(args: Args): Quantity {
  const place = args.place()
  const lives = args.exposure('lives')
  const what = args.word('of', ['mean', 'driest', 'wettest'], 'mean')
  const { [what]: value } = serviceAt(place, lives, args.reference)
  return quantity('moisture', value, computed(args.reference, 'service'))
}

const rot: Maker = (args) => {
  const place = args.place()
  const days = Math.round(place.wetDays.reduce((s, d) => s + d, 0))
  const origin = args.reference.placesOrigin
  return quantity(
    'index',
    schefferIndex(place.temperatureF, place.wetDays),
    computed(args.reference, 'scheffer', { 'days of rain a year': quantity('count', days, origin) })
  )
}

/** A reference design value, or a strength of small clear green wood. */
function strength(args: Args): Quantity {
  const wood = args.wood()
  const grade = args.word('grade', ['Select Structural', 'No.1', 'No.2'])
  const what = args.word('of', ['bending', 'tension', 'compression', 'shear', 'elasticity', 'compressionPerp'])
  const values = valuesOf(wood, grade, args.reference)(args.section('size', '8x12'))
  if (!values) throw new Error(`no design values of ${wood.id}`)
  return quantity('stress', values[what], values.origin)
}

function clear(args: Args): Quantity {
  const wood = args.wood()
  const what = args.word('of', ['tensionPerp', 'rupture', 'shear', 'compression', 'compressionPerp'])
  const value = wood.strengthGreen?.[what]
  if (!value || !wood.strengthGreen) throw new Error(`no ${what} of ${wood.id}`)
  return quantity('stress', value, wood.strengthGreen.origin)
}

/** Lightness, CIELAB: of the bare wood, or under a finish as near to its aim as the wood lets it come. */
function lightness(args: Args): Quantity {
  const wood = args.wood()
  const id = args.maybe('finish')
  const finish = args.reference.finishes.find((f) => f.id === id)
  if (id !== null && !finish) throw new Error(`no finish "${id}"`)
  if (!finish) return quantity('count', wood.colour.L, wood.colour.origin)
  return quantity('count', coated(wood.colour, finish).L, computed(args.reference, 'stain-colour'))
}

/** Whether a wood can be brought to what a finish aims at, for tables. */
export const reaches = (args: Reference, woodId: string, finishId: string): boolean => {
  const wood = args.woods.get(woodId)
  const finish = args.finishes.find((f) => f.id === finishId)
  if (!wood || !finish) throw new Error(`no ${woodId} or ${finishId}`)
  if (finish.targetL === null) return true
  const optics = opticsOf(finish)
  return (
    partsFor(wood.colour, optics, finish.targetL) >= 0 &&
    reachable(wood.colour, optics, finish.targetL, limit(args, 'pale-shortfall-caution'))
  )
}

/** Distance from a peg to the end of its tenon, or to the edge, by the wood's row. */
function pegDistance(args: Args): Quantity {
  const wood = args.wood()
  const what = args.word('of', ['end', 'edge', 'spacing'])
  const diameter = args.inches('peg', 1)
  const { distances } = args.reference.joints
  const row = distances.find((r) => r.woods.includes(wood.id)) ?? distances.find((r) => r.kind === wood.kind)
  if (!row) throw new Error(`no peg distances for ${wood.id}`)
  return quantity('gap', row[what] * diameter, row.origin)
}

/** How many times one figure is another, both worked out here. */
function times(args: Args, sheet: ShopSheetContent): Quantity {
  const one = figureOf(callIn(args.text('of')), args.reference, sheet).quantity
  const other = figureOf(callIn(args.text('over')), args.reference, sheet).quantity
  const value = Number(one.value) / Number(other.value)
  const origin = computed(args.reference, 'times', { one, 'over the other': other })
  return quantity('ratio', value, { ...origin, sources: [...one.origin.sources, ...other.origin.sources] })
}
/** "job gap wood:ash size:8x8": a call inside a call; a plus stands for a space. */
const callIn = (text: string): Call => {
  const [name = '', ...rest] = text.split(' ').map((word) => word.replaceAll('+', ' '))
  return {
    name,
    args: Object.fromEntries(rest.map((p) => (p.includes(':') ? (p.split(/:(.*)/s) as [string, string]) : ['of', p])))
  }
}

const UNITS: Readonly<Record<string, readonly [QuantityKind, (n: number) => number]>> = {
  '%': ['percent', percent],
  share: ['percent', Number],
  moisture: ['moisture', percent],
  in: ['gap', (n) => n * INCH],
  log: ['diameter', (n) => n * INCH],
  ft: ['span', (n) => n * FOOT],
  lb: ['mass', (n) => n * POUND],
  kg: ['mass', Number],
  psi: ['stress', (n) => n * PSI],
  psf: ['areaLoad', (n) => n * PSF],
  F: ['temperature', toCelsius],
  weeks: ['weeks', Number],
  years: ['years', Number],
  count: ['count', Number],
  index: ['index', Number],
  angle: ['angle', Number]
}

/** `{{fact 66 unit=% src=key where=".." mark=seen}}`: a number that somebody else published, or the trade goes by. */
function fact(args: Args): Quantity {
  const [low, high = low] = args.text('of').split('..').map(Number)
  const unit = args.text('unit')
  const found = UNITS[unit]
  if (!found || low === undefined || !Number.isFinite(low) || !Number.isFinite(high)) throw new Error('not a fact')
  const [kind, si] = found
  const key = args.text('src')
  if (!Object.hasOwn(args.reference.sources, key)) throw new Error(`no source "${key}" in content/sources.json`)
  const where = args.maybe('where')
  const origin: Origin = {
    mark: args.word<Mark>('mark', markSchema.options),
    sources: [where === null ? { key } : { key, where }]
  }
  const [a, b] = [si(low), si(high ?? low)]
  return quantity(kind, (a + b) / 2, origin, a === b ? {} : { low: a, high: b })
}

const MAKERS: Readonly<Record<string, Maker>> = {
  strain,
  shrink,
  checks: checksAt,
  log: logNeeded,
  weight,
  lengthwise,
  emc,
  service,
  rot,
  strength,
  clear,
  lightness,
  peg: pegDistance,
  drawbore: (args) => {
    const { share, origin } = args.reference.joints.drawBore
    return quantity('gap', share[args.word('of', ['softwood', 'hardwood'])] * args.inches('peg', 1), origin)
  },
  times,
  fact,
  job: jobFigure,
  clock: clockFigure,
  ladder: ladderFigure,
  cost: costFigure,
  total: (args) => {
    const wood = args.wood()
    return quantity('percent', wood[args.word('way', WAYS)], wood.shrinkageOrigin)
  },
  green: (args) => {
    const wood = args.wood()
    const part = args.word('of', ['greenHeartwood', 'greenWhole'], 'greenHeartwood')
    return quantity('moisture', wood[part], wood.greenOrigin)
  },
  fibre: (args) => {
    const wood = args.wood()
    return quantity('moisture', wood.fibreSaturation, wood.fibreSaturationOrigin)
  },
  airdays: (args) => {
    const { min, max, origin } = args.wood().airDays
    return quantity('count', Math.sqrt(min * max), origin, { low: min, high: max })
  },
  durability: (args) => {
    const { best, worst, origin } = args.wood().durability
    return quantity('count', (best + worst) / 2, origin, { low: best, high: worst })
  },
  limit: (args) => {
    const [kind, si] = UNITS[args.text('unit')] ?? []
    if (!kind || !si) throw new Error('a limit needs a unit')
    const q = limitQuantity(args.reference, args.text('of'), kind)
    return { ...q, value: si(Number(q.value)) }
  },
  boardfeet: (args) => {
    const [b, d] = args.section()
    const origin = computed(args.reference, 'volume')
    return quantity('volume', (b * d * args.feet()) / 1e9, origin)
  }
}

/** Sizes and lengths that the note itself chose. */
const GIVEN: Readonly<Record<string, Maker>> = {
  size: (args) => quantity('section', args.section('of'), EXAMPLE),
  in: (args) => quantity('gap', args.inches('of'), EXAMPLE),
  ft: (args) => quantity('span', args.feet('of'), EXAMPLE),
  pct: (args) => quantity('percent', percent(args.number('of')), EXAMPLE),
  wet: (args) => quantity('moisture', percent(args.number('of')), EXAMPLE),
  temp: (args) => quantity('temperature', toCelsius(args.number('of')), EXAMPLE),
  bf: (args) => quantity('volume', args.number('of') * BOARD_FOOT, EXAMPLE),
  load: (args) => quantity('areaLoad', args.number('of') * PSF, EXAMPLE)
}

export const FIGURE_NAMES: readonly string[] = [...Object.keys(MAKERS), ...Object.keys(GIVEN)]

/** @throws Error for a figure that is not known, an argument that is wrong, or what the engine refuses. */
export function figureOf(call: Call, reference: Reference, sheet: ShopSheetContent): Shown {
  const given = Object.hasOwn(GIVEN, call.name)
  const make = given ? GIVEN[call.name] : Object.hasOwn(MAKERS, call.name) ? MAKERS[call.name] : undefined
  if (!make) throw new Error(`no figure "${call.name}"; known are ${FIGURE_NAMES.join(', ')}`)
  const args = new Args(call, reference)
  const found = make(args, sheet)
  args.done()
  return { quantity: found, plain: given }
}
