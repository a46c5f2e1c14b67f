/** The section "Will it last?". */
import type { Sentence } from '../../data/quantity'
import { originOf, type Sourced, type Wood } from '../../data/reference'
import type { Brief } from '../brief-types'
import { hazardFigure } from '../figures'
import { lifeOf, sapwoodWords, verdictWords } from '../lasting'
import type { Context } from '../rule'
import { fieldTestsOf } from '../rules/field'
import { PRACTICE, sentence } from '../say'
import type { OptionReport } from '../types'

const sourced = (text: string, from: Sourced): Sentence => {
  const { sources, mark } = originOf(from)
  return sentence(text, undefined, sources, mark)
}

/** Hazard of the climate, use class and what the details did to it, and what becomes of the leading wood there. */
export function durabilitySection(report: OptionReport | null, c: Context): Brief['durability'] {
  const { facts, reference } = c
  const hazard = hazardFigure(facts, reference)
  const inside = facts.exposure === 'heated' || facts.exposure === 'unheated'
  const wood = report && reference.woods.get(report.option.species)
  const says = inside
    ? [
        sentence(
          'Indoors and dry, no fungus grows: below about 20 % moisture wood does not rot, whatever the species. Keep leaks and condensation off it.',
          undefined,
          [{ key: 'en-335-2013' }],
          'seen'
        )
      ]
    : [...placeSays(c), ...(report && wood ? woodSays(report, wood, c) : []), ...closing(c)]
  const roofed = facts.exposure === 'roofed'
  const water = roofed || facts.exposure === 'weather' ? { details: facts.details, roofed } : null
  return { says, hazard, months: facts.hazardMonths, useClass: facts.useClass, water }
}

/** The place, the use class, and what the details did to it. */
function placeSays({ facts, reference }: Context): Sentence[] {
  const use = reference.decay.useClasses.find((u) => u.id === facts.useClass)
  const details = reference.decay.details.find((d) => d.id === facts.details)
  const meaning = (use?.says ?? '').replace(/\.$/, '').toLowerCase()
  const offGround = facts.useClass === '4' && facts.exposure !== 'ground'
  const where = facts.exposure === 'roofed' || facts.exposure === 'weather' ? details?.[facts.exposure] : undefined
  return [
    sentence(
      `The climate’s index for decay above ground near ${facts.place.name} is {hazard}: ${facts.hazard}. ${offGround ? 'This counts as use class 4, as if it stood' : `This is use class ${facts.useClass}:`} ${meaning}.`,
      { hazard: hazardFigure(facts, reference) }
    ),
    ...(where ? [sourced(where, details as Sourced)] : [])
  ]
}

/** The leading wood: verdict of the matrix, expected time, trials that disagree, sapwood. */
function woodSays(report: OptionReport, wood: Wood, c: Context): Sentence[] {
  const { facts, reference } = c
  const { sufficiency, sapwood, stakes } = reference.decay
  const life = lifeOf(wood, facts, reference)
  const stake = facts.useClass === '4' ? stakes.find((s) => s.hazards.includes(facts.hazard)) : undefined
  const matrix = originOf(sufficiency as Sourced)
  return [
    sentence(
      `${report.wood} heartwood is of durability class {class} (1 lasts longest, 5 least): ${verdictWords(wood, facts, reference)} in this use class, by the European matrix of 1994 (since replaced).`,
      { class: report.figures.durabilityClass },
      matrix.sources,
      matrix.mark
    ),
    sentence(
      `Expect sound heartwood to last ${life.says}${facts.useClass === '2' ? '' : '; details decide'}.`,
      undefined,
      life.origin.sources,
      life.origin.mark
    ),
    ...(stake ? [sourced(`${stake.says}.`, stake as Sourced)] : []),
    ...fieldTestsOf({ wood }, c).map((t) => sentence(t.says, undefined, t.origin.sources, t.origin.mark)),
    sourced(`${sapwood.says}: here ${sapwoodWords(facts, reference)}.`, sapwood as Sourced)
  ]
}

function closing({ facts }: Context): Sentence[] {
  const practice = (text: string) => sentence(text, undefined, [PRACTICE], 'practice')
  return [
    practice(
      facts.exposure === 'ground'
        ? 'First advice: do not let wood touch the ground. A metal stand-off base that leaves air under the post does more than any species.'
        : 'Details do more than species: deep eaves, posts on stand-off bases, covered end grain, joints that drain, and no pockets that hold water.'
    ),
    practice(
      'Termites and beetles are not in the index, and pressure-treated timber is not among the options here: ask about both where they matter.'
    ),
    sentence(
      'Classes come from tests of stakes and blocks; field trials and buildings scatter widely about them, and some woods change places.',
      undefined,
      [{ key: 'highley-1995' }, { key: 'en-350-2016' }],
      'seen'
    )
  ]
}
