/** A rafter without a truss: on a ridge beam, or leaning on its twin. N, mm, MPa; loads on plan. */
import { checkPushed } from './along'
import { adjustedBending, momentOfInertia, netSection, sectionModulus, uniformDeflection, uniformMoment } from './beam'
import { combinations, type Variable } from './cases'
import { type Check, check, worse } from './check'
import { creepFactor, type Duration, loadDurationFactor, sizeFactor } from './factors'
import type { OneSided } from './loads'
import { trussParts } from './truss-forces'
import type { DesignValues, Section } from './values'

export interface Rafter {
  /** Wall to ridge on plan, mm. */
  readonly run: number
  readonly pitch: number
  /** What lies for good with the own weight, N/mm on plan. */
  readonly dead: number
  readonly roof: readonly Variable[]
  readonly oneSided: OneSided | null
  /** True where a ridge beam carries the upper end: then nothing thrusts. */
  readonly ridgeBeam: boolean
  readonly wet: boolean
  readonly unseasonedOrWet: boolean
  readonly liveRatio: number
  readonly totalRatio: number
  readonly mortise: number
}

interface State {
  readonly own: number
  readonly other: number
  readonly duration: Duration
}

function states(r: Rafter): State[] {
  return combinations(r.roof, []).flatMap(({ roof, duration }) => {
    const load = r.dead + (roof?.load ?? 0)
    const even = { own: load, other: load, duration }
    if (duration !== 'snow' || !r.oneSided) return [even]
    const leeward = r.dead + r.oneSided.leeward
    const windward = r.dead + r.oneSided.windward
    return [even, { own: leeward, other: windward, duration }, { own: windward, other: leeward, duration }]
  })
}

/** Push at the rafter's foot and thrust on what holds the feet together, N. Source: derived (statics of a three-hinged frame). */
export function leaning(r: Rafter, own: number, other: number): { readonly push: number; readonly thrust: number } {
  const shape = { span: 2 * r.run, pitch: r.pitch, queenAt: 0 }
  const parts = trussParts('king', shape, { left: own, right: other, tie: 0 })
  return { push: parts[0]?.push ?? 0, thrust: -(parts.find((p) => p.id === 'tie')?.push ?? 0) }
}

/** Greatest push and thrust of all states, N; both 0 on a ridge beam. Source: derived (statics). */
export function rafterThrust(r: Rafter): { readonly push: number; readonly thrust: number } {
  if (r.ridgeBeam) return { push: 0, thrust: 0 }
  const all = states(r).map((s) => leaning(r, s.own, s.other))
  return { push: Math.max(...all.map((a) => a.push)), thrust: Math.max(...all.map((a) => a.thrust)) }
}

/**
 * Bending over the run (with the push along it where there is no ridge beam), shear across the grain at the foot,
 * deflection across the slope. Planks or purlins hold it sideways. Source: nds, 3.3 to 3.5 and 3.9.2.
 */
export function checkLoneRafter(r: Rafter, section: Section, values: DesignValues): Check[] {
  const along = Math.hypot(1, r.pitch)
  const length = r.run * along
  const area = section[0] * section[1]
  const bending = states(r).map(({ own, other, duration }) => {
    const moment = uniformMoment(own, r.run)
    if (!r.ridgeBeam) {
      const { push } = leaning(r, own, other)
      return checkPushed({ ...r, push, moment, length, sideways: 0, duration }, section, values)
    }
    const net = netSection(section, r.mortise)
    const fb = moment / sectionModulus(net)
    return check('bending', 'stress', fb, adjustedBending(values, section, duration, 0), 'nds 3.3', () => ({
      L: ['span', r.run],
      w: ['lineLoad', own],
      M: ['moment', moment],
      'net b × d': ['section', net],
      Fb: ['stress', values.bending],
      CD: ['ratio', loadDurationFactor(duration)],
      CF: ['ratio', sizeFactor(section[1])]
    }))
  })
  const shear = states(r).map(({ own, duration }) =>
    check(
      'shear',
      'stress',
      (1.5 * own * r.run) / 2 / along / area,
      values.shear * loadDurationFactor(duration),
      'nds 3.4',
      () => ({
        V: ['force', (own * r.run) / 2 / along],
        'b × d': ['section', section],
        Fv: ['stress', values.shear],
        CD: ['ratio', loadDurationFactor(duration)]
      })
    )
  )
  const sag = (load: number) =>
    uniformDeflection(load / along ** 2, length, values.elasticity, momentOfInertia(section))
  const lively = r.roof.reduce((m, v) => Math.max(m, v.load), r.oneSided?.leeward ?? 0)
  const live = sag(lively)
  const dead = sag(r.dead)
  const creep = creepFactor(r.unseasonedOrWet)
  const total = creep * dead + live
  const stiff = { L: ['span', length], E: ['stress', values.elasticity], 'b × d': ['section', section] } as const
  return [
    worse(bending as [Check, ...Check[]]),
    worse(shear as [Check, ...Check[]]),
    check('deflection-live', 'gap', live, length / r.liveRatio, 'ibc Table 1604.3', () => ({
      ...stiff,
      'w, across': ['lineLoad', lively / along ** 2],
      'code’s ratio': ['count', r.liveRatio]
    })),
    check('deflection-total', 'gap', total, length / r.totalRatio, 'nds 3.5.2', () => ({
      ...stiff,
      'permanent part': ['gap', dead],
      'creep factor': ['ratio', creep],
      'live part': ['gap', live],
      'code’s ratio': ['count', r.totalRatio]
    }))
  ]
}
