/** The section on cost: the timber, its share of the whole, and what a cheaper wood would save of both. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Context } from '../rule'
import { computed, quantity, sentence } from '../say'
import type { Brief, OptionReport } from '../types'

/** Both percentages always together: of the timber, and of the whole. */
export function costSection(lead: OptionReport, inOptions: readonly OptionReport[], c: Context): Brief['cost'] {
  const f = lead.figures
  const says: Sentence[] = [
    sentence(
      'The timber comes to about {timber}, which is {share} of the {frame} for these main timbers cut and raised: {volume} at {price}.',
      {
        timber: f.timberCost,
        share: f.timberShare,
        frame: f.jobCost,
        volume: f.volume,
        price: f.pricePerVolume
      }
    )
  ]
  const value = (q: Quantity) => (typeof q.value === 'number' ? q.value : 0)
  const cheapest = [...inOptions].sort((a, b) => value(a.figures.jobCost) - value(b.figures.jobCost))[0]
  if (
    cheapest &&
    value(cheapest.figures.jobCost) < 0.98 * value(f.jobCost) &&
    value(cheapest.figures.timberCost) < value(f.timberCost)
  ) {
    const g = cheapest.figures
    const less = (a: Quantity, b: Quantity) =>
      quantity('percent', 1 - value(b) / value(a), {
        ...computed(c.reference, 'times', { [cheapest.short]: b, [lead.short]: a }),
        mark: a.origin.mark,
        sources: a.origin.sources
      })
    says.push(
      sentence(
        `The cheapest that still does the job, ${cheapest.said} (${cheapest.heartSays}, ${cheapest.seasoningSays}), saves {timber} of the timber, and {frame} of the whole.`,
        {
          timber: less(f.timberCost, g.timberCost),
          frame: less(f.jobCost, g.jobCost)
        }
      )
    )
  } else {
    says.push(sentence('Nothing that does the job is cheaper by much.'))
  }
  says.push(
    c.sheet.placeholder
      ? sentence(
          'Every price here is a placeholder from an invented shop sheet: it shows proportions, not what you will pay. Plates, purlins, braces, joists, foundations, roofing, walls and taxes are not in it.',
          undefined,
          [{ key: 'placeholder' }],
          'placeholder'
        )
      : sentence(
          `Prices are those of ${c.sheet.name}. Plates, purlins, braces, joists, foundations, roofing, walls and taxes are not in them.`,
          undefined,
          [{ key: 'shop-sheet' }],
          'seen'
        )
  )
  return { says }
}
