/** The section "How dry": the moisture that wood settles at in that place and use. */

import type { Brief } from '../brief-types'
import type { Facts } from '../facts'
import { serviceMoistureFigure } from '../figures'
import { MONTHS } from '../months'
import type { Context } from '../rule'
import { PRACTICE, sentence } from '../say'

const WHERE: Readonly<Record<string, string>> = {
  heated: 'in a heated room',
  unheated: 'indoors without heating',
  roofed: 'outside under a roof',
  weather: 'in the weather',
  ground: 'touching the ground'
}

const driestMonth = ({ service }: Facts): string =>
  MONTHS[service.months.indexOf(Math.min(...service.months))] ?? 'winter'

/** Moisture in service month by month. */
export function climateSection(c: Context): Brief['climate'] {
  const { facts, reference } = c
  return {
    place: facts.place.name,
    months: facts.service.outdoor.map((outdoor, i) => ({ outdoor, service: facts.service.months[i] ?? outdoor })),
    says: [
      sentence(`Near ${facts.place.name}, ${WHERE[facts.exposure]}, wood settles at about {service} over the year.`, {
        service: serviceMoistureFigure(facts, reference)
      }),
      facts.exposure === 'heated'
        ? sentence(
            `The room is driest in ${driestMonth(facts)}, so that is when gaps are widest.`,
            undefined,
            [{ key: 'derived' }],
            'derived'
          )
        : sentence(
            'A big timber follows the air slowly: its inside hardly notices a season.',
            undefined,
            [PRACTICE],
            'practice'
          )
    ]
  }
}
