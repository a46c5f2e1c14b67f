/** The joints of the leading option as lines of a table, and its housed shoulder as it is drawn. */
import type { Quantity } from '../../data/quantity'
import { INCH } from '../../data/units'
import type { Band, JointMovement } from '../../wood/joints'
import { jointsOf, partOf } from '../joints'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { computed, limitQuantity, quantity } from '../say'
import type { JointLine, Shoulder } from '../types'

/** How many times larger than it is the movement of the drawn shoulder stands, and the housing with it. */
const EXAGGERATION = 3

const PARTS = {
  post: 'half of the post',
  length: 'half of the length change',
  peg: 'post, face to pegs',
  key: 'key',
  halves: 'halves that differ',
  plate: 'half of the plate',
  rafter: 'turn of the heel cut'
} as const

const FORMULAS = { housed: 'gap', girt: 'joint-girt', scarf: 'joint-scarf', rafter: 'joint-rafter' } as const
const NAMES = {
  housed: 'Beam housed into a post',
  girt: 'Girt tenoned and draw-bored',
  scarf: 'Keyed scarf',
  rafter: 'Rafter foot on a plate'
} as const

function line(id: JointLine['id'], j: JointMovement, c: Context): JointLine {
  const gapOf = (band: Band, formula: string, inputs: Record<string, Quantity> = {}) =>
    quantity('gap', band.value, computed(c.reference, formula, inputs), {
      low: Math.min(band.low, band.value),
      high: Math.max(band.high, band.value)
    })
  const parts = j.parts.map((part) => [PARTS[part.from], gapOf(part.band, FORMULAS[id])] as const)
  return {
    id,
    name: NAMES[id],
    gap: gapOf(j.gap, FORMULAS[id], Object.fromEntries(parts)),
    drop: gapOf(j.drop, 'drop'),
    housing: quantity(
      'gap',
      j.housing,
      computed(c.reference, 'housing', {
        'widest gap': quantity('gap', j.gap.high, computed(c.reference, FORMULAS[id])),
        margin: limitQuantity(c.reference, 'housing-margin', 'gap', INCH)
      })
    )
  }
}

/** Each joint that a frame of this option may have. */
export function jointLines(judged: Judged, c: Context): JointLine[] {
  const joints = jointsOf(judged.facts, c.facts, c.reference)
  return (['housed', 'girt', 'scarf', 'rafter'] as const).flatMap((id) => {
    const j = joints[id]
    return j ? [line(id, j, c)] : []
  })
}

export function shoulderOf(judged: Judged, c: Context): Shoulder {
  const { facts } = judged
  const { housed } = jointsOf(facts, c.facts, c.reference)
  return {
    postSide: facts.section[0],
    beamDepth: facts.section[1],
    housing: housed.housing,
    postShrinks: partOf(housed, 'post').value,
    beamShrinks: partOf(housed, 'length').value,
    drop: housed.drop.value,
    exaggeration: EXAGGERATION
  }
}
