/** What matters most. */
import type { Question } from '../types'
import { always } from './when'

export const weighQuestions: readonly Question[] = [
  {
    id: 'order',
    stage: 'weigh',
    kind: 'order',
    picture: 'order',
    when: always,
    title: 'What matters most? Put the first thing first.',
    label: 'What matters most',
    why: 'No wood is best at everything. Your order sets how much each point weighs.',
    unsure: 'We weigh all of them alike.',
    choices: [
      { id: 'movement', label: 'It stays put', help: 'Tight joints, little twist, few checks' },
      { id: 'durability', label: 'It lasts where it stands' },
      { id: 'cost', label: 'It costs less' },
      { id: 'look', label: 'It looks as wanted' },
      { id: 'stoutness', label: 'Slender timbers' },
      { id: 'time', label: 'It is ready soon' },
      { id: 'local', label: 'It grew near by' }
    ]
  }
]
