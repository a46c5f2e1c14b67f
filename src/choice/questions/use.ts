/** What is built, and whether it carries. */
import type { Question } from '../types'
import { always } from './when'

export const useQuestions: readonly Question[] = [
  {
    id: 'project',
    stage: 'use',
    kind: 'choice',
    picture: 'frame',
    when: always,
    title: 'What are you building?',
    label: 'Building',
    why: 'It names your brief and sets what is usual for spans and heights. It decides nothing by itself.',
    unsure: 'We call it a timber frame and go by the other answers.',
    choices: [
      { id: 'great-room', label: 'A great room or hall', help: 'One big room under an open timber roof' },
      { id: 'house', label: 'A house frame' },
      { id: 'barn', label: 'A barn or workshop' },
      { id: 'pavilion', label: 'A pavilion', help: 'A roof on posts, open at the sides' },
      { id: 'porch', label: 'A porch or entry' },
      { id: 'pergola', label: 'A pergola or arbour' },
      { id: 'beams', label: 'Beams in a room that stands already' }
    ]
  },
  {
    id: 'role',
    stage: 'use',
    kind: 'choice',
    picture: 'role',
    when: always,
    title: 'Will the timbers carry the building, or are they only to be seen?',
    label: 'Carries or for looks',
    why: 'Timbers that carry need a size, a grade and an engineer. Timbers for looks may be any size that pleases.',
    unsure: 'We take it that they carry: the safer guess.',
    choices: [
      { id: 'structure', label: 'They carry', help: 'Roof, floor or deck rests on them' },
      { id: 'looks', label: 'Only to be seen', help: 'Something else carries; these are dressing' }
    ]
  }
]
