/** Where field trials disagree with the class lists: said last, for it moves no score. */
import type { FieldTest } from '../../data/reference'
import type { OptionFacts } from '../option-facts'
import type { Context, Rule } from '../rule'
import { sentence } from '../say'

/** The wood's trials that bear on where it will stand; none indoors and dry. */
export function fieldTestsOf(o: Pick<OptionFacts, 'wood'>, { facts }: Context): readonly FieldTest[] {
  if (facts.useClass === '1' || facts.useClass === '2') return []
  const setting = facts.useClass === '4' ? 'ground' : 'above-ground'
  return o.wood.durability.fieldTests.filter((t) => t.setting === setting)
}

const finding = (finds: 'better' | 'worse') => (o: OptionFacts, c: Context) =>
  fieldTestsOf(o, c).find((t) => t.finds === finds)

function fieldRule(finds: 'better' | 'worse'): Rule {
  const found = finding(finds)
  return {
    id: `decay-field-${finds}`,
    about: 'durability',
    effect: finds === 'better' ? 'favour' : 'caution',
    when: (o, c) => found(o, c) !== undefined,
    short: () => sentence(finds === 'better' ? 'better in trials than its class' : 'worse in trials than its class'),
    says: (o, c) => {
      const test = found(o, c)
      return sentence(test?.says ?? '', undefined, test?.origin.sources, test?.origin.mark)
    },
    sources: [{ key: 'stirling-wong-2020' }, { key: 'highley-1995' }, { key: 'kirker-2018' }, { key: 'intrans-2018' }],
    mark: 'seen'
  }
}

export const fieldRules: readonly Rule[] = [fieldRule('worse'), fieldRule('better')]
