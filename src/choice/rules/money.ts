/** What the sum for the frame lets in. */
import { moneyFigures } from '../figures'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { ANSWERED, quantity, sentence } from '../say'

const over = (o: OptionFacts, { facts }: Context): boolean => facts.budgetSum !== null && o.bill.low > facts.budgetSum

function figures(o: OptionFacts, { facts, reference, sheet }: Context) {
  const { jobCost } = moneyFigures(o, reference, sheet.placeholder)
  return {
    least: quantity('money', o.bill.low, jobCost.origin),
    sum: quantity('money', facts.budgetSum ?? 0, ANSWERED)
  }
}

const rest = {
  about: 'cost',
  short: () => sentence('over the sum'),
  sources: [{ key: 'shop-sheet' }],
  mark: 'practice'
} as const

export const moneyRules: readonly Rule[] = [
  {
    ...rest,
    id: 'money-over',
    effect: 'out',
    when: (o, c) => c.affordable === true && over(o, c),
    says: (o, c) => sentence('Cut and raised it comes to {least} at the least, over your sum of {sum}.', figures(o, c))
  },
  {
    ...rest,
    id: 'money-all-over',
    effect: 'caution',
    general: true,
    when: (o, c) => c.affordable === false && over(o, c),
    says: (o, c) =>
      sentence(
        'Nothing that does the job comes within your sum of {sum}: this comes to {least} at the least. Fewer bents, a shorter span or a plainer frame would bring it down.',
        figures(o, c)
      )
  }
]
