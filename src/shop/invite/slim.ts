/** What an invite can leave out to become shorter, and by how much; and what lengths of link are good for. */
import type { ShopSheetContent } from '../../data/shop-schema'
import { encodeInvite } from '../link'
import type { Invite } from './door'
import { SIZES_2 } from './tables'

/** Lengths of a whole link, characters. Practice, from what programs are known to do; no standard sets them. */
export const LINK_LENGTH = {
  /** Up to here every messenger and mail program that we know of leaves a link whole. */
  message: 2000,
  /** Beyond this some browsers and mail programs cut or refuse it. */
  browser: 8000
} as const

interface Part {
  readonly id: string
  readonly label: string
  /** What the client then misses. */
  readonly says: string
  readonly from: (sheet: ShopSheetContent) => ShopSheetContent
}

const without = <K extends keyof ShopSheetContent>(sheet: ShopSheetContent, key: K): ShopSheetContent => {
  const { [key]: _left, ...rest } = sheet
  return rest as ShopSheetContent
}

/** In the order in which they are least missed. Each leaves a sheet that is still sound. */
export const PARTS: readonly Part[] = [
  {
    id: 'wood-notes',
    label: 'Notes on single woods',
    says: 'Prices and everything else of each wood stay.',
    from: (sheet) => ({ ...sheet, woods: sheet.woods.map(({ note: _note, ...wood }) => wood) })
  },
  {
    id: 'note',
    label: 'The shop’s note',
    says: 'The client does not read it.',
    from: (sheet) => without(sheet, 'note')
  },
  {
    id: 'cautions',
    label: 'The shop’s own cautions',
    says: 'They are not printed with the brief.',
    from: (sheet) => without(sheet, 'cautions')
  },
  {
    id: 'request',
    label: 'Woods on request',
    says: 'The brief does not weigh them.',
    from: (sheet) => {
      const kept = sheet.woods.filter((wood) => wood.onRequest !== true)
      return kept.length === 0 ? sheet : { ...sheet, woods: kept }
    }
  },
  {
    id: 'sizes',
    label: 'Your own series of sizes',
    says: 'A common series, 6 × 6 to 16 × 20 in, stands in: the brief may name sizes that you do not saw.',
    from: (sheet) => ({ ...sheet, sections: { unit: 'in', sizes: SIZES_2.map((size) => [...size]) } })
  }
]

/** The sheet without the named parts. */
export const slimmed = (sheet: ShopSheetContent, leave: readonly string[]): ShopSheetContent =>
  PARTS.reduce((rest, part) => (leave.includes(part.id) ? part.from(rest) : rest), sheet)

export interface Saving {
  readonly id: string
  readonly label: string
  readonly says: string
  /** Characters that the link loses without it, beyond what is left out already; or lost by its being left out. */
  readonly saves: number
  readonly left: boolean
}

/** Each part that would make a difference, with what it saves. */
export function savings(invite: Invite, leave: readonly string[]): Saving[] {
  const length = (left: readonly string[]) => encodeInvite({ ...invite, sheet: slimmed(invite.sheet, left) }).length
  return PARTS.map(({ id, label, says }) => {
    const others = leave.filter((x) => x !== id)
    return { id, label, says, saves: length(others) - length([...others, id]), left: leave.includes(id) }
  }).filter((part) => part.saves > 0 || part.left)
}
