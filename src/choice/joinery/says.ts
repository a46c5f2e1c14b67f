/** The joints of a frame in words, with figures that open. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { Joint, JointId, SizeId } from '../../frame/joint'
import { computed, quantity, sentence } from '../say'

export interface JoineryLine {
  readonly id: JointId
  readonly name: string
  /** What it carries under the heaviest case. */
  readonly force: Quantity
  /** Of what it can carry; null where nothing could be checked. */
  readonly used: Quantity | null
  readonly says: Sentence
  /** True where joinery of these sizes will not carry it. */
  readonly steel: boolean
}

const NAMES: Readonly<Record<JointId, string>> = {
  heel: 'Rafter foot in the tie',
  'king-foot': 'King post hung on its pegs',
  'king-head': 'Rafters against the king post',
  'post-top': 'On top of the post',
  housed: 'Housed into a post'
}
export const jointName = (id: JointId, queen = false): string =>
  queen && id === 'king-foot' ? 'Queen post hung on its pegs' : NAMES[id]

const FORMULAS: Readonly<Record<JointId, string>> = {
  heel: 'rafter-step',
  'king-foot': 'peg-capacity',
  'king-head': 'bearing',
  'post-top': 'bearing',
  housed: 'housing-seat'
}

const DONE: Readonly<Record<JointId, string>> = {
  heel: 'A step {step} deep takes {lost} of the tie’s depth; leave {plane} of tie beyond it.',
  'king-foot': '{count} pegs of {diameter}, {pegEnd} from the tenon’s end and {pegEdge} from the tie’s lower face.',
  'king-head': 'The rafters bear on {contact} of each side; leave a good head of post above them.',
  'post-top': 'It bears on {seat}; {seatNeeded} would do.',
  housed: 'A housing {seat} deep carries it.'
}

const WHY_NOT: Readonly<Record<NonNullable<Joint['reason']>, string>> = {
  'step-too-deep': 'The push asks for a deeper step than this tie may lose: a deeper tie, or steel.',
  'tie-too-short': 'Too little tie is left beyond the step: a longer tie, or steel.',
  'tie-too-weak': 'What a step leaves of this tie is too weak: a deeper tie, or steel.',
  'tenon-too-narrow': 'No peg fits in so narrow a tenon: a wider king post, or a steel strap.',
  'tenon-full': 'The tenon has no room for the pegs that this asks for: a wider king post, or a steel strap.',
  'tenon-breaks': 'The tenon breaks before its pegs: a thicker king post, or a steel strap.',
  'timber-too-shallow': 'The tie is too shallow for the pegs to keep their distances: a deeper tie, or a steel strap.',
  'housing-too-deep': 'A housing that carries it cuts too much out of the post: a post or a corbel under it, or steel.',
  'seat-too-small': 'The seat crushes: a wider post, a bolster, or steel.',
  'face-too-small': 'The king post crushes where the rafters press: thicker timbers, or a steel plate.'
}

/** Formula that each size opens to, where it is not that of its joint. */
const SIZE_FORMULAS: Readonly<Partial<Record<SizeId, string>>> = { plane: 'step-plane', 'peg-end': 'peg-relish' }

/** Half an inch, as far as such a length is laid out at a first look. */
const LAID_OUT = 12.7

/** What must be left is rounded up, what there is down; depths of cuts stay as computed. */
export function asCut(id: SizeId, mm: number | undefined): number | undefined {
  if (mm === undefined) return undefined
  if (id === 'plane') return Math.ceil(mm / LAID_OUT) * LAID_OUT
  if (id === 'contact') return Math.floor(mm / LAID_OUT) * LAID_OUT
  return mm
}

/** One joint as a line: what it carries, how far it is used, how it is cut or why joinery will not do. */
export function joineryLine(joint: Joint, reference: Reference): JoineryLine {
  const own = (formula = FORMULAS[joint.id]) => ({ ...joint.origin, formula })
  const size = (id: SizeId): Record<string, Quantity> => {
    const mm = asCut(id, joint.sizes[id])
    const name = id.replace(/-(\w)/, (_, letter: string) => letter.toUpperCase())
    return mm === undefined ? {} : { [name]: quantity('gap', mm, own(SIZE_FORMULAS[id])) }
  }
  const values = {
    ...size('step'),
    ...size('plane'),
    ...size('peg-end'),
    ...size('peg-edge'),
    ...size('contact'),
    ...size('seat'),
    ...size('seat-needed'),
    ...(joint.lost === null ? {} : { lost: quantity('percent', joint.lost, own()) }),
    ...(joint.pegs
      ? {
          count: quantity('count', joint.pegs.count, own()),
          diameter: quantity('gap', joint.pegs.diameter, reference.joints.peg.origin)
        }
      : {})
  }
  const used = usedOf(joint)
  return {
    id: joint.id,
    name: jointName(joint.id),
    force: quantity(
      'force',
      joint.force,
      computed(reference, joint.id.startsWith('king') || joint.id === 'heel' ? 'tie-pull' : 'bearing')
    ),
    used: used === null ? null : quantity('percent', used, own()),
    says: said(joint, values),
    steel: joint.verdict === 'steel'
  }
}

/**
 * How far a joint is used. Where a step, a housing or pegs are made as large as the load asks, the check is always full: then
 * it is the size made over the most that the timber allows, or the pull over what its pegs carry.
 */
function usedOf({ id, reason, governing, pegs, force, sizes }: Joint): number | null {
  const share = (part: number | undefined, whole: number | undefined) =>
    part !== undefined && whole !== undefined && whole > 0 ? part / whole : null
  if (reason === null && id === 'heel') return share(sizes.step, sizes['step-most'])
  if (reason === null && id === 'housed') return share(sizes['seat-needed'], sizes['seat-most'])
  if (reason === null && pegs) return share(force, pegs.count * pegs.each)
  return governing?.ratio ?? null
}

/** A joint in a sentence of its own, with how far it is used. */
export function jointSays(joint: Joint, reference: Reference): Sentence {
  const { says, used } = joineryLine(joint, reference)
  if (!used) return says
  return { ...says, text: `${says.text} Used to {used}.`, values: { ...says.values, used } }
}

/** The sentence of a joint, with the figures that it names and no others. */
function said(joint: Joint, values: Readonly<Record<string, Quantity>>): Sentence {
  const done = joint.pegs?.count === 1 ? DONE[joint.id].replace('{count} pegs', 'One peg') : DONE[joint.id]
  const text = joint.reason ? WHY_NOT[joint.reason] : done
  const named = [...text.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) => {
    const value = name ? values[name] : undefined
    return name && value ? [[name, value] as const] : []
  })
  return named.length > 0 ? sentence(text, Object.fromEntries(named)) : sentence(text)
}
