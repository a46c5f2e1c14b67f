/** What can be had: length, log, size, sheet. */

import { logFigure, sectionFigure } from '../figures'
import { canBeSawn } from '../frame-for'
import type { Rule } from '../rule'
import { ANSWERED, PRACTICE, quantity, sentence } from '../say'

export const supplyRules: readonly Rule[] = [
  {
    id: 'supply-length',
    about: 'supply',
    effect: 'out',
    early: true,
    when: (o, { facts }) => facts.stick > o.available.longest + 1,
    short: (o) =>
      sentence('no longer than {longest}', { longest: quantity('span', o.available.longest, o.wood.supply.origin) }),
    says: (o, { facts }) =>
      sentence(`${o.wood.name} is seldom had longer than {longest}; you need {stick}.`, {
        longest: quantity('span', o.available.longest, o.wood.supply.origin),
        stick: quantity('span', facts.stick, ANSWERED)
      }),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'supply-log',
    about: 'supply',
    effect: 'out',
    early: true,
    when: (o) => o.logDiameter > o.available.log + 1,
    short: (o) =>
      sentence('logs no thicker than {most}', { most: quantity('diameter', o.available.log, o.wood.supply.origin) }),
    says: (o, { facts, reference }) =>
      sentence(
        `A {section} ${o.option.heart === 'free' ? 'free of heart centre' : 'with its heart'} needs a {log} log at the small end; ${o.wood.said} logs are seldom over {most}.`,
        {
          section: sectionFigure(o, facts, reference),
          log: logFigure(o, facts, reference),
          most: quantity('diameter', o.available.log, o.wood.supply.origin)
        }
      ),
    sources: [PRACTICE, { key: 'derived' }],
    mark: 'practice'
  },
  {
    id: 'supply-section',
    about: 'supply',
    effect: 'out',
    early: true,
    when: (o, { facts }) =>
      (facts.size !== null || !facts.loaded) &&
      !canBeSawn(o.section, o.option.heart, { ...o.available, log: Number.POSITIVE_INFINITY }),
    short: (o) =>
      sentence('not sawn over {largest}', { largest: quantity('section', o.available.largest, o.wood.supply.origin) }),
    says: (o, { facts, reference }) =>
      sentence(`${o.wood.name} is seldom sawn larger than {largest}; you need {section}.`, {
        largest: quantity('section', o.available.largest, o.wood.supply.origin),
        section: sectionFigure(o, facts, reference)
      }),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'supply-free',
    about: 'supply',
    effect: 'out',
    early: true,
    when: (o) => o.option.heart === 'free' && o.freeOfHeart === 'hardly',
    short: () => sentence('not sold free of heart'),
    says: (o) =>
      o.wood.supply.freeOfHeart === 'hardly'
        ? sentence(`Framing timbers of ${o.wood.said} are hardly ever sold free of heart centre.`)
        : sentence(`This shop does not supply ${o.wood.said} free of heart centre.`),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'supply-free-rare',
    about: 'supply',
    effect: 'caution',
    when: (o) => o.option.heart === 'free' && o.freeOfHeart === 'rare',
    short: () => sentence('free of heart to order'),
    says: (o) =>
      sentence(
        `${o.wood.name} free of heart centre is a special order: few mills cut it, and it costs more and comes later.`
      ),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'supply-request',
    about: 'supply',
    effect: 'caution',
    when: (o, { sheet }) => sheet.woods.some((w) => w.species === o.wood.id && w.onRequest),
    short: () => sentence('on request'),
    says: (o) => sentence(`${o.wood.name} is had on request only: ask early.`),
    sources: [{ key: 'shop-sheet' }],
    mark: 'practice'
  },
  {
    id: 'local-must',
    about: 'local',
    effect: 'out',
    early: true,
    when: (o, { facts }) =>
      facts.local === 'must' && !o.wood.regions.some((r) => facts.regions.includes(r) || facts.nearRegions.includes(r)),
    short: () => sentence('does not grow near'),
    says: (o, { facts }) =>
      sentence(`${o.wood.name} does not grow in the forest region of ${facts.place.name} or next to it.`),
    sources: [PRACTICE],
    mark: 'practice'
  },
  {
    id: 'local-near',
    about: 'local',
    effect: 'favour',
    when: (o, { facts }) => facts.local !== 'no-matter' && o.wood.regions.some((r) => facts.regions.includes(r)),
    short: () => sentence('grows near'),
    says: (_o, { facts }) => sentence(`It grows in the same forest region as ${facts.place.name}.`),
    sources: [PRACTICE],
    mark: 'practice'
  }
]
