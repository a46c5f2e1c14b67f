/** How the joints of an option are set out: pegs with their distances, steps, seats and bearings, by name. */
import type { Quantity } from '../../data/quantity'
import type { Joint, SizeId } from '../../frame/joint'
import { stickName } from '../cut-list'
import type { SetOut } from '../detail-types'
import { joineryOf } from '../joinery/joinery'
import { asCut, jointName, jointSays } from '../joinery/says'
import type { OptionFacts } from '../option-facts'
import type { Context } from '../rule'
import { computed, lean, quantity, sentence } from '../say'

/** In the order in which they are laid out. What only tells how far a joint could go is left to the checks. */
const LABELS: readonly (readonly [SizeId, string])[] = [
  ['tenon-length', 'Tenon, length'],
  ['peg-end', 'Pegs to the tenon’s end'],
  ['peg-edge', 'Pegs to the loaded edge'],
  ['peg-side', 'Pegs to the tenon’s side'],
  ['peg-spacing', 'Pegs, centre to centre'],
  ['draw-bore', 'Draw-bore'],
  ['step', 'Step into the tie'],
  ['step-most', 'Deepest step allowed'],
  ['plane', 'Tie beyond the step'],
  ['contact', 'Bearing on each side'],
  ['seat', 'Seat'],
  ['seat-needed', 'Seat needed'],
  ['seat-most', 'Deepest housing allowed']
]

function setOutOf(joint: Joint, c: Context): SetOut {
  const { origin, sizes, pegs } = joint
  const from = { mark: origin.mark, sources: origin.sources }
  const made: { label: string; value: Quantity }[] = []
  if (pegs) {
    made.push({ label: 'Pegs', value: quantity('count', pegs.count, computed(c.reference, 'peg-capacity')) })
    made.push({ label: 'Pegs, diameter', value: quantity('gap', pegs.diameter, c.reference.joints.peg.origin) })
  }
  for (const [id, label] of LABELS) {
    const mm = asCut(id, sizes[id])
    // One peg has no neighbour to keep from.
    if (mm !== undefined && mm > 0 && !(id === 'peg-spacing' && pegs?.count === 1))
      made.push({ label, value: quantity('gap', mm, from) })
  }
  return { name: jointName(joint.id), sizes: made, says: lean(jointSays(joint, c.reference)) }
}

/** Every joint that was sized, and the bearing that a timber across the grain needs. */
export function setOutLines(o: OptionFacts, c: Context): SetOut[] {
  const joints = joineryOf(o, c).map((joint) => setOutOf(joint, c))
  const bearings = o.frame.members.flatMap((m): SetOut[] =>
    m.bearing === null
      ? []
      : [
          {
            name: `${stickName(m.id)} on what carries it`,
            sizes: [
              { label: 'Bearing, each end', value: quantity('gap', m.bearing, computed(c.reference, 'bearing')) }
            ],
            says: sentence('Clear of pegs and mortises.')
          }
        ]
  )
  return [...joints, ...bearings]
}
