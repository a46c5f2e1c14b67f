/** What the figures of the size ladder open to: formula, what went into it, clause. */
import type { Origin, Quantity } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { FOOT } from '../../data/units'
import type { Check } from '../../frame/check'
import type { Joint } from '../../frame/joint'
import type { SizedMember } from '../../frame/member-parts'
import { isTruss, type MemberSpec } from '../../frame/member-spec'
import type { DesignValues, Section } from '../../frame/values'
import { jointSays } from '../joinery/says'
import { ANSWERED, computed, limitQuantity, quantity } from '../say'
import type { LadderJob } from './types'

const STATICS: Origin = { mark: 'derived', sources: [{ key: 'derived' }] }
/** Letters of design values as the table prints them. */
const PRINTED = new Set(['Fb', 'Ft', 'Fv', 'Fc', 'E'])

/** A check's formula with the numbers that it was worked out from. */
export function checkOrigin(check: Check, values: DesignValues | null, reference: Reference): Origin {
  const inputs = Object.entries(check.from?.() ?? {}).map(([name, [kind, value]]) => [
    name,
    quantity(kind, value, PRINTED.has(name) && values ? values.origin : STATICS)
  ])
  return computed(reference, check.id, Object.fromEntries(inputs))
}

/** The loads of a job on its timbers: what forces and reactions were worked out from. */
export function loadInputs(job: LadderJob, spec: MemberSpec): Record<string, Quantity> {
  const most = (of: 'roof' | 'floor') => spec[of].reduce((m, v) => Math.max(m, v.load), 0)
  const area = (value: number) => quantity('areaLoad', value, STATICS)
  const all: Record<string, Quantity | null> = {
    span: quantity('span', spec.span, ANSWERED),
    'width carried': quantity('span', spec.width, ANSWERED),
    'rise over run': spec.slope > 0 ? quantity('ratio', spec.slope, ANSWERED) : null,
    'roof, up the slope': spec.dead > 0 ? area(spec.dead) : null,
    'snow or people, on plan': most('roof') > 0 ? area(most('roof')) : null,
    floor: spec.floorDead > 0 ? area(spec.floorDead) : null,
    'on the floor': most('floor') > 0 ? area(most('floor')) : null,
    'leeward, where one side has it': spec.oneSided ? area(spec.oneSided.leeward) : null,
    'windward, where one side has it': spec.oneSided ? area(spec.oneSided.windward) : null,
    'wood with its water': quantity('density', spec.density, STATICS)
  }
  for (const [i, { at, load }] of job.points.entries()) {
    all[`load ${i + 1}`] = quantity('force', load, ANSWERED)
    all[`load ${i + 1}, from one end`] = quantity('span', at, ANSWERED)
  }
  return Object.fromEntries(Object.entries(all).filter((e): e is [string, Quantity] => e[1] !== null))
}

/** The length of a stick beyond what it spans: both ends, and a rafter's eave. */
export function lengthOf(part: SizedMember, job: LadderJob, spec: MemberSpec, reference: Reference): Quantity {
  const raft = part.id === 'rafter' || part.id === 'upper-rafter'
  return quantity(
    'span',
    part.length,
    computed(reference, job.kind === 'post' ? 'post-length' : 'stick-length', {
      ...(job.kind === 'post' ? { height: quantity('span', spec.height, ANSWERED) } : {}),
      ...(job.kind === 'post' ? {} : { span: quantity('span', spec.span, ANSWERED) }),
      ...(raft || isTruss(job.kind) ? { 'rise over run': quantity('ratio', spec.slope, ANSWERED) } : {}),
      ...(part.id === 'rafter' ? { eave: limitQuantity(reference, 'eave', 'span', FOOT) } : {}),
      ...(job.kind === 'post' ? {} : { 'for both ends': limitQuantity(reference, 'end-allowance', 'span', FOOT) })
    })
  )
}

/** What one stick weighs, kg. */
export function weightOf(part: SizedMember, mass: number, spec: MemberSpec, reference: Reference): Quantity {
  const section: Section = part.sized.section ?? [0, 0]
  return quantity(
    'mass',
    mass,
    computed(reference, 'weight', {
      'wood with its water': quantity('density', spec.density, STATICS),
      'b × d': quantity('section', section, STATICS),
      length: quantity('span', part.length, STATICS)
    })
  )
}

/** A joint's sentence whose figures tell what the joint carries and what its hardest check asks and gives. */
export function jointOpens(joint: Joint, reference: Reference) {
  const says = jointSays(joint, reference)
  const { governing, force } = joint
  const inputs = {
    'what it carries': quantity('force', force, STATICS),
    ...(governing
      ? {
          asked: quantity(governing.kind, governing.demand, STATICS),
          given: quantity(governing.kind, governing.capacity, STATICS)
        }
      : {})
  }
  if (!says.values) return says
  const values = Object.entries(says.values).map(([name, q]) => [name, { ...q, origin: { ...q.origin, inputs } }])
  return { ...says, values: Object.fromEntries(values) as Record<string, Quantity> }
}
