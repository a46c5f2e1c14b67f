/** Finish, knots, checks, joints, pitch, upkeep. */
import type { Question } from '../types'
import { always, outside } from './when'

export const lookQuestions: readonly Question[] = [
  {
    id: 'finish',
    stage: 'look',
    kind: 'choice',
    picture: 'finish',
    when: always,
    title: 'How should the wood look?',
    label: 'Finish',
    why: 'A clear coat or a stain lets the wood’s own colour through; some woods can never be made pale.',
    unsure: 'We carry a clear, a mid and a dark finish.',
    choices: [
      { id: 'grey', label: 'Left bare, to grey', help: 'Outdoors it silvers; indoors it yellows a little' },
      { id: 'clear', label: 'Clear', help: 'The wood’s own colour, a little deeper' },
      { id: 'pale', label: 'Pale', help: 'Whitened or very light' },
      { id: 'mid', label: 'Mid-toned stain' },
      { id: 'dark', label: 'Dark stain' },
      { id: 'painted', label: 'Painted' }
    ]
  },
  {
    id: 'knots',
    stage: 'look',
    kind: 'choice',
    picture: 'knots',
    when: always,
    title: 'How do you feel about knots?',
    label: 'Knots',
    why: 'Clear timbers are rare and dear in most woods.',
    unsure: 'We take it that some knots are fine.',
    choices: [
      { id: 'any', label: 'I like them' },
      { id: 'some', label: 'Some are fine' },
      { id: 'clear', label: 'As few as can be' }
    ]
  },
  {
    id: 'checks',
    stage: 'look',
    kind: 'choice',
    picture: 'log-end',
    when: always,
    title: 'And about the long splits that drying opens?',
    label: 'Drying checks',
    why: 'A timber with the heart of the tree in it always checks. They seldom weaken it, but they show.',
    unsure: 'We take it that some are fine.',
    choices: [
      { id: 'fine', label: 'Part of the timber', help: 'They belong to a frame' },
      { id: 'some', label: 'Some are fine' },
      { id: 'few', label: 'As few as can be' }
    ]
  },
  {
    id: 'joints',
    stage: 'look',
    kind: 'choice',
    picture: 'joint',
    when: always,
    title: 'How much do you mind joints that open a little?',
    label: 'Open joints',
    why: 'Wood shrinks across its grain. If plaster or glass meets the timber, even a small gap shows.',
    unsure: 'We take it that a small gap is fine.',
    choices: [
      { id: 'fine', label: 'Not at all' },
      { id: 'small', label: 'A small gap is fine' },
      { id: 'tight', label: 'They must stay tight', help: 'Plaster or glass runs up to the timbers' }
    ]
  },
  {
    id: 'resin',
    stage: 'look',
    kind: 'choice',
    picture: 'pitch',
    when: always,
    title: 'Would beads of pitch bother you?',
    label: 'Pitch',
    why: 'Pines, larch, spruce and Douglas-fir may weep resin for years unless heat has set it.',
    unsure: 'We take it that you would rather not.',
    choices: [
      { id: 'fine', label: 'No' },
      { id: 'rather-not', label: 'I would rather not' },
      { id: 'never', label: 'There must be none' }
    ]
  },
  {
    id: 'upkeep',
    stage: 'look',
    kind: 'choice',
    picture: 'upkeep',
    when: outside,
    title: 'What upkeep will really be done?',
    label: 'Upkeep',
    why: 'A coat that nobody renews protects nothing after a few years. An honest answer saves a frame.',
    unsure: 'We take it that it will be seldom.',
    choices: [
      { id: 'none', label: 'None' },
      { id: 'seldom', label: 'Every five years or so' },
      { id: 'regular', label: 'Every two or three years' }
    ]
  }
]
