/** Dates and money. */
import type { Question } from '../types'
import { always, heated } from './when'

export const planQuestions: readonly Question[] = [
  {
    id: 'stands',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'When must it stand?',
    label: 'Must stand',
    why: 'Drying takes time that nothing but a kiln can shorten.',
    unsure: 'We carry half a year, a year and two years.',
    choices: [
      { id: 'w6', label: 'In six weeks' },
      { id: 'w13', label: 'In three months' },
      { id: 'w26', label: 'In half a year' },
      { id: 'w52', label: 'In a year' },
      { id: 'w104', label: 'In two years' },
      { id: 'none', label: 'No hurry' }
    ]
  },
  {
    id: 'begins',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'In which season could the timber be felled and sawn?',
    label: 'Felling',
    why: 'A yard dries timber in summer and hardly in winter. The months of the whole job follow from it.',
    unsure: 'We take January.',
    choices: [
      { id: 'winter', label: 'Winter' },
      { id: 'spring', label: 'Spring' },
      { id: 'summer', label: 'Summer' },
      { id: 'autumn', label: 'Autumn' }
    ]
  },
  {
    id: 'waits',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: always,
    title: 'Will cut timbers lie waiting before the raising?',
    label: 'Cut to raised',
    why: 'Green joints twist and shrink apart while they wait. Raised at once, they hold each other.',
    unsure: 'We take it that it is weeks.',
    choices: [
      { id: 'weeks', label: 'A few weeks at most' },
      { id: 'months', label: 'Some months' },
      { id: 'year', label: 'A year or more' }
    ]
  },
  {
    id: 'heating',
    stage: 'plan',
    kind: 'choice',
    picture: 'timeline',
    when: heated,
    title: 'How soon after raising will it be heated?',
    label: 'First heating',
    why: 'Warm dry air on wet timber opens checks fast. A year of open air first is kinder.',
    unsure: 'We take the first winter.',
    choices: [
      { id: 'at-once', label: 'At once' },
      { id: 'first-winter', label: 'The first winter' },
      { id: 'next-year', label: 'A year later, or more' }
    ]
  },
  {
    id: 'budget',
    stage: 'plan',
    kind: 'choice',
    picture: 'money',
    when: always,
    title: 'How do you think about the price of the timber?',
    label: 'Budget',
    why: 'Timber is one part of the bill. A dearer wood adds less to the whole than it seems.',
    unsure: 'We take it that value for money counts.',
    choices: [
      { id: 'lowest', label: 'It must be as low as can be' },
      { id: 'fair', label: 'Good value' },
      { id: 'quality', label: 'The right wood comes first' }
    ]
  },
  {
    id: 'budgetSum',
    stage: 'plan',
    kind: 'number',
    quantity: 'money',
    min: 500,
    max: 5_000_000,
    picture: 'money',
    when: always,
    title: 'Is there a sum for the frame: its timber, cut and raised?',
    label: 'Sum for the frame',
    why: 'What would go over it is ruled out, if something else does the job within it. Foundations, roof and walls are not in it.',
    unsure: 'We set no limit, and say what it comes to.',
    none: { id: 'none', label: 'No sum yet' }
  },
  {
    id: 'local',
    stage: 'plan',
    kind: 'choice',
    picture: 'map',
    when: always,
    title: 'Should the wood come from near by?',
    label: 'Local wood',
    why: 'Local wood is often cheaper, can be seen standing, and is used to the climate.',
    unsure: 'We take it that it would be nice.',
    choices: [
      { id: 'must', label: 'Yes, it must' },
      { id: 'rather', label: 'It would be nice' },
      { id: 'no-matter', label: 'It does not matter' }
    ]
  }
]
