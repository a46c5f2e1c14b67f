/** Every wood in a row of figures and words, each figure with how far it can be trusted. */
import type { Origin, Quantity, QuantityKind } from '../data/quantity'
import type { Reference, TraitId, Wood } from '../data/reference'
import { densityAt } from '../wood/weight'

/** Moisture at which "dry" is weighed, fraction: that of the published tables of dry wood. */
export const DRY = 0.12
/** The wood that others' strength is set beside. */
export const BASE = 'douglas-fir'

export const TRAITS = [
  ['twist', 'Twist'],
  ['checking', 'Checks'],
  ['lengthwise', 'Lengthwise'],
  ['hardToDry', 'Slow'],
  ['pitch', 'Pitch'],
  ['tannin', 'Tannin'],
  ['splitting', 'Splits'],
  ['knots', 'Knots']
] as const satisfies readonly (readonly [TraitId, string])[]

export const LEVELS = ['–', 'some', 'much'] as const

export interface ChartRow {
  readonly id: string
  readonly name: string
  readonly kind: Wood['kind']
  readonly green: Quantity
  readonly dry: Quantity
  readonly radial: Quantity
  readonly tangential: Quantity
  readonly ratio: Quantity
  readonly durability: { readonly best: number; readonly worst: number; readonly origin: Origin }
  /** Of the base wood's, percent; null where nothing is published. */
  readonly bending: Quantity | null
  readonly stiffness: Quantity | null
  /** In the order of TRAITS. */
  readonly traits: readonly (0 | 1 | 2)[]
}

/** Less sure of the two: a figure is known no better than what went into it. */
const worse = (a: Origin, b: Origin): Origin => ({
  mark: [a, b].some((o) => o.mark === 'memory') ? 'memory' : [a, b].some((o) => o.mark === 'mixed') ? 'mixed' : a.mark,
  sources: [...a.sources, ...b.sources.filter((s) => !a.sources.some((t) => t.key === s.key))]
})

const quantity = (kind: QuantityKind, value: number, origin: Origin): Quantity => ({ kind, value, origin })

function rowOf(wood: Wood, base: Wood): ChartRow {
  const beside = (part: 'rupture' | 'elasticity'): Quantity | null => {
    const own = wood.strengthGreen?.[part]
    const others = base.strengthGreen?.[part]
    if (own === undefined || others === undefined || !wood.strengthGreen || !base.strengthGreen) return null
    return quantity(
      'count',
      Math.round((100 * own) / others),
      worse(wood.strengthGreen.origin, base.strengthGreen.origin)
    )
  }
  const weighed = worse(wood.gravityOrigin, wood.greenOrigin)
  return {
    id: wood.id,
    name: wood.name,
    kind: wood.kind,
    green: quantity('density', densityAt(wood.gravityGreen, wood.greenWhole), weighed),
    dry: quantity('density', densityAt(wood.gravityGreen, DRY), wood.gravityOrigin),
    radial: quantity('percent', wood.radial, wood.shrinkageOrigin),
    tangential: quantity('percent', wood.tangential, wood.shrinkageOrigin),
    ratio: quantity('index', wood.tangential / wood.radial, wood.shrinkageOrigin),
    durability: { best: wood.durability.best, worst: wood.durability.worst, origin: wood.durability.origin },
    bending: beside('rupture'),
    stiffness: beside('elasticity'),
    traits: TRAITS.map(([id]) => wood.traits[id].level)
  }
}

type Named = Pick<Wood, 'kind' | 'name'>
export const byKindAndName = (a: Named, b: Named): number =>
  a.kind === b.kind ? a.name.localeCompare(b.name) : a.kind === 'softwood' ? -1 : 1

/** Softwoods, then hardwoods, each by name. */
export function chartRows(reference: Reference): readonly ChartRow[] {
  const base = reference.woods.get(BASE)
  if (base === undefined) throw new Error(`no wood "${BASE}"`)
  return [...reference.woods.values()].map((wood) => rowOf(wood, base)).sort(byKindAndName)
}

/** Recalled, or partly so: such figures carry a mark on paper, where nothing can be opened. */
export const recalled = ({ mark }: Origin): boolean => mark === 'memory' || mark === 'mixed'

/** All origins of a row. */
export const originsOf = (row: ChartRow): readonly Origin[] => [
  row.green.origin,
  row.dry.origin,
  row.radial.origin,
  row.durability.origin,
  ...(row.bending ? [row.bending.origin] : []),
  ...(row.stiffness ? [row.stiffness.origin] : [])
]
