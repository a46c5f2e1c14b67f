/**
 * Numbers that keep their origin. The engine computes in SI (mm, N, MPa, kg, degrees C, moisture and shares as
 * fractions); a `Quantity` adds what kind of thing it is, so that the page can say it in either unit system, and
 * where it comes from, so that every figure can be opened.
 */
import type { Mark } from './schema'

/** A reference to the bibliography: a key of `content/sources.json` and the table, clause or page. */
export interface SourceRef {
  readonly key: string
  readonly where?: string
}

/** What is measured, and the SI unit that its value is in. */
export type QuantityKind =
  | 'gap' // mm, small openings: inches and sixteenths, or mm
  | 'section' // mm x mm, value is [shorter, longer]
  | 'span' // mm: feet and inches, or m
  | 'diameter' // mm: whole inches, or mm
  | 'moisture' // fraction of oven-dry mass
  | 'percent' // fraction
  | 'areaLoad' // Pa: psf, or kN/m2
  | 'lineLoad' // N/mm: lb/ft, or kN/m
  | 'force' // N: lb, or kN
  | 'moment' // N mm: ft-lb, or kN m
  | 'stress' // MPa: psi, or MPa
  | 'mass' // kg: lb, or kg
  | 'density' // kg/m3: lb/ft3, or kg/m3
  | 'temperature' // degrees C
  | 'volume' // m3: board feet, or m3
  | 'money' // the sheet's currency
  | 'pricePerVolume' // money per m3: per board foot, or per m3
  | 'weeks' // weeks, said in weeks, months or years
  | 'years'
  | 'index' // plain number, one decimal
  | 'ratio' // plain number, two decimals
  | 'count' // whole number
  | 'angle' // degrees

export interface Quantity {
  readonly kind: QuantityKind
  readonly value: number | readonly [number, number]
  /** Spread, where the source gives one or the model carries one. */
  readonly low?: number
  readonly high?: number
  readonly origin: Origin
}

export interface Origin {
  readonly mark: Mark
  readonly sources: readonly SourceRef[]
  /** Id of `content/formulas.json`, where the number is computed. */
  readonly formula?: string
  /** The numbers that went into the formula, by the name that the formula text uses. */
  readonly inputs?: Readonly<Record<string, Quantity>>
}

/**
 * A sentence for a person. `{name}` in the text stands for `values.name`; the page sets it in the reader's units
 * and lets it be opened.
 */
export interface Sentence {
  readonly text: string
  readonly values?: Readonly<Record<string, Quantity>>
  readonly sources?: readonly SourceRef[]
  readonly mark?: Mark
}
