/** Money and amounts from a shop sheet. Lengths in mm, volumes in m3, prices per m3. */
import type { ShopSheetContent } from '../data/schema'
import { BOARD_FOOT, FOOT, INCH } from '../data/units'

/** Price of a timber per m3: the wood's own, then what its heart, length, size and drying add. */
export function pricePerVolume(
  sheet: ShopSheetContent,
  species: string,
  timber: {
    /** Times the addition for free of heart centre is charged; 0 boxed. */ readonly freeTimes: number
    readonly seasoning: string
    readonly length: number
    readonly depth: number
  }
): number {
  const wood = sheet.woods.find((w) => w.species === species)
  if (!wood) throw new RangeError(`the shop sheet does not carry ${species}`)
  let price = wood.perBoardFoot
  const add = (percent: number) => {
    price *= 1 + percent / 100
  }
  add(sheet.freeOfHeartAddPercent * timber.freeTimes)
  if (timber.length > sheet.longAddPercent.aboveFt * FOOT) add(sheet.longAddPercent.add)
  if (timber.depth > sheet.largeAddPercent.aboveIn * INCH) add(sheet.largeAddPercent.add)
  const seasoning = sheet.seasonings.find((s) => s.id === timber.seasoning)
  return (price + (seasoning?.addPerBoardFoot ?? 0)) / BOARD_FOOT
}

export interface Bill {
  readonly timber: number
  readonly job: number
}

/** Cost of the timber and of the whole frame, by the sheet's rates. @param volume m3, waste included */
export function bill(sheet: ShopSheetContent, volume: number, perVolume: number): Bill {
  const { rates } = sheet
  const timber = volume * perVolume
  const boardFeet = volume / BOARD_FOOT
  const work = boardFeet * (rates.joineryPerBoardFoot + rates.raisingPerBoardFoot + rates.finishPerBoardFoot)
  return { timber, job: (timber + work) * (1 + (rates.engineeringPercent + rates.freightPercent) / 100) }
}
