/** Cautions, and what to ask the framer and the engineer. */
import type { Sentence } from '../../data/quantity'
import type { Brief } from '../brief-types'
import { limit } from '../facts'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { PRACTICE, sentence } from '../say'
import type { OptionReport } from '../types'

export function cautionsOf(lead: OptionReport | null, judged: Judged | null, c: Context): Sentence[] {
  const says: Sentence[] = [
    sentence(
      'This is a preliminary opinion, not a design. Structure belongs to a licensed engineer and to the local building code.'
    ),
    sentence(
      'Wood varies: strength, shrinkage and lasting power scatter by a fifth or more about the figures here.',
      undefined,
      [{ key: 'wood-handbook-2010', where: 'Table 5-6' }],
      'memory'
    )
  ]
  if (c.facts.loaded)
    says.push(
      sentence(
        'Many design values here are recalled, not yet read in the standard; each figure says which when it is opened.'
      )
    )
  for (const reason of lead?.reasons ?? []) if (reason.effect === 'caution') says.push(reason.says)
  for (const caution of judged?.facts.wood.cautions ?? [])
    says.push(sentence(caution.says, undefined, caution.origin.sources, caution.origin.mark))
  if (judged && judged.facts.stickMass > limit(c.reference, 'heavy-stick')) {
    says.push(
      sentence('The heaviest stick weighs about {weight}: it wants a crane or a well-planned lift.', {
        weight: lead?.figures.stickWeight ?? badWeight()
      })
    )
  }
  return says
}

function badWeight(): never {
  throw new Error('a judged leader without a report')
}

export function askOf(lead: OptionReport | null, c: Context): Brief['ask'] {
  const { facts } = c
  const framer: Sentence[] = []
  if (lead) {
    const f = lead.figures
    framer.push(
      sentence(
        `Can you get ${lead.said} at {section}, ${lead.heartSays}, {length} long, and from logs of about {log}?`,
        {
          section: f.section,
          length: { kind: 'span', value: facts.stick, origin: { mark: 'seen', sources: [{ key: 'answers' }] } },
          log: f.logDiameter
        }
      )
    )
    framer.push(
      lead.option.seasoning === 'green'
        ? sentence('How soon after felling will you cut, and how soon after cutting will you raise?')
        : sentence('How dry are your timbers at the core, how do you measure it, and will you show me?')
    )
    framer.push(
      sentence('How deep do you house a shoulder, and do you draw-bore the pegs, for a gap of about {gap}?', {
        gap: f.shoulderGap
      })
    )
    if (lead.option.heart === 'boxed')
      framer.push(sentence('Do you pick straight-grained logs and turn the checking face up or out of sight?'))
    framer.push(sentence('May I see a frame in this wood that is three winters old?'))
  } else {
    framer.push(sentence('Nothing that your shop sheet holds passes as I have answered. What would you change first?'))
  }
  if (facts.exposure !== 'heated' && facts.exposure !== 'unheated')
    framer.push(sentence('How do you keep water out of the joints and the post feet off the wet?'))
  if (c.sheet.placeholder)
    framer.push(sentence('What are your own prices by the board foot, and what does free of heart centre add?'))
  const engineer: Sentence[] = facts.loaded
    ? [
        sentence(
          'Which snow, wind and earthquake loads does the code set here, and does snow drift or slide onto this roof?'
        ),
        sentence(
          'Which species, grade and moisture may I assume for the design, and must the timbers be graded by an agency?'
        ),
        sentence(
          facts.carries === 'truss'
            ? 'Will pegged joints carry the pull in the tie and the thrust at the rafter foot, or is steel needed?'
            : 'How much may the joinery take out of the beam, and where?'
        ),
        sentence('What holds the frame upright against wind: braces, walls or panels?')
      ]
    : [
        sentence(
          'Nothing here carries; still ask who answers for how these timbers are hung.',
          undefined,
          [PRACTICE],
          'practice'
        )
      ]
  return { framer, engineer }
}
