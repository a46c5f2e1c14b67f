/** What a framer asks of the timber itself, answered from the leading option, its cut list and its joints. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { AskedLine, CutLine, CutList } from '../detail-types'
import { serviceMoistureFigure } from '../figures'
import { joineryOf } from '../joinery/joinery'
import { joineryLine } from '../joinery/says'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { lean, sentence } from '../say'
import type { OptionReport } from '../types'

const JOINTS = 'Do the joints work in timber?'

const most = (lines: readonly CutLine[], of: (line: CutLine) => Quantity): CutLine | undefined =>
  [...lines].sort((p, q) => Number(of(q).value) - Number(of(p).value))[0]

function sizesSay(lines: readonly CutLine[]): Sentence {
  const values = Object.fromEntries(lines.map((line, i) => [`s${i}`, line.section]))
  const list = lines.map((line, i) => `${line.name.toLowerCase()} {s${i}}`).join(', ')
  return sentence(`As a first look: ${list}. A licensed engineer decides them to the local code.`, values)
}

/** Which joints of these sizes fail in timber, and why. */
function jointsSay({ facts }: Judged, c: Context): Sentence | null {
  const lines = joineryOf(facts, c).map((joint) => joineryLine(joint, c.reference))
  if (lines.length === 0) return null
  const steel = lines.filter((line) => line.steel)
  if (steel.length === 0) return sentence('Yes, as a first look, at these sizes.')
  return sentence(`Not all. ${steel.map(({ name, says }) => `${name}: ${says.text}`).join(' ')}`)
}

/** @param report the option that the cut list is of */
export function askedOfTimber(judged: Judged, report: OptionReport, cut: CutList, c: Context): AskedLine[] {
  const answered = (ask: string, says: Sentence): AskedLine => ({ ask, says: lean(says), state: 'answered' })
  const { lines } = cut
  const log = most(lines, (line) => line.log)
  const long = most(lines, (line) => line.length)
  const heavy = lines.find((line) => line.heaviest)
  const joints = jointsSay(judged, c)
  const what = `${report.wood}, ${report.heartSays}, ${report.seasoningSays}`
  return [
    answered(
      'Which wood, cut and dried how?',
      sentence(judged.in ? `${what}.` : `Nothing passes. Nearest came ${what}.`)
    ),
    answered('What sizes, and who decides them?', sizesSay(lines)),
    answered(
      'How wet is it delivered, and how dry will it live?',
      sentence('{from} delivered, as a mean; {to} in place.', {
        from: cut.moisture,
        to: serviceMoistureFigure(c.facts, c.reference)
      })
    ),
    answered(
      'How much timber, and what is it worth?',
      sentence('{total} to buy, waste in it: {cost}.', { total: cut.total, cost: cut.cost })
    ),
    ...(log && long
      ? [
          answered(
            'What logs, and how long is the longest stick?',
            sentence(
              `Logs of up to {log} at the small end, under bark. The longest stick, the ${long.name.toLowerCase()}, is {stick}, from a log of {logLength}.`,
              { log: log.log, stick: long.length, logLength: long.logLength }
            )
          )
        ]
      : []),
    ...(heavy ? [answered('What has to be lifted?', cut.says[0] ?? sentence('', { each: heavy.delivered }))] : []),
    joints === null && !c.facts.loaded
      ? { ask: JOINTS, says: sentence('Does not arise: nothing rests on these timbers.'), state: 'idle' }
      : answered(JOINTS, joints ?? sentence('Not worked out: no section passes.'))
  ]
}
