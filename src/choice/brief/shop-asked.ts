/** Twenty questions that a framer asks of a new job, in the order they would ask, answered from the brief. */
import type { Sentence } from '../../data/quantity'
import type { Brief } from '../brief-types'
import type { AskedLine } from '../detail-types'
import { questionOf } from '../questions'
import { capital, sentence } from '../say'
import type { JobLine } from '../types'
import { joined } from './shop-words'

/** A question of the client's, with the words around its answer. */
type From = readonly [question: string, before?: string, after?: string]
/** What the framer asks, what answers it, and what is said where the job raises none of that. */
type Ask = readonly [ask: string, from: readonly From[], idle?: string]

const LOOKS = 'Does not arise: nothing rests on these timbers.'
const OF_CLIENT: readonly Ask[] = [
  ['What is being built, and where?', [['project'], ['place', 'the weather of ']]],
  ['Do the timbers carry, and what?', [['role'], ['carries'], ['truss']]],
  ['Indoors or out, heated or not?', [['exposure'], ['details', 'water at joints and feet: ']]],
  [
    'What is the span, how many stand in a row, how far apart?',
    [
      ['span', '', ' clear'],
      ['count', '', ' in a row'],
      ['spacing', '', ' apart']
    ],
    LOOKS
  ],
  [
    'How tall are the posts, how steep the roof?',
    [
      ['postHeight', 'posts: '],
      ['slope', 'roof: ']
    ],
    LOOKS
  ],
  ['How much snow, on the ground?', [['snow']], 'Does not arise: no snow lies on them.'],
  [
    'Is any size, length or depth fixed?',
    [
      ['size', 'size: '],
      ['stick', 'longest stick: '],
      ['depthLimit', 'depth: ']
    ]
  ],
  ['What finish, and what upkeep?', [['finish'], ['upkeep', 'upkeep: ']]],
  [
    'What would they mind?',
    [
      ['knots', 'knots: '],
      ['checks', 'checks: '],
      ['joints', 'joints that open: '],
      ['resin', 'pitch: ']
    ]
  ],
  [
    'When must it stand, and be warm?',
    [['stands'], ['begins', 'felled in '], ['waits', 'cut timbers wait '], ['heating', 'heated ']]
  ],
  ['What is the budget?', [['budget'], ['budgetSum', 'sum for the frame: '], ['local', 'wood from near by: ']]],
  ['What matters most to them?', [['order']]]
]

/** The client's choice is quoted, as they read it; a number stands by itself. */
const said = (line: JobLine): Sentence =>
  questionOf(line.question)?.kind === 'choice' ? { ...line.says, text: `“${line.says.text}”` } : line.says

function answered([ask, from, idle = '']: Ask, job: readonly JobLine[]): AskedLine {
  const lines = from.flatMap(([id, before = '', after = '']) => {
    const line = job.find((l) => l.question === id)
    return line ? [{ assumed: line.assumed, parts: [before, said(line), after] }] : []
  })
  if (lines.length === 0) return { ask, says: sentence(idle), state: 'idle' }
  const list = (assumed: boolean) =>
    lines.filter((line) => line.assumed === assumed).flatMap(({ parts }, i) => [i > 0 ? '; ' : '', ...parts])
  const [told, taken] = [list(false), list(true)]
  const says = joined([
    ...(told.length > 0 ? [...told, '.'] : []),
    ...(taken.length > 0 ? [told.length > 0 ? ' ' : '', 'Not answered, so assumed: ', ...taken, '.'] : [])
  ])
  return { ask, says: { ...says, text: capital(says.text) }, state: taken.length > 0 ? 'assumed' : 'answered' }
}

/** The last one is about what is open, who settles it, and what a brief cannot know. */
function whatIsOpen(job: readonly JobLine[], sure: Brief['sure']): AskedLine {
  const open = job.filter((l) => l.assumed)
  const movers = sure.settle.filter((s) => s.moves).map((s) => s.label.toLowerCase())
  const left =
    open.length === 0
      ? 'Nothing is open.'
      : movers.length > 0
        ? `Able to change the choice: ${movers.join(', ')}.`
        : 'What is open cannot change the choice.'
  return {
    ask: 'What is open, and what was nobody asked?',
    says: sentence(
      `${left} Not asked here: who else decides, the way in for a truck or a crane, the ground under the posts, power and shelter on site.`
    ),
    state: open.length > 0 ? 'assumed' : 'answered'
  }
}

/** @param ofTimber what is asked of the timber itself, answered from the cut list and the joints */
export function askedLines(job: readonly JobLine[], sure: Brief['sure'], ofTimber: readonly AskedLine[]): AskedLine[] {
  return [...OF_CLIENT.map((ask) => answered(ask, job)), ...ofTimber, whatIsOpen(job, sure)]
}
