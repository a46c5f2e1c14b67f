/** What the dates allow, and what drying a big section can do. */

import { originOf, type Sourced } from '../../data/reference'
import { INCH, percent } from '../../data/units'
import { limit } from '../facts'
import { deliveredFigure, readyFigure, sectionFigure } from '../figures'
import type { OptionBasis } from '../option-basis'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { ANSWERED, PRACTICE, quantity, sentence } from '../say'

/** Weeks by which a date may be missed and still be kept: half of the unit it is told in. */
export const ON_THE_DATE = 0.5

const airTooLittle = (o: OptionFacts, { reference }: Context) =>
  o.option.seasoning === 'air' &&
  (o.yardWeeks < limit(reference, 'air-least-weeks') ||
    o.wood.greenWhole - o.delivered < percent(limit(reference, 'air-least-drop')))

const tooThick = (o: OptionBasis) => {
  const most = o.seasoning.thickestIn?.[o.wood.traits.hardToDry.level]
  return most !== undefined && o.section[0] > most * INCH + 0.1
}

export const timeRules: readonly Rule[] = [
  {
    id: 'time-air',
    about: 'time',
    effect: 'out',
    when: airTooLittle,
    short: () => sentence('no time to dry'),
    says: (o, { facts, reference }) =>
      sentence(
        'Your dates leave {yard} in the yard: a {section} would still be at {moisture}, green in all but name.',
        {
          yard: quantity('weeks', Math.max(0, o.yardWeeks), { mark: 'derived', sources: [{ key: 'derived' }] }),
          section: sectionFigure(o, facts, reference),
          moisture: deliveredFigure(o, facts, reference)
        }
      ),
    sources: [{ key: 'fpl-gtr-117' }, { key: 'derived' }],
    mark: 'derived'
  },
  {
    id: 'time-late',
    about: 'time',
    effect: 'out',
    when: (o, { facts }) => facts.standsWeeks !== null && o.readyWeeks > facts.standsWeeks + ON_THE_DATE,
    short: (o, { facts, reference }) => sentence('ready in {ready}', { ready: readyFigure(o, facts, reference) }),
    says: (o, { facts, reference }) =>
      sentence('It could stand in {ready} at the soonest; you need it in {wanted}.', {
        ready: readyFigure(o, facts, reference),
        wanted: quantity('weeks', facts.standsWeeks ?? 0, ANSWERED)
      }),
    sources: [{ key: 'shop-sheet' }, PRACTICE],
    mark: 'practice'
  },
  {
    id: 'drying-thick',
    about: 'drying',
    effect: 'out',
    early: true,
    when: tooThick,
    short: () => sentence('too thick to dry through'),
    says: (o, { facts, reference }) => {
      const most = o.seasoning.thickestIn?.[o.wood.traits.hardToDry.level] ?? 0
      return most === 0
        ? sentence(`${o.wood.name} does not take this way of drying: its pores are closed and the core stays wet.`)
        : sentence(
            `${o.wood.name} thicker than {most} is not dried to the core this way without harm; the section is {section}.`,
            {
              most: quantity('diameter', most * INCH, originOf(o.seasoning as Sourced)),
              section: sectionFigure(o, facts, reference)
            }
          )
    },
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'green-waits',
    about: 'movement',
    effect: 'caution',
    when: (o, { facts }) => facts.waits !== 'weeks' && o.option.seasoning === 'green',
    short: () => sentence('green, and it waits'),
    says: (_o, { facts }) =>
      sentence(
        `Green joints that lie ${facts.waits === 'year' ? 'a year' : 'some months'} twist and shrink out of fit. Raise soon after cutting, or use a drier timber.`
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'green-heated',
    about: 'movement',
    effect: 'caution',
    when: (o, { facts }) => facts.exposure === 'heated' && facts.heating === 'at-once' && o.delivered > percent(25),
    short: () => sentence('green into a warm room'),
    says: (o, { facts, reference }) =>
      sentence(
        'Heated at once at {moisture}, the outside dries far ahead of the core and checks open fast. Keep the first winter cool and damp.',
        {
          moisture: deliveredFigure(o, facts, reference)
        }
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'drying-for-nothing',
    about: 'drying',
    effect: 'caution',
    when: (o, { facts }) =>
      o.option.seasoning !== 'green' &&
      o.option.seasoning !== 'air' &&
      (facts.exposure === 'weather' || facts.exposure === 'ground'),
    short: () => sentence('dried, then rained on'),
    says: () =>
      sentence(
        'Drying to the core is partly undone by the first wet season outside: the wood takes water up again and moves.'
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'drying-vacuum-few',
    about: 'drying',
    effect: 'caution',
    general: true,
    when: (o) => o.option.seasoning === 'rfv',
    short: () => sentence('few plants dry it so'),
    says: () =>
      sentence(
        'Few plants dry timbers by radio waves and vacuum: ask which one, how far the timbers travel, and what moisture the core is sold at.'
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'drying-kiln-core',
    about: 'drying',
    effect: 'caution',
    general: true,
    when: (o) => o.option.seasoning === 'kiln',
    short: () => sentence('ask for the core'),
    says: () =>
      sentence(
        'A kiln dries the outside of a big timber first: ask for the moisture of the core, measured, not of the shell.'
      ),
    sources: [{ key: 'wood-handbook-2010', where: 'p. 13-3' }, PRACTICE],
    mark: 'seen'
  },
  {
    id: 'time-spare',
    about: 'time',
    effect: 'favour',
    when: (o, { facts }) => facts.standsWeeks !== null && o.readyWeeks <= facts.standsWeeks * 0.7,
    short: () => sentence('ready in time'),
    says: (o, { facts, reference }) =>
      sentence('It can stand in {ready}, well before you need it.', { ready: readyFigure(o, facts, reference) }),
    sources: [{ key: 'shop-sheet' }],
    mark: 'practice'
  }
]
