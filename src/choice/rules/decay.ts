/** Whether it rots there: use class, hazard of the climate, class of the heartwood. */
import type { Hazard } from '../../wood/decay'
import { limit } from '../facts'
import { durabilityFigure, hazardFigure } from '../figures'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { PRACTICE, sentence } from '../say'

const WORD: Readonly<Record<Hazard, string>> = { low: 'low', moderate: 'moderate', high: 'high' }
const atRisk = ({ facts }: Context) => facts.hazard !== 'low'

const weatherOut = (o: OptionFacts, c: Context) =>
  c.facts.exposure === 'weather' &&
  atRisk(c) &&
  o.durabilityClass > limit(c.reference, c.facts.hazard === 'high' ? 'decay-out-high' : 'decay-out-moderate')

/** How long heartwood of its middle class is expected to last in the ground, in words. */
const groundYears = (o: OptionFacts, c: Context): string => {
  const found = c.reference.decay.groundYears.find((y) => y.durabilityClass === Math.round(o.durabilityClass))
  return (found?.says ?? 'a few years').replace(/\.$/, '')
}

const figures = (o: OptionFacts, c: Context) => ({
  class: durabilityFigure(o, c.facts, c.reference),
  hazard: hazardFigure(c.facts, c.reference)
})

export const decayRules: readonly Rule[] = [
  {
    id: 'decay-ground',
    about: 'durability',
    effect: 'out',
    when: (o, c) => c.facts.exposure === 'ground' && o.wood.durability.best > limit(c.reference, 'ground-class'),
    short: (o, c) =>
      sentence('rots in the ground, class {class}', { class: durabilityFigure(o, c.facts, c.reference) }),
    says: (o, c) =>
      sentence(
        `Touching the ground, ${o.wood.said} heartwood (durability class {class}) is expected to last ${groundYears(o, c)}. Stand the post off the ground on a metal base first.`,
        {
          class: durabilityFigure(o, c.facts, c.reference)
        }
      ),
    sources: [{ key: 'en-460-1994' }, { key: 'en-350-1994' }],
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
        {
          class: durabilityFigure(o, c.facts, c.reference)
        }
      ),
    sources: [{ key: 'en-350-1994' }],
    mark: 'memory'
  },
  {
    id: 'decay-weather',
    about: 'durability',
    effect: 'out',
    when: weatherOut,
    short: (o, c) => sentence('rots there, class {class}', { class: durabilityFigure(o, c.facts, c.reference) }),
    says: (o, c) =>
      sentence(
        `It rots in the weather there: heartwood of durability class {class}, and the climate’s decay index is {hazard}, ${WORD[c.facts.hazard]}.`,
        figures(o, c)
      ),
    sources: [PRACTICE, { key: 'din-68800' }, { key: 'scheffer-1971' }],
    mark: 'practice'
  },
  {
    id: 'decay-weather-watch',
    about: 'durability',
    effect: 'caution',
    when: (o, c) =>
      c.facts.exposure === 'weather' && !weatherOut(o, c) && o.durabilityClass >= limit(c.reference, 'decay-caution'),
    short: () => sentence('lasts if it drains'),
    says: (o, c) =>
      sentence(
        c.facts.hazard === 'low'
          ? 'Heartwood of durability class {class}: the dry climate (decay index {hazard}) spares it, water traps do not.'
          : 'Heartwood of durability class {class} in a climate with decay index {hazard}: it lasts only where every joint drains and dries. No sapwood.',
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
      c.facts.exposure === 'roofed' && atRisk(c) && o.durabilityClass >= limit(c.reference, 'decay-roofed-watch'),
    short: () => sentence('keep it dry'),
    says: (o, c) =>
      sentence(
        'Under a roof it lasts while it stays dry. Wind-driven rain at post feet and plate ends rots heartwood of class {class} where the index is {hazard}: deep eaves and stand-off bases.',
        figures(o, c)
      ),
    sources: [{ key: 'en-460-1994' }, { key: 'scheffer-1971' }],
    mark: 'memory'
  },
  {
    id: 'decay-durable',
    about: 'durability',
    effect: 'favour',
    when: (o, c) =>
      ['roofed', 'weather', 'ground'].includes(c.facts.exposure) &&
      o.durabilityClass <= limit(c.reference, 'decay-durable'),
    short: () => sentence('lasts by nature'),
    says: (o, c) =>
      sentence('Its heartwood lasts by nature: durability class {class}.', {
        class: durabilityFigure(o, c.facts, c.reference)
      }),
    sources: [{ key: 'en-350-1994' }],
    mark: 'mixed'
  },
  {
    id: 'decay-enough',
    about: 'durability',
    effect: 'favour',
    when: (o, c) =>
      ['roofed', 'weather'].includes(c.facts.exposure) &&
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
      (c.facts.exposure === 'weather' || c.facts.exposure === 'ground') &&
      o.durabilityClass < limit(c.reference, 'decay-roofed-watch'),
    short: () => sentence('heartwood only'),
    says: () =>
      sentence('Only heartwood counts. The pale sapwood of every wood rots: have it cut off or kept to the dry side.'),
    sources: [{ key: 'fpl-tn-229' }],
    mark: 'seen'
  }
]
