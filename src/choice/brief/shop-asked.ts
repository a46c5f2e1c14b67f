/** Twenty questions that a framer asks of a new job, in the order they would ask, answered from the brief. */
import type { Sentence } from '../../data/quantity'
import type { AskedLine } from '../detail-types'
import { questionOf } from '../questions'
import { capital, sentence } from '../say'
import type { Brief, JobLine } from '../types'
import { joined } from './shop-words'

/** A question of the client's, with the words around its answer. */
type From = readonly [question: string, before?: string, after?: string]
/** What the framer asks, what answers it, and what is said where the job raises none of that. */
type Ask = readonly [ask: string, from: readonly From[], idle?: string]

const LOOKS = 'Does not arise: nothing rests on these timbers.'
const ASKS: readonly Ask[] = [
  ['What is being built?', [['project']]],
  ['Where does it stand?', [['place', 'with the weather of ']]],
  ['Do the timbers carry, and what?', [['role'], ['carries'], ['truss']]],
  ['What is the clear span?', [['span']], LOOKS],
  [
    'How many, and how far apart?',
    [
      ['count', '', ' in a row'],
      ['spacing', '', ' apart']
    ]
  ],
  ['How tall are the posts?', [['postHeight']], LOOKS],
  ['How much snow, on the ground?', [['snow']], 'Does not arise: no snow lies on them.'],
  ['What is the pitch of the roof?', [['slope']], 'Does not arise: no roof lies on them.'],
  ['Indoors or out, heated or not?', [['exposure']]],
  ['How is water kept off and let go?', [['details']], 'Does not arise where they live.'],
  ['What finish?', [['finish']]],
  ['How do they feel about knots?', [['knots']]],
  ['And about checks?', [['checks']]],
  ['Do they mind joints that open?', [['joints']]],
  ['Does pitch bother them?', [['resin']]],
  ['What upkeep will be done?', [['upkeep']], 'Does not arise: it stays indoors.'],
  [
    'When must it stand, and be warm?',
    [['stands'], ['begins', 'felled in '], ['waits', 'cut timbers wait '], ['heating', 'it is heated ']]
  ],
  ['How do they think about the price?', [['budget'], ['budgetSum', 'sum for the frame: ']]],
  [
    'Is any size, length or depth fixed?',
    [
      ['size', 'size: '],
      ['stick', 'longest stick: '],
      ['depthLimit', 'depth: ']
    ]
  ]
]

/** The client's choice is quoted, as they read it; a number stands by itself. */
const said = (line: JobLine): Sentence =>
  questionOf(line.question)?.kind === 'choice' ? { ...line.says, text: `“${line.says.text}”` } : line.says

function answered([ask, from, idle = '']: Ask, job: readonly JobLine[]): AskedLine {
  const lines = from.flatMap(([id, before = '', after = '']) => {
    const line = job.find((l) => l.question === id)
    return line ? [{ line, before, after }] : []
  })
  if (lines.length === 0) return { ask, says: sentence(idle), state: 'idle' }
  const parts = lines.flatMap(({ line, before, after }, i) => [
    i > 0 ? '; ' : '',
    line.assumed ? 'not answered, assumed ' : '',
    before,
    said(line),
    after
  ])
  const says = joined([...parts, '.'])
  return {
    ask,
    says: { ...says, text: capital(says.text) },
    state: lines.some(({ line }) => line.assumed) ? 'assumed' : 'answered'
  }
}

/** The last one is about what is open, and who settles it. */
function whoDecides(job: readonly JobLine[], sure: Brief['sure']): AskedLine {
  const open = job.filter((l) => l.assumed).map((l) => l.label.toLowerCase())
  const movers = sure.settle.filter((s) => s.moves).map((s) => s.label.toLowerCase())
  const left =
    open.length === 0
      ? 'Nothing is open.'
      : movers.length > 0
        ? `Able to change the choice: ${movers.join(', ')}.`
        : 'What is open cannot change the choice.'
  return {
    ask: 'What is unsure, and who decides the sizes?',
    says: sentence(`${left} Sizes here are a first look; a licensed engineer decides them to the local code.`),
    state: open.length > 0 ? 'assumed' : 'answered'
  }
}

export function askedLines(job: readonly JobLine[], sure: Brief['sure']): AskedLine[] {
  return [...ASKS.map((ask) => answered(ask, job)), whoDecides(job, sure)]
}
