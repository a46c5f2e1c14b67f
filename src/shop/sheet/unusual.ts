/** Prices that are out of all proportion to the sheet's others: taken, and pointed out. */
import type { FieldWord } from './reader'

/** The limit of `content/limits.json` past which a price is pointed out. */
export const UNUSUAL_LIMIT = 'shop-price-unusual'

/** The middle of the others' prices; null where there are too few to tell. */
function middle(prices: readonly number[]): number | null {
  if (prices.length < 2) return null
  const order = [...prices].sort((a, b) => a - b)
  const half = order.length >> 1
  return order.length % 2 === 1 ? (order[half] ?? null) : ((order[half - 1] ?? 0) + (order[half] ?? 0)) / 2
}

/** @param times how many times the middle of the others is pointed out @param nameOf what a wood is called */
export function unusual(
  woods: readonly { species: string; perBoardFoot?: number | undefined }[],
  times: number,
  nameOf: (id: string) => string
): FieldWord[] {
  return woods.flatMap(({ species, perBoardFoot: own }, i) => {
    const others = middle(woods.flatMap((w, j) => (i === j || w.perBoardFoot === undefined ? [] : [w.perBoardFoot])))
    if (own === undefined || others === null || others === 0) return []
    const says =
      own === 0
        ? 'Nothing at all? It is taken as typed.'
        : own >= times * others
          ? `More than ${times} times your other woods. Per board foot, or per thousand? It is taken as typed.`
          : own <= others / times
            ? `Less than a ${times === 10 ? 'tenth' : 'small part'} of your other woods. It is taken as typed.`
            : null
    return says === null
      ? []
      : [{ field: `wood.${species}.price`, label: `${nameOf(species)}: price`, says, missing: false }]
  })
}
