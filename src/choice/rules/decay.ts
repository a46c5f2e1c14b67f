/** Whether it rots there: use class (exposure and details), hazard of the climate, class of the heartwood. */
import type { Hazard } from '../../wood/decay'
import { limit } from '../facts'
import { durabilityFigure, hazardFigure } from '../figures'
import { lifeOf, verdictsOf, verdictWords } from '../lasting'
import type { OptionBasis } from '../option-basis'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { PRACTICE, sentence } from '../say'

const WORD: Readonly<Record<Hazard, string>> = { low: 'low', moderate: 'moderate', high: 'high' }
const atRisk = ({ facts }: Context) => facts.hazard !== 'low'
const outdoors = ({ facts }: Context) => ['roofed', 'weather', 'ground'].includes(facts.exposure)
/** Details that let water stand, off the ground. */
const holds = ({ facts }: Context) =>
  facts.details === 'holding' && (facts.exposure === 'roofed' || facts.exposure === 'weather')

/** Middle class above which trade practice takes no heartwood off the ground; null where it takes any, with care. */
function outAbove({ facts, reference }: Context): number | null {
  if (facts.hazard === 'low' || facts.exposure === 'ground') return null
  const high = facts.hazard === 'high'
  switch (facts.useClass) {
    case '4':
      return limit(reference, 'decay-out-wet')
    case '3.2':
      return high ? limit(reference, 'decay-out-high') : limit(reference, 'decay-out-moderate')
    case '3.1':
      // A roof keeps the rain itself off; details alone do not.
      return high && facts.exposure === 'weather' ? limit(reference, 'decay-out-sheltered') : null
    default:
      return null
  }
}
const isOut = (o: OptionBasis, c: Context): boolean => {
  const above = outAbove(c)
  return above !== null && o.durabilityClass > above
}

const classFigure = (o: OptionFacts, c: Context) => ({ class: durabilityFigure(o, c.facts, c.reference) })
const figures = (o: OptionFacts, c: Context) => ({ ...classFigure(o, c), hazard: hazardFigure(c.facts, c.reference) })
const enough = (o: OptionFacts, c: Context) => verdictWords(o.wood, c.facts, c.reference)
/** What the standard's matrix says of a wood that practice rules out, and that practice asks more where it does. */
function listSays(o: OptionFacts, c: Context): string {
  const lenient = verdictsOf(o.wood, c.facts, c.reference).some((v) => !v.startsWith('treat'))
  return `EN 460 of 1994 calls that ${enough(o, c)}${lenient ? '; trade practice asks more' : ''}.`
}

export const decayRules: readonly Rule[] = [
  {
    id: 'decay-ground',
    about: 'durability',
    effect: 'out',
    early: true,
    when: (o, c) => c.facts.exposure === 'ground' && o.wood.durability.best > limit(c.reference, 'ground-class'),
    short: (o, c) => sentence('rots in the ground, class {class}', classFigure(o, c)),
    says: (o, c) =>
      sentence(
        `Touching the ground, ${o.wood.said} heartwood (durability class {class}) is expected to last ${lifeOf(o.wood, c.facts, c.reference).says}. ${listSays(o, c)} Stand the post off the ground on a metal base first.`,
        classFigure(o, c)
      ),
    sources: [{ key: 'en-460-1994' }, { key: 'en-350-1994' }, { key: 'intrans-2018' }],
    mark: 'memory'
  },
  {
    id: 'decay-ground-allowed',
    about: 'durability',
    effect: 'caution',
    when: (o, c) => c.facts.exposure === 'ground' && o.wood.durability.best <= limit(c.reference, 'ground-class'),
    short: () => sentence('slow to rot, not immune'),
    says: (o, c) =>
      sentence(
        `Even ${o.wood.said} heartwood (durability class {class}) is only slow to rot in the ground; a stand-off base outlasts it. No sapwood below.`,
        classFigure(o, c)
      ),
    sources: [{ key: 'en-350-1994' }],
    mark: 'memory'
  },
  {
    id: 'decay-weather',
    about: 'durability',
    effect: 'out',
    early: true,
    when: isOut,
    short: (o, c) => sentence('rots there, class {class}', classFigure(o, c)),
    says: (o, c) =>
      sentence(
        `It rots ${holds(c) ? 'where water stands' : 'in the weather there'}: heartwood of durability class {class}, and the climate’s decay index is {hazard}, ${WORD[c.facts.hazard]}. ${listSays(o, c)}${holds(c) ? ' Let joints and feet drain first.' : ''}`,
        figures(o, c)
      ),
    sources: [PRACTICE, { key: 'din-68800' }, { key: 'en-460-1994' }, { key: 'scheffer-1971' }],
    mark: 'practice'
  },
  {
    id: 'decay-traps',
    about: 'durability',
    effect: 'caution',
    when: (o, c) => holds(c) && !isOut(o, c),
    short: () => sentence('water traps rot it'),
    says: (o, c) =>
      sentence(
        `Where water stands, heartwood of durability class {class} is ${enough(o, c)} (decay index {hazard}). Drain the joints, cap upward checks and lift the feet: that does more than another wood.`,
        figures(o, c)
      ),
    sources: [{ key: 'en-335-2013' }, { key: 'en-460-1994' }, PRACTICE],
    mark: 'memory'
  },
  {
    id: 'decay-weather-watch',
    about: 'durability',
    effect: 'caution',
    when: (o, c) =>
      c.facts.useClass === '3.2' &&
      !holds(c) &&
      !isOut(o, c) &&
      o.durabilityClass >= limit(c.reference, 'decay-caution'),
    short: () => sentence('lasts if it drains'),
    says: (o, c) =>
      sentence(
        c.facts.hazard === 'low'
          ? `Heartwood of durability class {class} is ${enough(o, c)}: the dry climate (decay index {hazard}) spares it, water traps do not.`
          : `Heartwood of durability class {class} is ${enough(o, c)}, in a climate with decay index {hazard}: it lasts only where every joint drains and dries. No sapwood.`,
        figures(o, c)
      ),
    sources: [{ key: 'en-460-1994' }, { key: 'scheffer-1971' }],
    mark: 'memory'
  },
  {
    id: 'decay-roofed',
    about: 'durability',
    effect: 'caution',
    when: (o, c) =>
      c.facts.useClass === '3.1' &&
      atRisk(c) &&
      !isOut(o, c) &&
      o.durabilityClass >= limit(c.reference, 'decay-roofed-watch'),
    short: () => sentence('keep it dry'),
    says: (o, c) =>
      sentence(
        c.facts.exposure === 'roofed'
          ? `Under a roof it lasts while it stays dry. Where wind drives rain in, at post feet and plate ends, heartwood of class {class} is ${enough(o, c)} (decay index {hazard}): deep eaves and stand-off bases.`
          : `In the rain it lasts only while caps, feet and joints shed it: heartwood of class {class} is ${enough(o, c)} (decay index {hazard}). Keep them up.`,
        figures(o, c)
      ),
    sources: [{ key: 'en-460-1994' }, { key: 'scheffer-1971' }],
    mark: 'memory'
  },
  {
    id: 'decay-durable',
    about: 'durability',
    effect: 'favour',
    when: (o, c) => outdoors(c) && o.durabilityClass <= limit(c.reference, 'decay-durable'),
    short: () => sentence('lasts by nature'),
    says: (o, c) => sentence('Its heartwood lasts by nature: durability class {class}.', classFigure(o, c)),
    sources: [{ key: 'en-350-1994' }],
    mark: 'mixed'
  },
  {
    id: 'decay-enough',
    about: 'durability',
    effect: 'favour',
    when: (o, c) =>
      outdoors(c) &&
      c.facts.useClass !== '4' &&
      c.facts.hazard === 'low' &&
      o.durabilityClass > limit(c.reference, 'decay-durable') &&
      o.durabilityClass < limit(c.reference, 'decay-roofed-watch'),
    short: () => sentence('lasts, it is dry there'),
    says: (_o, c) =>
      sentence('Decay is slow there (index {hazard}): it lasts outside without being a durable wood.', {
        hazard: hazardFigure(c.facts, c.reference)
      }),
    sources: [{ key: 'scheffer-1971' }],
    mark: 'seen'
  },
  {
    id: 'decay-sapwood',
    about: 'durability',
    effect: 'caution',
    general: true,
    when: (o, c) =>
      (c.facts.exposure === 'weather' || c.facts.exposure === 'ground' || c.facts.useClass === '3.2') &&
      o.durabilityClass < limit(c.reference, 'decay-roofed-watch'),
    short: () => sentence('heartwood only'),
    says: () =>
      sentence('Only heartwood counts. The pale sapwood of every wood rots: have it cut off or kept to the dry side.'),
    sources: [{ key: 'fpl-tn-229' }],
    mark: 'seen'
  }
]
