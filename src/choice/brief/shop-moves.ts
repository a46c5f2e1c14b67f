/** What every stick of an option does from delivery to where it lives: across both faces, in checks, in twist. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Band } from '../../wood/joints'
import { cornerOff, twistOf } from '../../wood/twist'
import { stickName } from '../cut-list'
import type { MoveLine } from '../detail-types'
import { limit } from '../facts'
import { checksAcross, deliveredFigure, serviceMoistureFigure } from '../figures'
import { GRAIN_ANGLES, grainOf, mix, type OptionFacts } from '../option-facts'
import { sharesOf } from '../piece-facts'
import type { Context } from '../rule'
import { bare, computed, limitQuantity, PRACTICE, quantity, sentence } from '../say'
import type { Stick } from '../sticks'

/** A strain over a side, as a length and as a share, with their range. */
function across(side: number, share: number, o: OptionFacts, c: Context): { by: Quantity; part: Quantity } {
  const strain = mix(o.radial, o.tangential, share)
  const spread = ({ value, low, high }: Band, times: number) => ({
    low: Math.min(low, value) * times,
    high: Math.max(high, value) * times
  })
  const origin = computed(c.reference, 'face', {
    k: quantity('ratio', share, computed(c.reference, 'face-share')),
    'M on delivery': deliveredFigure(o, c.facts, c.reference),
    'M in service': serviceMoistureFigure(c.facts, c.reference)
  })
  return {
    by: quantity('gap', strain.value * side, origin, spread(strain, side)),
    part: quantity('percent', strain.value, origin, spread(strain, 1))
  }
}

function lineOf(stick: Stick, o: OptionFacts, c: Context): MoveLine {
  const { reference } = c
  const { heart } = o.option
  const [b, d] = stick.section
  const shares = sharesOf(heart, stick.section)
  const breadth = across(b, shares.breadth, o, c)
  const depth = across(d, shares.depth, o, c)
  const turn = twistOf(
    heart,
    grainOf(o.wood, reference),
    stick.section,
    stick.length,
    o.tangentialToCome,
    limit(reference, 'twist-explained'),
    reference.scatter.shrinkage.of
  )
  const off = (angle: number) => cornerOff(Math.max(0, angle), d)
  return {
    id: stick.id,
    name: stickName(stick.id),
    breadth: breadth.by,
    breadthShare: breadth.part,
    depth: depth.by,
    depthShare: depth.part,
    checks: heart === 'boxed' ? bare(checksAcross(o, d, reference)) : null,
    twist: quantity(
      'gap',
      off(turn.value),
      computed(reference, 'twist', {
        'grain at the pith': limitQuantity(reference, GRAIN_ANGLES[o.wood.traits.twist.level], 'angle'),
        s: quantity('percent', o.tangentialToCome, o.wood.shrinkageOrigin)
      }),
      { low: off(turn.low), high: off(turn.high) }
    )
  }
}

export const moveLines = (o: OptionFacts, c: Context): MoveLine[] => o.sticks.map((stick) => lineOf(stick, o, c))

export function movesSay(o: OptionFacts, c: Context): Sentence[] {
  const says = [
    sentence(
      'From {delivered} on delivery to {service} in place, the range by the seasons there and by how dry it comes. All sticks are taken to come as dry as the main timber; thinner ones come drier.',
      { delivered: deliveredFigure(o, c.facts, c.reference), service: serviceMoistureFigure(c.facts, c.reference) }
    )
  ]
  says.push(
    o.option.heart === 'boxed'
      ? sentence(
          'Checks: boxed heart always checks, most on the face nearest the pith. The figure is all the openings across one face together, from green to its driest, an upper bound.'
        )
      : sentence(
          'Checks: free of heart centre it should show only fine surface checks.',
          undefined,
          [PRACTICE],
          'practice'
        )
  )
  return says
}
