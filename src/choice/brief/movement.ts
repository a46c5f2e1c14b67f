/** The section "How it will move", with both cuts of the wood drawn in their logs. */
import type { Quantity, Sentence } from '../../data/quantity'
import { FOOT } from '../../data/units'
import { sectionShape } from '../../wood/log-end'
import { type Heart, logDiameterNeeded } from '../../wood/section'
import { changeBetween } from '../../wood/shrinkage'
import { swingDepth } from '../../wood/swing'
import { cornerOff, twistOf } from '../../wood/twist'
import type { Brief } from '../brief-types'
import type { ClockReport } from '../clock/types'
import { limit } from '../facts'
import { checksAcross, diffusivityFigure } from '../figures'
import type { Judged } from '../judge'
import { GRAIN_ANGLES, grainOf } from '../option-facts'
import type { Context } from '../rule'
import { bare, computed, limitQuantity, PRACTICE, quantity, sentence } from '../say'
import type { LogEnd, OptionReport } from '../types'
import { jointLines, shoulderOf } from './joints'

/** Both cuts of the leading wood from green to service, drawn larger than they move. */
export function logEnds(lead: Judged, c: Context): LogEnd[] {
  const { wood, section } = lead.facts
  const service = Math.min(c.facts.service.mean, wood.fibreSaturation)
  const strain = (total: number) =>
    Math.max(0, changeBetween(total, wood.fibreSaturation, service, wood.fibreSaturation))
  const radial = strain(wood.radial)
  const tangential = strain(wood.tangential)
  const exaggeration = 3
  return (['boxed', 'free'] as const).map((heart): LogEnd => {
    const shape = sectionShape({ heart, breadth: section[0], depth: section[1], radial, tangential, exaggeration })
    const log: Quantity = quantity(
      'diameter',
      logDiameterNeeded(heart, section[0], section[1]),
      computed(c.reference, heart === 'boxed' ? 'log-boxed' : 'log-free')
    )
    const rings = 14
    return {
      heart,
      logRadius: shape.logRadius,
      ringRadii: Array.from({ length: rings }, (_, i) => (shape.logRadius * (i + 1)) / rings),
      before: shape.before,
      after: shape.after,
      exaggeration,
      says:
        heart === 'boxed'
          ? sentence(
              'Boxed heart, from a {log} log. It cannot close round the pith: the checks on a face open up to {opening} in all, drawn here as one.',
              {
                log,
                opening: bare(checksAcross(lead.facts, section[1], c.reference))
              }
            )
          : sentence(
              'Free of heart centre, from a {log} log. It closes up slightly out of square, with no check to the pith.',
              { log }
            )
    }
  })
}

/** How far a stick of this section could turn, boxed and free of heart; nothing where no drying is left to turn it. */
function twistSays(judged: Judged, c: Context): Sentence[] {
  const { wood, section, tangentialToCome } = judged.facts
  const { reference } = c
  const length = limit(reference, 'twist-length') * FOOT
  const explained = limit(reference, 'twist-explained')
  const turned = (heart: Heart) =>
    twistOf(
      heart,
      grainOf(wood, reference),
      section,
      length,
      tangentialToCome,
      explained,
      reference.scatter.shrinkage.of
    )
  const off = (heart: Heart): Quantity => {
    const { high } = turned(heart)
    const turn = quantity('angle', (high * 180) / Math.PI, computed(reference, 'twist'))
    return quantity(
      'gap',
      cornerOff(high, section[1]),
      computed(reference, 'twist', {
        'grain at the pith': limitQuantity(reference, GRAIN_ANGLES[wood.traits.twist.level], 'angle'),
        s: quantity('percent', tangentialToCome, wood.shrinkageOrigin),
        'turn, end to end': turn
      })
    )
  }
  const boxed = off('boxed')
  if (Number(boxed.value) < 1) return []
  return [
    sentence(
      'Over {length} a boxed {section} of it could still turn up to {boxed} out of true at a corner, one free of heart {free}. That is a band, no promise: the grain of each stick decides.',
      {
        length: limitQuantity(reference, 'twist-length', 'span', FOOT),
        section: quantity('section', section, computed(reference, 'section')),
        boxed,
        free: off('free')
      }
    )
  ]
}

/** When it shows, from the drying clock. */
function whenSays({ curve: { half, most } }: ClockReport, { reference }: Context): Sentence[] {
  const time = (days: number) => quantity('weeks', days / 7, computed(reference, 'shows'))
  if (half === null) return []
  return [
    sentence(
      most === null
        ? 'It shows slowly: half of it within {half} of the raising, the last of it years later.'
        : 'Half of it shows within {half} of the raising, nine tenths within {most}.',
      { half: time(half), ...(most === null ? {} : { most: time(most) }) }
    )
  ]
}

/** What is left to shrink, what opens and what hides it. */
export function movementSection(
  report: OptionReport,
  judged: Judged,
  c: Context,
  clock: ClockReport
): Brief['movement'] {
  const f = report.figures
  const drier = judged.facts.gap > 0.4
  return {
    says: [
      drier
        ? sentence(
            'It comes at {delivered} and settles at {service}. Its {section} shrinks {face} more in depth and {breadth} in breadth, and a housed shoulder opens {gap}.',
            {
              delivered: f.moistureDelivered,
              service: f.moistureInService,
              section: f.section,
              face: f.faceShrinkage,
              breadth: f.breadthShrinkage,
              gap: f.shoulderGap
            }
          )
        : sentence(
            'It comes at {delivered} and lives at {service}: next to nothing is left to shrink, but it goes on moving with the seasons.',
            {
              delivered: f.moistureDelivered,
              service: f.moistureInService
            }
          ),
      f.checkOpening
        ? sentence(
            'With its heart inside it checks: up to {checks} on a face, all openings together. Checks along the grain seldom weaken a beam; they show.',
            { checks: f.checkOpening }
          )
        : sentence('Free of heart centre it should show only fine surface checks.', undefined, [PRACTICE], 'practice'),
      ...(drier ? whenSays(clock, c) : []),
      ...twistSays(judged, c),
      sentence(
        'Once settled, a shoulder still opens and closes by {swing} through the year: a season reaches only the outer {reach} of a big timber.',
        {
          swing: f.yearlySwing,
          reach: quantity(
            'gap',
            swingDepth(judged.facts.diffusivity),
            computed(c.reference, 'swing', { 'D, mm² a day': diffusivityFigure(judged.facts, c.facts, c.reference) })
          )
        }
      ),
      sentence(
        'Draw-bored pegs pull a joint shut and hold it there; housings a little deeper than the gap hide what opens.',
        undefined,
        [PRACTICE],
        'practice'
      )
    ],
    logEnds: logEnds(judged, c),
    joints: jointLines(judged, c),
    shoulder: shoulderOf(judged, c)
  }
}
