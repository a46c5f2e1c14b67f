/** The numbers of every option of a sheet, kept from one way of the job to the next where nothing that they hang on differs. */
import type { Reference, Wood } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Section } from '../frame/values'
import type { Facts } from './facts'
import { availableOf, canBeSawn, type Frame, frameOf, seriesOf } from './frame-for'
import { type OptionBasis, optionBasis, type Stocked, stockOf } from './option-basis'
import { type OptionFacts, optionFacts } from './option-facts'
import { type PieceFacts, pieceFacts } from './piece-facts'
import type { Heart } from './types'

/** All that a frame's size hangs on, besides the wood. */
const frameSignature = (f: Facts): string =>
  [
    f.loaded,
    f.carries,
    f.truss,
    f.span,
    f.spacing,
    f.slope,
    f.variable.map((v) => `${v.load}${v.duration}`),
    f.groundSnow,
    f.dead.id,
    f.postHeight,
    f.size,
    f.depthLimit,
    f.joints === 'tight',
    f.wet
  ].join()

/** What an option's numbers hang on besides its frame: where it stands, how many, how long, and by when. */
const optionSignature = (f: Facts): string =>
  [f.stick, f.count, f.standsWeeks, f.felledMonth, f.place.id, f.service.months, f.service.temperatureC].join()

type Frames = Map<Wood, Partial<Record<`${Heart}-${'wet' | 'dry'}`, Frame>>>
interface Kept {
  readonly stock: readonly Stocked[]
  /** The frames of one signature, by wood, heart and dryness. */
  readonly frames: Map<string, Frames>
  readonly options: Map<string, readonly OptionFacts[]>
}

/**
 * What was worked out before: two ways of a job that differ only in taste share every number. Kept beside the reference and the
 * sheet that it came from, which are never changed in place; nothing can be told from outside but the time saved.
 */
const kept = new WeakMap<Reference, WeakMap<ShopSheetContent, Kept>>()
const MOST = 40

function keptFor(reference: Reference, sheet: ShopSheetContent): Kept {
  const own = kept.get(reference) ?? new WeakMap<ShopSheetContent, Kept>()
  kept.set(reference, own)
  const known = own.get(sheet) ?? { stock: stockOf(sheet, reference), frames: new Map(), options: new Map() }
  own.set(sheet, known)
  return known
}

/** Keep one more, and let go of what was longest not asked for. */
function keep<T>(map: Map<string, T>, key: string, value: T): void {
  if (map.size >= MOST) map.delete(map.keys().next().value as string)
  map.set(key, value)
}

/** What is kept under a key, which thereby stays longest. */
function recall<T>(map: Map<string, T>, key: string): T | undefined {
  const value = map.get(key)
  if (value !== undefined) {
    map.delete(key)
    map.set(key, value)
  }
  return value
}

/**
 * Whether the frame of a wood free of heart centre is that of the boxed one: sections are tried in one order, and up to the
 * largest that was taken every one that can be sawn boxed can be sawn free too, so the search would go the same way.
 */
function sharedWith(boxed: Frame, series: readonly Section[], sheet: ShopSheetContent, wood: Wood): boolean {
  if (!boxed.passes) return false
  const available = availableOf(sheet, wood)
  const area = ([b, d]: Section) => b * d
  const most = boxed.members.reduce((m, { sized }) => Math.max(m, sized.section ? area(sized.section) : 0), 0)
  return series.every((s) => area(s) > most || !canBeSawn(s, 'boxed', available) || canBeSawn(s, 'free', available))
}

/** Every option before its drying and price; the frame is sized once a wood, heart and dryness, and shared. */
function bases(
  stock: readonly Stocked[],
  facts: Facts,
  sheet: ShopSheetContent,
  reference: Reference,
  frames: Frames
): readonly OptionBasis[] {
  const series = seriesOf(sheet)
  const frameFor = (wood: Wood, heart: Heart, unseasoned: boolean): Frame => {
    const own = frames.get(wood) ?? {}
    frames.set(wood, own)
    const key = `${heart}-${unseasoned ? 'wet' : 'dry'}` as const
    let frame = own[key]
    if (!frame) {
      const boxed = heart === 'free' && facts.loaded && !facts.size ? frameFor(wood, 'boxed', unseasoned) : null
      frame =
        boxed && sharedWith(boxed, series, sheet, wood)
          ? boxed
          : frameOf(facts, reference, sheet, wood, heart, unseasoned, series)
      own[key] = frame
    }
    return frame
  }
  return stock.map((s) => optionBasis(s, frameFor(s.wood, s.option.heart, s.unseasoned)))
}

/** Works out the rest of an option; what options of one wood, heart and frame share is worked out once. */
function finisher(facts: Facts, sheet: ShopSheetContent, reference: Reference): (basis: OptionBasis) => OptionFacts {
  const pieces = new Map<Frame, Partial<Record<Heart, PieceFacts>>>()
  return (basis) => {
    const { heart } = basis.option
    const own = pieces.get(basis.frame) ?? {}
    pieces.set(basis.frame, own)
    own[heart] ??= pieceFacts(basis, facts, reference, sheet)
    return optionFacts(basis, own[heart], facts, reference, sheet)
  }
}

/** The numbers of every option, kept for the next way of the job. */
export function workOut(facts: Facts, sheet: ShopSheetContent, reference: Reference): readonly OptionFacts[] {
  const { stock, frames, options } = keptFor(reference, sheet)
  const signature = frameSignature(facts)
  const whole = `${signature} ${optionSignature(facts)}`
  const known = recall(options, whole)
  if (known) return known
  const own: Frames = recall(frames, signature) ?? new Map()
  if (own.size === 0) keep(frames, signature, own)
  const all = bases(stock, facts, sheet, reference, own).map(finisher(facts, sheet, reference))
  keep(options, whole, all)
  return all
}

export interface Lazily {
  readonly bases: readonly OptionBasis[]
  /** The rest of one of them. */
  readonly full: (basis: OptionBasis) => OptionFacts
}

/** The same, each option only as far as it is asked for: what was kept is used, and nothing more is kept. */
export function workOutLazily(facts: Facts, sheet: ShopSheetContent, reference: Reference): Lazily {
  const { stock, frames, options } = keptFor(reference, sheet)
  const signature = frameSignature(facts)
  const known = options.get(`${signature} ${optionSignature(facts)}`)
  // What was kept is whole already.
  if (known) return { bases: known, full: (basis) => basis as OptionFacts }
  const found = bases(stock, facts, sheet, reference, frames.get(signature) ?? new Map())
  return { bases: found, full: finisher(facts, sheet, reference) }
}
