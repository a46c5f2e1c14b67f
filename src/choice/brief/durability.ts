/** The section "Will it last?". */
import type { Sentence } from '../../data/quantity'
import { originOf, type Sourced } from '../../data/reference'
import { hazardFigure } from '../figures'
import type { Context } from '../rule'
import { PRACTICE, sentence } from '../say'
import type { Brief, OptionReport } from '../types'

/** Hazard of the climate, use class, class of the heartwood, and the details that matter more. */
export function durabilitySection(report: OptionReport | null, c: Context): Brief['durability'] {
  const { facts, reference } = c
  const hazard = hazardFigure(facts, reference)
  const use = reference.decay.useClasses.find((u) => u.id === facts.useClass)
  const says: Sentence[] = []
  if (facts.exposure === 'heated' || facts.exposure === 'unheated') {
    says.push(
      sentence(
        'Indoors and dry, no fungus grows: below about 20 % moisture wood does not rot, whatever the species. Keep leaks and condensation off it.',
        undefined,
        [{ key: 'en-335-2013' }],
        'seen'
      )
    )
  } else {
    says.push(
      sentence(
        `The climate’s index for decay above ground near ${facts.place.name} is {hazard}: ${facts.hazard}. This is use class ${facts.useClass}: ${(use?.says ?? '').replace(/\.$/, '').toLowerCase()}.`,
        { hazard }
      )
    )
    if (report) {
      says.push(
        sentence(
          `${report.wood} heartwood is of durability class {class} (1 lasts longest, 5 least). Its sapwood, like all sapwood, does not last.`,
          { class: report.figures.durabilityClass }
        )
      )
    }
    const details =
      facts.exposure === 'ground'
        ? 'First advice: do not let wood touch the ground. A metal stand-off base that leaves air under the post does more than any species.'
        : 'Details do more than species: deep eaves, posts on stand-off bases, covered end grain, joints that drain, and no pockets that hold water.'
    says.push(sentence(details, undefined, [PRACTICE], 'practice'))
    if (report && facts.exposure === 'ground') {
      const years = reference.decay.groundYears.find(
        (y) => y.durabilityClass === Math.round(Number(report.figures.durabilityClass.value))
      )
      if (years)
        says.push(
          sentence(
            `In ground contact, heartwood of that class is expected to last ${years.says.replace(/\.$/, '')}.`,
            undefined,
            originOf(years as Sourced).sources,
            years.mark
          )
        )
    }
    says.push(
      sentence(
        'Termites and beetles are not in the index, and pressure-treated timber is not among the options here: ask about both where they matter.',
        undefined,
        [PRACTICE],
        'practice'
      )
    )
    says.push(
      sentence(
        'Classes come from tests of stakes and blocks; field trials and buildings scatter widely about them, and some woods change places.',
        undefined,
        [{ key: 'highley-1995' }, { key: 'en-350-2016' }],
        'seen'
      )
    )
  }
  return { says, hazard, months: facts.hazardMonths, useClass: facts.useClass }
}
