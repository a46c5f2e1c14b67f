/** The timbers of a truss checked one by one under every combination, the snow even and on one side. N, mm, MPa. */
import { checkPulled, checkPushed, type Pulled, type Pushed, pulledRatio, pushedRatio } from './along'
import { momentOfInertia, uniformDeflection } from './beam'
import { combinations, type Variable } from './cases'
import { type Check, check } from './check'
import { creepFactor, type Duration, loadDurationFactor } from './factors'
import type { OneSided } from './loads'
import { type Part, type PartId, partsOf, type TrussForm, type TrussLoad, type TrussShape } from './truss-forces'
import type { DesignValues, Section } from './values'

export interface TrussJob {
  readonly form: TrussForm
  readonly shape: TrussShape
  /** What lies on the roof for good, N/mm on plan, without the truss itself. */
  readonly dead: number
  /** What lies on the tie for good, N/mm, without itself. */
  readonly tieDead: number
  /** Loads on the roof and on the tie, N/mm. */
  readonly roof: readonly Variable[]
  readonly floor: readonly Variable[]
  /** Snow that lies on one side, N/mm; null where none is asked. */
  readonly oneSided: OneSided | null
  readonly wet: boolean
  readonly unseasonedOrWet: boolean
  readonly liveRatio: number
  readonly totalRatio: number
  /** The same of a tie with a floor on it. */
  readonly floorLiveRatio: number
  readonly floorTotalRatio: number
  readonly mortise: number
}

/** Own weights, N/mm: of a rafter on plan with its share of the posts and struts, of the tie, and of the straining beam. */
export interface OwnLoads {
  readonly roof: number
  readonly tie: number
  readonly straining: number
}

export interface LoadState extends TrussLoad {
  readonly duration: Duration
  readonly oneSided: boolean
}

const bare = new WeakMap<TrussJob, readonly LoadState[]>()

/** The states of load without the timbers' own weight: hundreds of sections are tried under the same ones. */
function bareStates(job: TrussJob): readonly LoadState[] {
  const known = bare.get(job) ?? statesWithout(job)
  bare.set(job, known)
  return known
}

const withOwn = ({ left, right, tie, duration, oneSided }: LoadState, own: OwnLoads): LoadState => ({
  left: left + own.roof,
  right: right + own.roof,
  tie: tie + own.tie,
  duration,
  oneSided
})

/** Every state of load of a truss. Source: asce-7, 2.4.1 and 7.6.1. */
export function loadStates(job: TrussJob, own: OwnLoads): LoadState[] {
  return bareStates(job).map((state) => withOwn(state, own))
}

function statesWithout(job: TrussJob): LoadState[] {
  const { dead } = job
  return combinations(job.roof, job.floor).flatMap((c) => {
    const tie = job.tieDead + c.share * (c.floor?.load ?? 0)
    const whole = dead + c.share * (c.roof?.load ?? 0)
    const state = (left: number, right: number, oneSided: boolean): LoadState => ({
      left,
      right,
      tie,
      duration: c.duration,
      oneSided
    })
    const even = state(whole, whole, false)
    if (c.roof?.duration !== 'snow' || !job.oneSided) return [even]
    return [even, state(dead + c.share * job.oneSided.leeward, dead + c.share * job.oneSided.windward, true)]
  })
}

/** Length of a part between its joints, mm: of a rafter over a strut, one panel. Source: derived (geometry). */
export function partLength(id: PartId, form: TrussForm, { span, pitch, queenAt }: TrussShape): number {
  const along = Math.hypot(1, pitch)
  const outer = queenAt * span
  switch (id) {
    case 'rafter':
      return (form === 'king' ? span / 2 : form === 'king-struts' ? span / 4 : outer) * along
    case 'upper-rafter':
      return (span / 2 - outer) * along
    case 'strut':
      return (span / 4) * along
    case 'king-post':
      return (span / 2) * pitch
    case 'queen-post':
      return outer * pitch
    case 'straining-beam':
      return span - 2 * outer
    case 'tie':
      return form === 'queen' ? Math.max(outer, span - 2 * outer) : span / 2
  }
}

const isRafter = (id: PartId) => id === 'rafter' || id === 'upper-rafter'

/** What a part is asked as `along.ts` takes it: pulled, or pushed. */
type Along = { readonly pulled: Pulled; readonly pushed?: never } | { readonly pulled?: never; readonly pushed: Pushed }

function alongOf(job: TrussJob, part: Part, own: OwnLoads, duration: Duration): Along {
  const length = partLength(part.id, job.form, job.shape)
  const { mortise, wet } = job
  // A straining beam bears itself besides; purlins hold rafters sideways, nothing holds the others.
  const moment = part.id === 'straining-beam' ? (own.straining * length * length) / 8 : part.moment
  if (part.push < 0 || part.id === 'tie') return { pulled: { pull: -part.push, moment, duration, mortise } }
  const sideways = isRafter(part.id) ? 0 : length
  return { pushed: { push: part.push, moment, length, sideways, duration, wet, mortise } }
}

const shearDemand = (part: Part, [b, d]: Section): number => (1.5 * part.shear) / (b * d)
const shearCapacity = ({ shear }: DesignValues, duration: Duration): number => shear * loadDurationFactor(duration)

/** Shear of what is bent, with all the load. Source: nds, 3.4. */
function shearOf(part: Part, { duration }: LoadState, section: Section, values: DesignValues): Check[] {
  if (part.shear === 0) return []
  return [
    check('shear', 'stress', shearDemand(part, section), shearCapacity(values, duration), 'nds 3.4', () => ({
      V: ['force', part.shear],
      'b × d': ['section', section],
      Fv: ['stress', values.shear],
      CD: ['ratio', loadDurationFactor(duration)]
    }))
  ]
}

/** Deflection of a rafter between its joints, across the slope, or of a tie under its floor; null for the others. Source: nds, 3.5.2. */
function sagOf(job: TrussJob, id: PartId, own: OwnLoads, section: Section, values: DesignValues) {
  const rafter = isRafter(id)
  if (!rafter && !(id === 'tie' && job.floor.length > 0)) return null
  const length = partLength(id, job.form, job.shape)
  const across = rafter ? 1 / (1 + job.shape.pitch ** 2) : 1
  const sag = (load: number) => uniformDeflection(load * across, length, values.elasticity, momentOfInertia(section))
  const most = (list: readonly Variable[], other: number) => list.reduce((m, v) => Math.max(m, v.load), other)
  const lively = (rafter ? most(job.roof, job.oneSided?.leeward ?? 0) : most(job.floor, 0)) * across
  const live = sag(lively / across)
  const dead = sag(rafter ? job.dead + own.roof : job.tieDead + own.tie)
  const liveRatio = rafter ? job.liveRatio : job.floorLiveRatio
  const totalRatio = rafter ? job.totalRatio : job.floorTotalRatio
  const creep = creepFactor(job.unseasonedOrWet)
  return { length, lively, live, dead, creep, total: creep * dead + live, liveRatio, totalRatio }
}

function sags(job: TrussJob, id: PartId, own: OwnLoads, section: Section, values: DesignValues): Check[] {
  const found = sagOf(job, id, own, section, values)
  if (!found) return []
  const { length, lively, live, dead, creep, total, liveRatio, totalRatio } = found
  const stiff = { L: ['span', length], E: ['stress', values.elasticity], 'b × d': ['section', section] } as const
  return [
    check('deflection-live', 'gap', live, length / liveRatio, 'ibc Table 1604.3', () => ({
      ...stiff,
      'w, across': ['lineLoad', lively],
      'code’s ratio': ['count', liveRatio]
    })),
    check('deflection-total', 'gap', total, length / totalRatio, 'nds 3.5.2', () => ({
      ...stiff,
      'permanent part': ['gap', dead],
      'creep factor': ['ratio', creep],
      'live part': ['gap', live],
      'code’s ratio': ['count', totalRatio]
    }))
  ]
}

/**
 * The greatest ratio of the checks of `checkPart`, without the rest: sag first, then the states from the last, which is snow.
 * @param enough once a ratio is above it, that one will do
 */
export function partRatio(
  job: TrussJob,
  id: PartId,
  own: OwnLoads,
  section: Section,
  values: DesignValues,
  enough = Number.POSITIVE_INFINITY
): number {
  const sag = sagOf(job, id, own, section, values)
  let worst = sag
    ? Math.max(sag.live / (sag.length / sag.liveRatio), sag.total / (sag.length / sag.totalRatio))
    : Number.NEGATIVE_INFINITY
  const states = bareStates(job)
  for (let i = states.length - 1; i >= 0 && worst <= enough; i--) {
    const state = withOwn(states[i] as LoadState, own)
    for (const part of partsOf(job.form, job.shape, state, id)) {
      const { pulled, pushed } = alongOf(job, part, own, state.duration)
      const strength = pulled ? pulledRatio(pulled, section, values) : pushedRatio(pushed, section, values)
      const shear = part.shear === 0 ? 0 : shearDemand(part, section) / shearCapacity(values, state.duration)
      worst = Math.max(worst, strength, shear)
      // Under an even load both sides are asked the same.
      if (!state.oneSided || worst > enough) break
    }
  }
  return worst
}

/** The checks of one part of a truss, the worst state of each kind. Source: nds, 3.5 to 3.9. */
export function checkPart(job: TrussJob, id: PartId, own: OwnLoads, section: Section, values: DesignValues): Check[] {
  const found = new Map<Check['id'], Check>()
  for (const state of loadStates(job, own)) {
    for (const part of partsOf(job.form, job.shape, state, id)) {
      const { pulled, pushed } = alongOf(job, part, own, state.duration)
      const strength = pulled ? checkPulled(pulled, section, values) : checkPushed(pushed, section, values)
      for (const next of [strength, ...shearOf(part, state, section, values)]) {
        const last = found.get(next.id)
        if (!last || next.ratio > last.ratio) found.set(next.id, next)
      }
    }
  }
  return [...found.values(), ...sags(job, id, own, section, values)]
}
