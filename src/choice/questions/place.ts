/** Where it lives: exposure, details, climate. */
import type { Question } from '../types'
import { always, rained } from './when'

export const placeQuestions: readonly Question[] = [
  {
    id: 'exposure',
    stage: 'place',
    kind: 'choice',
    picture: 'exposure',
    when: always,
    title: 'Where will the timbers live?',
    label: 'Where the timbers live',
    why: 'Dry rooms shrink wood the most; rain and ground rot it. This answer moves more than any other.',
    unsure: 'We carry both a heated room and an outdoor roof, and show what it changes.',
    choices: [
      { id: 'heated', label: 'Indoors, heated' },
      { id: 'unheated', label: 'Indoors, not heated', help: 'A barn, a garage, a cold roof' },
      { id: 'roofed', label: 'Outside, under a roof', help: 'Rain is kept off, the air is not' },
      { id: 'weather', label: 'Outside, in the weather', help: 'Rain reaches the timbers' },
      { id: 'ground', label: 'Touching the ground or standing water' }
    ]
  },
  {
    id: 'details',
    stage: 'place',
    kind: 'choice',
    picture: 'water',
    when: rained,
    title: 'How well is water kept off, and let go?',
    label: 'Water at joints and feet',
    why: 'Wood that dries between rains seldom rots. Details do more than species.',
    unsure: 'We take it that it is as usual.',
    choices: [
      { id: 'sheltered', label: 'Well', help: 'Deep eaves or caps, end grain covered, feet on stand-offs' },
      { id: 'usual', label: 'As usual' },
      { id: 'holding', label: 'Water can stand', help: 'In joints, in checks on top, at post feet' }
    ]
  },
  {
    id: 'place',
    stage: 'place',
    kind: 'place',
    picture: 'climate',
    when: always,
    title: 'Which of these places is nearest, in weather?',
    label: 'Place',
    why: 'How dry the wood gets and how fast rot works are computed from the monthly weather there.',
    unsure: 'We carry a handful of places from dry to damp.'
  }
]
