/** The numbers of every option of a sheet, kept from one way of the job to the next where nothing that they hang on differs. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Facts } from './facts'
import { type Frame, frameOf, seriesOf } from './frame-for'
import { type OptionFacts, optionFacts } from './option-facts'
import { optionsOf } from './options'

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

interface Kept {
  readonly frames: Map<string, Frame>
  readonly options: Map<string, readonly OptionFacts[]>
}

/**
 * What was worked out before: two ways of a job that differ only in taste share every number. Kept beside the reference and the
 * sheet that it came from, which are never changed in place; nothing can be told from outside but the time saved.
 */
const kept = new WeakMap<Reference, WeakMap<ShopSheetContent, Kept>>()
const MOST_FRAMES = 2000
const MOST_LISTS = 40

function keptFor(reference: Reference, sheet: ShopSheetContent): Kept {
  const own = kept.get(reference) ?? new WeakMap<ShopSheetContent, Kept>()
  kept.set(reference, own)
  const known = own.get(sheet) ?? { frames: new Map(), options: new Map() }
  own.set(sheet, known)
  return known
}

/** Keep one more, and let the oldest go. */
function keep<T>(map: Map<string, T>, key: string, value: T, most: number): void {
  const [oldest] = map.keys()
  if (map.size >= most && oldest !== undefined) map.delete(oldest)
  map.set(key, value)
}

/** The numbers of every option; the frame is sized once a wood, heart and dryness, and shared. */
export function workOut(facts: Facts, sheet: ShopSheetContent, reference: Reference): readonly OptionFacts[] {
  const { frames, options } = keptFor(reference, sheet)
  const signature = frameSignature(facts)
  const whole = `${signature} ${optionSignature(facts)}`
  const known = options.get(whole)
  if (known) return known
  const series = seriesOf(sheet)
  const all = optionsOf(sheet, reference).map((option) => {
    const unseasoned = option.seasoning === 'green' || option.seasoning === 'air'
    const key = `${option.species}/${option.heart}/${unseasoned}/${signature}`
    let frame = frames.get(key)
    if (!frame) {
      const wood = reference.woods.get(option.species)
      if (!wood) throw new Error(`no wood "${option.species}"`)
      frame = frameOf(facts, reference, sheet, wood, option.heart, unseasoned, series)
      keep(frames, key, frame, MOST_FRAMES)
    }
    return optionFacts(option, facts, reference, sheet, frame)
  })
  keep(options, whole, all, MOST_LISTS)
  return all
}
