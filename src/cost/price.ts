/** Money and amounts from a shop sheet. Lengths in mm, volumes in m3, prices per m3. */
import { type ShopSheetContent, WORK, type Work } from '../data/shop-schema'
import { BOARD_FOOT, FOOT, INCH } from '../data/units'

/** What a timber costs per m3, added up: the wood's own price, then what its heart, length, size, planing and drying add. */
export interface PriceParts {
  readonly own: number
  readonly free: number
  readonly long: number
  readonly large: number
  readonly planed: number
  readonly dried: number
  readonly total: number
}

/** The wood's own price, then what is added to it, per m3. @throws RangeError where the sheet does not carry the wood */
export function priceParts(
  sheet: ShopSheetContent,
  species: string,
  timber: {
    /** Times the addition for free of heart centre is charged; 0 boxed. */ readonly freeTimes: number
    readonly seasoning: string
    readonly length: number
    readonly depth: number
  }
): PriceParts {
  const wood = sheet.woods.find((w) => w.species === species)
  if (!wood) throw new RangeError(`the shop sheet does not carry ${species}`)
  const own = wood.perBoardFoot / BOARD_FOOT
  let price = own
  const add = (percent: number) => {
    const by = (price * percent) / 100
    price += by
    return by
  }
  const free = add((wood.freeOfHeartAddPercent ?? sheet.freeOfHeartAddPercent) * timber.freeTimes)
  const long = timber.length > sheet.longAddPercent.aboveFt * FOOT ? add(sheet.longAddPercent.add) : 0
  const large = timber.depth > sheet.largeAddPercent.aboveIn * INCH ? add(sheet.largeAddPercent.add) : 0
  const planed = sheet.surface === 'planed' ? (sheet.planedAddPerBoardFoot ?? 0) / BOARD_FOOT : 0
  const dried = (sheet.seasonings.find((s) => s.id === timber.seasoning)?.addPerBoardFoot ?? 0) / BOARD_FOOT
  return { own, free, long, large, planed, dried, total: price + planed + dried }
}

export interface Bill {
  readonly timber: number
  /** Each part of the work beside the timber, in the sheet's order; one that the sheet leaves out is not there. */
  readonly work: Readonly<Partial<Record<Work, number>>>
  readonly job: number
  /** How far a quote may come out from it, by the sheet's own band, a fraction of every sum. */
  readonly band: number
  readonly low: number
  readonly high: number
}

/**
 * Cost of the timber and of the whole frame, by the sheet's rates. Shares of the frame are taken of timber and all work
 * that is not itself such a share. @param volume m3, waste included @param perVolume money per m3
 */
export function bill(sheet: ShopSheetContent, volume: number, perVolume: number): Bill {
  const timber = volume * perVolume
  const boardFeet = volume / BOARD_FOOT
  const work: Partial<Record<Work, number>> = {}
  let sum = timber
  for (const part of WORK) {
    const charge = sheet.rates[part]
    if (!charge || charge.by === 'frame-percent') continue
    const by = { 'board-foot': boardFeet, 'timber-percent': timber / 100, sum: 1 }[charge.by]
    work[part] = charge.value * by
    sum += charge.value * by
  }
  let job = sum
  for (const part of WORK) {
    const charge = sheet.rates[part]
    if (charge?.by !== 'frame-percent') continue
    work[part] = (sum * charge.value) / 100
    job += (sum * charge.value) / 100
  }
  const band = sheet.priceBandPercent / 100
  return { timber, work, job, band, low: job * (1 - band), high: job * (1 + band) }
}
