/** The section on look and upkeep. */
import type { Sentence } from '../../data/quantity'
import { originOf, type Sourced } from '../../data/reference'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { PRACTICE, quantity, sentence } from '../say'
import type { Brief } from '../types'

const HANDBOOK = { key: 'wood-handbook-2010' }

/** What the finish asks of this wood there. */
export function finishSection(judged: Judged, c: Context): Brief['finish'] {
  const { facts, reference } = c
  const { wood } = judged.facts
  const finish = reference.finishes.find((f) => f.id === facts.finish)
  const says: Sentence[] = []
  const indoors = facts.exposure === 'heated' || facts.exposure === 'unheated'
  if (finish && !(indoors && finish.id === 'grey'))
    says.push(
      sentence(
        `${finish.name}: ${finish.says.charAt(0).toLowerCase()}${finish.says.slice(1)}`,
        undefined,
        originOf(finish as Sourced).sources,
        finish.mark
      )
    )
  const outdoors = facts.exposure === 'weather' || facts.exposure === 'roofed'
  if (finish?.weatherYears && outdoors) {
    const [from = 1, to = 1] = finish.weatherYears
    says.push(
      sentence(
        `In the weather such a coat lasts about {years}; under a deep roof, longer.${facts.upkeep === 'none' ? ' With no upkeep planned, leaving the wood to grey is the honest finish.' : ''}`,
        {
          years: quantity('years', (from + to) / 2, originOf(finish as Sourced), { low: from, high: to })
        }
      )
    )
  }
  const { pitch, tannin } = wood.traits
  if (pitch.level > 0 && !judged.facts.seasoning.setsPitch) {
    says.push(
      sentence(
        `${wood.name}: ${pitch.says ?? 'it may weep pitch in warm rooms and sun unless heat has set it.'}`,
        undefined,
        pitch.origin.sources,
        pitch.origin.mark
      )
    )
  }
  const wetIron = outdoors || judged.facts.delivered > 0.2
  if (tannin.level === 2 || (tannin.level === 1 && wetIron)) {
    says.push(
      sentence(
        `${wood.name}: ${(tannin.says ?? 'its colour bleeds where it is wet.').replace(/^./, (c) => c.toLowerCase())}`,
        undefined,
        tannin.origin.sources,
        tannin.origin.mark
      )
    )
  }
  if (judged.facts.delivered > 0.2 && facts.finish !== 'grey')
    says.push(
      sentence(
        'Coat it only when its outside has dried: a film over wet wood blisters.',
        undefined,
        [{ ...HANDBOOK, where: 'p. 16-5' }],
        'seen'
      )
    )
  says.push(
    sentence(
      'Colours on a screen mislead. Ask for a sample finished on the wood itself, and look at it in your own light.',
      undefined,
      [PRACTICE],
      'practice'
    )
  )
  return { says }
}
