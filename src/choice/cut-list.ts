/** The cut list of an option: every stick with its log, weight and board feet, what is bought with waste, and its price by parts. */
import type { Origin, Quantity, Sentence } from '../data/quantity'
import { FOOT } from '../data/units'
import { logDiameterNeeded, PITH_CLEARANCE } from '../wood/section'
import { densityAt } from '../wood/weight'
import type { CutLine, CutList, PriceLine } from './detail-types'
import { deliveredFigure, moneyFigures } from './figures'
import { liftLimit, liftOf } from './ladder/job'
import { MEMBER_NAMES } from './member-names'
import type { OptionFacts } from './option-facts'
import type { Context } from './rule'
import { ANSWERED, computed, limitQuantity, PRACTICE, quantity, sentence } from './say'
import { netVolume, type Stick, volumeOfOne } from './sticks'

export const stickName = (id: Stick['id']): string => (id === 'stick' ? 'Timber' : MEMBER_NAMES[id])

/** What lifts a stick, in words. */
export const LIFTS = {
  two: 'two people carry it (up to {most})',
  hoist: 'it wants more hands or a hoist (two people carry up to {most})',
  crane: 'it wants a crane or a planned lift (from {most})'
} as const

/** Weight of one stick at a moisture, kg. */
const massAt = (o: OptionFacts, stick: Stick, moisture: number): number =>
  densityAt(o.wood.gravityGreen, moisture) * volumeOfOne(stick)

function lineOf(stick: Stick, o: OptionFacts, c: Context, most: { length: number; mass: number }): CutLine {
  const { reference, facts } = c
  const { section, length, count } = stick
  const { heart } = o.option
  const one = volumeOfOne(stick)
  const size = quantity('section', section, facts.size ? ANSWERED : computed(reference, 'section'))
  const long = quantity(
    'span',
    length,
    computed(reference, 'stick-length', { ends: limitQuantity(reference, 'end-allowance', 'span', FOOT) })
  )
  const weighed = (moisture: Quantity) =>
    quantity(
      'mass',
      massAt(o, stick, Number(moisture.value)),
      computed(reference, 'weight', {
        Gb: quantity('ratio', o.wood.gravityGreen, o.wood.gravityOrigin),
        M: moisture
      })
    )
  const log = computed(
    reference,
    heart === 'boxed' ? 'log-boxed' : 'log-free',
    heart === 'free' ? { c: quantity('gap', PITH_CLEARANCE, { mark: 'practice', sources: [PRACTICE] }) } : {}
  )
  const trim = limitQuantity(reference, 'log-trim', 'span', FOOT)
  return {
    id: stick.id,
    name: stickName(stick.id),
    section: size,
    length: long,
    count: quantity('count', count, computed(reference, 'volume')),
    each: quantity('volume', one, computed(reference, 'volume')),
    all: quantity('volume', one * count, computed(reference, 'volume')),
    log: quantity('diameter', logDiameterNeeded(heart, section[0], section[1]), log),
    logLength: quantity('span', length + Number(trim.value), computed(reference, 'log-length', { trim })),
    green: weighed(quantity('moisture', o.wood.greenWhole, o.wood.greenOrigin)),
    delivered: weighed(deliveredFigure(o, facts, reference)),
    longest: length >= most.length - 1,
    heaviest: massAt(o, stick, o.delivered) >= most.mass * (1 - 1e-9)
  }
}

const PARTS = [
  ['own', 'The wood itself'],
  ['free', 'Free of heart centre'],
  ['long', 'Long sticks'],
  ['large', 'Large sections'],
  ['planed', 'Planed'],
  ['dried', 'Dried']
] as const

/** The shop sheet's own word, as sure as the sheet is. */
const fromSheet = ({ origin: { mark, sources } }: Quantity): Origin => ({ mark, sources })

/** Parts of the price that are charged here; they add up to the price. */
function priceLines(o: OptionFacts, perVolume: Quantity): PriceLine[] {
  const own = fromSheet(perVolume)
  return PARTS.flatMap(([part, name]) => {
    const value = o.price[part]
    return value > 0
      ? [{ name, perVolume: quantity('pricePerVolume', value, own), sum: quantity('money', value * o.volume, own) }]
      : []
  })
}

function saysOf(o: OptionFacts, c: Context, heaviest: CutLine | undefined): Sentence[] {
  const { reference, sheet, facts } = c
  const says: Sentence[] = []
  if (heaviest) {
    const lift = liftOf(Number(heaviest.delivered.value), reference)
    says.push(
      sentence(
        `The heaviest stick, the ${heaviest.name.toLowerCase()}, weighs about {weight} as delivered: ${LIFTS[lift]}.`,
        { weight: heaviest.delivered, most: liftLimit(reference, lift === 'crane' ? 'heavy-stick' : 'two-carry') },
        [PRACTICE],
        'practice'
      )
    )
  }
  says.push(
    sentence(
      facts.loaded
        ? 'Not in it: braces, plates, purlins, common rafters, joists and pegs. They are not sized here.'
        : 'Counted as so many sticks of the longest length. Braces, plates and pegs are not in it.'
    )
  )
  if (!o.frame.passes)
    says.push(
      sentence('No section of this shop passes in this wood, so sizes here are only those that were tried last.')
    )
  if (o.price.long > 0 || o.price.large > 0)
    says.push(sentence('What long sticks or large sections add is charged on all of the timber, as a careful guess.'))
  if (sheet.surface === 'planed' && sheet.sections.unit === 'in')
    says.push(
      sentence('Board feet are counted at the planed size. By the size as sawn, as many shops bill, it comes to more.')
    )
  return says
}

/** The cut list of one option. Its total is the volume that the option's price is worked out from, and no other. */
export function cutList(o: OptionFacts, c: Context): CutList {
  const { reference, sheet } = c
  const { sticks } = o
  const most = {
    length: Math.max(...sticks.map((s) => s.length)),
    mass: Math.max(...sticks.map((s) => massAt(o, s, o.delivered)))
  }
  const lines = sticks.map((stick) => lineOf(stick, o, c, most))
  const money = moneyFigures(o, reference, sheet.placeholder)
  const net = quantity('volume', netVolume(sticks), computed(reference, 'volume'))
  return {
    lines,
    net,
    waste: quantity('percent', sheet.wastePercent / 100, fromSheet(money.pricePerVolume)),
    total: money.volume,
    load: quantity(
      'mass',
      sticks.reduce((sum, s) => sum + s.count * massAt(o, s, o.delivered), 0),
      computed(reference, 'weight')
    ),
    price: priceLines(o, money.pricePerVolume),
    cost: money.timberCost,
    moisture: deliveredFigure(o, c.facts, reference),
    says: saysOf(
      o,
      c,
      lines.find((l) => l.heaviest)
    )
  }
}
