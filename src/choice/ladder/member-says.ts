/** A single member in words: what was refused, what is left out, and what would make an impossible one possible. */
import type { Origin, Quantity, QuantityKind, Sentence } from '../../data/quantity'
import type { NotChecked } from '../../frame/member'
import type { MemberKind, MemberSpec, Refusal } from '../../frame/member-spec'
import type { WayOut } from '../../frame/way-out'
import { quantity, sentence } from '../say'

const OURS: Origin = { mark: 'practice', sources: [{ key: 'bentwise-scale' }] }
const WORKED_OUT: Origin = { mark: 'derived', sources: [{ key: 'nds' }, { key: 'derived' }] }

type Field = Extract<Refusal, { why: 'range' }>['field']
const FIELDS: Partial<Record<Field, readonly [name: string, kind: QuantityKind]>> = {
  span: ['The span', 'span'],
  width: ['The width carried', 'span'],
  height: ['The height of the post', 'span'],
  slope: ['The slope, rise over run,', 'ratio'],
  dead: ['The weight of the roof', 'areaLoad'],
  floorDead: ['The weight of the floor', 'areaLoad'],
  roof: ['The load on the roof', 'areaLoad'],
  floor: ['The load on the floor', 'areaLoad'],
  oneSided: ['The snow on one side', 'areaLoad'],
  unsupported: ['The distance between points held sideways', 'span'],
  seat: ['The distance of the load from the post’s axis', 'gap'],
  queenAt: ['The queen posts’ distance from the feet, over the span,', 'ratio']
}

/** Why a member is not sized, with the permitted range. */
export function refusalSays(refusal: Refusal, spec: MemberSpec): Sentence {
  if (refusal.why !== 'range')
    return sentence(
      refusal.why === 'no-sections'
        ? 'No section is left to try.'
        : 'No strength is published for this wood that a size could rest on.'
    )
  const { field, permitted } = refusal
  // A point is either off the beam or too heavy: its range ends at the span in the one case only.
  const place = field === 'points' && permitted.most === spec.span
  const [name, kind] = FIELDS[field] ?? [place ? 'The place of a load' : 'A load at a point', place ? 'span' : 'force']
  return sentence(`${name} must be from {least} to {most}.`, {
    least: quantity(kind, permitted.least, OURS),
    most: quantity(kind, permitted.most, OURS)
  })
}

export const LEFT_OUT: Readonly<Record<NotChecked, string>> = {
  joints: 'joints and pegs',
  notches: 'notched ends',
  'wind-uplift': 'wind and uplift',
  earthquake: 'earthquake',
  drift: 'drifted snow',
  vibration: 'how the floor shakes underfoot',
  'down-slope': 'the push along the slope, which planks must take',
  feet: 'what holds the rafters’ feet together',
  sway: 'swaying sideways',
  'post-bending': 'bending of the king post where only one strut pushes'
}

/** "Not in it: …", one sentence. */
export function leftOutSays(list: readonly NotChecked[]): Sentence {
  return sentence(`Preliminary, not for construction. Not in it: ${list.map((id) => LEFT_OUT[id]).join('; ')}.`)
}

const TRUSSES = {
  king: 'a king-post truss',
  'king-struts': 'a king-post truss with struts',
  queen: 'a queen-post truss'
}

/** What would make it possible: one sentence each, only what was worked out; that steel or an engineer may is said last. */
export function wayOutSays(kind: MemberKind, way: WayOut): Sentence[] {
  const says: Sentence[] = []
  const add = (text: string, value: number | null) => {
    if (value === null) return
    const values: Record<string, Quantity> = { most: quantity('span', value, WORKED_OUT) }
    says.push(sentence(text, values))
  }
  add('The largest of these sections carries as far as {most}.', way.span)
  add('The thickest post may be {most} high.', way.height)
  add('At this span it may carry a width of {most}.', kind === 'post' ? null : way.width)
  add('At this height it may carry a width of {most}.', kind === 'post' ? way.width : null)
  if (way.points)
    says.push(
      sentence('Its loads at points may be {share} of what is asked, the largest of them {most}.', {
        share: quantity('percent', way.points.share, WORKED_OUT),
        most: quantity('force', way.points.largest, WORKED_OUT)
      })
    )
  if (way.trusses.length > 0)
    says.push(sentence(`In its place would do: ${way.trusses.map((form) => TRUSSES[form]).join(', or ')}.`))
  const none = says.length === 0
  says.push(
    sentence(
      none
        ? 'Neither a shorter span, closer spacing nor a truss within the permitted ranges would do with these sections: ask an engineer about larger timbers or steel.'
        : 'Else it is work for an engineer, with larger timbers or steel.'
    )
  )
  return says
}
