/** How it looks: the wood's own colour under the finish, pitch, tannin, knots. */
import { limit } from '../facts'
import type { OptionBasis } from '../option-basis'
import type { Context, Rule } from '../rule'
import { PRACTICE, quantity, sentence } from '../say'

/** Lightness by which a wood falls short of the finish wanted, CIELAB; 0 where the finish hides it or wants no lightness. */
export function paleShortfall(o: Pick<OptionBasis, 'wood'>, { facts, reference }: Context): number {
  const target = reference.finishes.find((f) => f.id === facts.finish)?.targetL
  // A see-through stain only takes light away: a wood darker than the target can never be stained up to it.
  return target === null || target === undefined ? 0 : Math.max(0, target - o.wood.colour.L)
}

const pitchFree = (o: OptionBasis) => o.seasoning.setsPitch || o.wood.traits.pitch.level === 0

export const lookRules: readonly Rule[] = [
  {
    id: 'look-too-dark',
    about: 'look',
    effect: 'out',
    early: true,
    when: (o, c) => paleShortfall(o, c) >= limit(c.reference, 'pale-shortfall-out'),
    short: () => sentence('too dark for pale'),
    says: (o, c) =>
      sentence(
        'Its own colour wins: lightness {own} where the finish wants {target}, and a see-through finish only darkens.',
        {
          own: quantity('index', o.wood.colour.L, o.wood.colour.origin),
          target: quantity('index', c.reference.finishes.find((f) => f.id === c.facts.finish)?.targetL ?? 0, {
            mark: 'practice',
            sources: [{ key: 'bentwise-scale' }]
          })
        }
      ),
    sources: [{ key: 'kubelka-munk' }, { key: 'colour-literature' }],
    mark: 'memory'
  },
  {
    id: 'look-darkish',
    about: 'look',
    effect: 'caution',
    when: (o, c) => {
      const short = paleShortfall(o, c)
      return short >= limit(c.reference, 'pale-shortfall-caution') && short < limit(c.reference, 'pale-shortfall-out')
    },
    short: () => sentence('a little dark'),
    says: (o) =>
      sentence(
        `${o.wood.name} stays a little darker and warmer than the finish wanted. See a sample on the wood itself.`
      ),
    sources: [{ key: 'kubelka-munk' }, { key: 'colour-literature' }],
    mark: 'memory'
  },
  {
    id: 'look-pitch-never',
    about: 'look',
    effect: 'out',
    early: true,
    when: (o, { facts }) => facts.resin === 'never' && o.wood.traits.pitch.level === 2 && !pitchFree(o),
    short: () => sentence('weeps pitch'),
    says: (o) =>
      sentence(`${o.wood.name} weeps pitch for years unless heat has set it in the core; dried this way it has not.`),
    sources: [{ key: 'wengert-qa' }],
    mark: 'seen'
  },
  {
    id: 'look-pitch',
    about: 'look',
    effect: 'caution',
    when: (o, { facts }) =>
      facts.resin !== 'fine' &&
      o.wood.traits.pitch.level >= 1 &&
      !pitchFree(o) &&
      !(facts.resin === 'never' && o.wood.traits.pitch.level === 2),
    short: () => sentence('may weep pitch'),
    says: (o) => sentence(`${o.wood.name} may weep pitch: only heat that reached the core sets it.`),
    sources: [{ key: 'wengert-qa' }],
    mark: 'seen'
  },
  {
    id: 'look-pitch-set',
    about: 'look',
    effect: 'favour',
    when: (o, { facts }) => facts.resin !== 'fine' && o.wood.traits.pitch.level >= 1 && o.seasoning.setsPitch,
    short: () => sentence('pitch set'),
    says: () => sentence('The heat of drying sets its pitch.'),
    sources: [{ key: 'wengert-qa' }],
    mark: 'seen'
  },
  {
    id: 'look-tannin',
    about: 'look',
    effect: 'caution',
    when: (o, { facts }) => o.wood.traits.tannin.level === 2 && (facts.finish === 'painted' || facts.finish === 'pale'),
    short: () => sentence('bleeds through pale coats'),
    says: (o) => sentence(`${o.wood.name} bleeds brown through light coats: a stain-blocking primer first.`),
    sources: [{ key: 'fpl-rp-271' }],
    mark: 'seen'
  },
  {
    id: 'look-knots',
    about: 'look',
    effect: 'caution',
    when: (o, { facts }) => facts.knots === 'clear' && o.wood.traits.knots.level === 2,
    short: () => sentence('knotty'),
    says: (o) => sentence(`${o.wood.name} timbers are knotty; clear ones are rare and dear.`),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'look-grey-inside',
    about: 'look',
    effect: 'caution',
    general: true,
    when: (_o, { facts }) => facts.finish === 'grey' && (facts.exposure === 'heated' || facts.exposure === 'unheated'),
    short: () => sentence('no greying indoors'),
    says: () => sentence('Wood does not grey indoors: sun and rain do that. Left bare inside, it yellows or browns.'),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'look-clear-outside',
    about: 'look',
    effect: 'caution',
    general: true,
    when: (_o, { facts }) =>
      ['clear', 'pale'].includes(facts.finish) && facts.exposure === 'weather' && facts.upkeep !== 'regular',
    short: () => sentence('the coat will peel'),
    says: () =>
      sentence(
        'A clear or pale finish in the weather lasts a year or three. Without regular upkeep it peels or greys in patches.'
      ),
    sources: [{ key: 'wood-handbook-2010', where: 'Table 16-5' }],
    mark: 'seen'
  }
]
