/** How it moves: joints, checks, twist, length. */
import { INCH, percent } from '../../data/units'
import { cornerOff } from '../../wood/twist'
import { limit } from '../facts'
import { checksFigure, deliveredFigure, gapFigure, housingFigure, serviceMoistureFigure, twistFigure } from '../figures'
import { housingNeeded } from '../joints'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { ANSWERED, limitQuantity, PRACTICE, quantity, sentence } from '../say'

const gapLimit = (c: Context, id: string) => limit(c.reference, id) * INCH
const fewChecks = (c: Context) => limit(c.reference, 'few-checks') * INCH
const nearService = (o: OptionFacts, c: Context) =>
  o.delivered - c.facts.service.mean <= percent(limit(c.reference, 'near-service'))

export const movementRules: readonly Rule[] = [
  {
    id: 'movement-tight-green',
    about: 'movement',
    effect: 'out',
    when: (o, c) =>
      c.facts.joints === 'tight' && o.delivered >= o.wood.fibreSaturation && o.gap > gapLimit(c, 'tight-gap'),
    short: (o, c) => sentence('joints open {gap}', { gap: gapFigure(o, c.facts, c.reference) }),
    says: (o, c) =>
      sentence(
        'Raised at {moisture}, its shoulders open {gap} as it dries to {service}; you need them tight, within {limit}.',
        {
          moisture: deliveredFigure(o, c.facts, c.reference),
          gap: gapFigure(o, c.facts, c.reference),
          service: serviceMoistureFigure(c.facts, c.reference),
          limit: limitQuantity(c.reference, 'tight-gap', 'gap', INCH)
        }
      ),
    sources: [{ key: 'wood-handbook-2021', where: 'eq. 4-9' }, PRACTICE],
    mark: 'derived'
  },
  {
    id: 'movement-gap',
    about: 'movement',
    effect: 'caution',
    when: (o, c) =>
      (c.facts.joints === 'tight' && o.delivered < o.wood.fibreSaturation && o.gap > gapLimit(c, 'tight-gap')) ||
      (c.facts.joints === 'small' && o.gap > gapLimit(c, 'small-gap')),
    short: (o, c) => sentence('joints open {gap}', { gap: gapFigure(o, c.facts, c.reference) }),
    says: (o, c) =>
      sentence('Its shoulders open {gap} as it dries; deeper housings must hide that.', {
        gap: gapFigure(o, c.facts, c.reference)
      }),
    sources: [{ key: 'wood-handbook-2021', where: 'eq. 4-9' }, PRACTICE],
    mark: 'derived'
  },
  {
    id: 'movement-housing',
    about: 'movement',
    effect: 'caution',
    when: (o, c) => housingNeeded(o, c.reference) > limit(c.reference, 'housing-deep') * INCH,
    short: () => sentence('needs deep housings'),
    says: (o, c) =>
      sentence(
        'To hide what its shoulders may open, housings must be {deep} deep, and beyond {limit} that takes strength out of the post: ask your engineer.',
        {
          deep: housingFigure(o, c.facts, c.reference),
          limit: limitQuantity(c.reference, 'housing-deep', 'gap', INCH)
        }
      ),
    sources: [{ key: 'derived' }, PRACTICE],
    mark: 'derived'
  },
  {
    id: 'movement-few-checks',
    about: 'movement',
    effect: 'out',
    when: (o, c) => c.facts.checks === 'few' && o.option.heart === 'boxed' && o.checkOpening > fewChecks(c),
    short: () => sentence('its heart makes it check'),
    says: (o, c) =>
      sentence(
        'With its heart inside it must check as it dries: up to {opening} on a face, taken all together. You want few.',
        {
          opening: checksFigure(o, c.facts, c.reference)
        }
      ),
    sources: [{ key: 'derived' }, PRACTICE],
    mark: 'derived'
  },
  {
    id: 'movement-checks',
    about: 'movement',
    effect: 'caution',
    when: (o, c) => o.option.heart === 'boxed' && o.checkOpening > fewChecks(c) && c.facts.checks === 'some',
    short: () => sentence('checks'),
    says: (o, c) =>
      sentence('The heart is inside, so it checks: up to {opening} on a face, taken all together.', {
        opening: checksFigure(o, c.facts, c.reference)
      }),
    sources: [{ key: 'derived' }],
    mark: 'derived'
  },
  {
    id: 'movement-twist',
    about: 'movement',
    effect: 'caution',
    when: (o, c) => cornerOff(o.twist.high, o.section[1]) > limit(c.reference, 'twist-caution') * INCH,
    short: () => sentence('twists'),
    says: (o, c) =>
      sentence(
        `${o.wood.name}${o.option.heart === 'boxed' ? ' with its heart inside' : ''} may twist as it dries, up to {off} out of true over {length}: choose straight-grained logs.`,
        { off: twistFigure(o, c.facts, c.reference), length: quantity('span', c.facts.stick, ANSWERED) }
      ),
    sources: [{ key: 'stevens-johnston-1960' }, PRACTICE],
    mark: 'derived'
  },
  {
    id: 'movement-lengthwise',
    about: 'movement',
    effect: 'caution',
    when: (o, c) => o.wood.traits.lengthwise.level === 2 && c.facts.service.mean < o.wood.fibreSaturation,
    short: () => sentence('shrinks lengthwise'),
    says: (o, c) =>
      sentence(
        `Framers report ${o.wood.said} shrinking along its length, which opens shoulders that nothing hides: up to {change} over {length}.`,
        {
          change: quantity(
            'gap',
            c.facts.stick * o.lengthStrain[1],
            c.reference.limits.get('lengthwise-troublesome')?.origin ?? { mark: 'practice', sources: [PRACTICE] }
          ),
          length: quantity('span', c.facts.stick, { mark: 'seen', sources: [{ key: 'answers' }] })
        }
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'movement-little',
    about: 'movement',
    effect: 'favour',
    when: (o, c) => o.gap <= gapLimit(c, 'tight-gap'),
    short: () => sentence('hardly moves'),
    says: (o, c) =>
      sentence('Little is left to open: {gap} at a shoulder.', { gap: gapFigure(o, c.facts, c.reference) }),
    sources: [{ key: 'wood-handbook-2021', where: 'eq. 4-9' }],
    mark: 'derived'
  },
  {
    id: 'movement-free',
    about: 'movement',
    effect: 'favour',
    when: (o) => o.option.heart === 'free',
    short: () => sentence('free of heart'),
    says: () =>
      sentence(
        'Free of heart centre: it closes to a slight trapezium instead of checking to the pith, and it twists far less.'
      ),
    sources: [{ key: 'derived' }, PRACTICE],
    mark: 'practice'
  },
  {
    id: 'movement-dry',
    about: 'movement',
    effect: 'favour',
    when: (o, c) => nearService(o, c) && o.option.seasoning !== 'green',
    short: () => sentence('comes dry'),
    says: (o, c) =>
      sentence('It comes at {moisture}, near the {service} it will live at: little is left to move.', {
        moisture: deliveredFigure(o, c.facts, c.reference),
        service: serviceMoistureFigure(c.facts, c.reference)
      }),
    sources: [{ key: 'wood-handbook-2010', where: 'ch. 13' }],
    mark: 'seen'
  }
]
