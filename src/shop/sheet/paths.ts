/** From a place in a sheet, as its door names it, to the field of the form and to words for a list. */

/** The field that a place in the sheet is typed in. */
export function fieldOfPath(
  path: string,
  sheet: { woods: readonly { species: string }[]; seasonings: readonly { id: string }[] }
): string {
  const [head = '', second = '', third = ''] = path.split('.')
  const names: Readonly<Record<string, string>> = {
    perBoardFoot: 'price',
    onRequest: 'request',
    freeOfHeart: 'free',
    freeOfHeartAddPercent: 'freeAdd',
    longestFt: 'longest',
    largestIn: 'largest',
    addPerBoardFoot: 'cost',
    leadWeeks: 'weeks',
    yardWeeks: 'yard'
  }
  if (head === 'woods')
    return second === ''
      ? 'woods'
      : ['wood', sheet.woods[Number(second)]?.species, names[third] ?? third].filter(Boolean).join('.')
  if (head === 'seasonings')
    return second === ''
      ? 'seasons'
      : ['season', sheet.seasonings[Number(second)]?.id, names[third] ?? third].filter(Boolean).join('.')
  if (head === 'rates') return `rate.${second}.${third === 'by' ? 'by' : 'value'}`
  if (head === 'sections') return second === 'unit' ? 'unit' : 'sizes'
  const once: Readonly<Record<string, string>> = {
    freeOfHeartAddPercent: 'freeOfHeartAdd',
    planedAddPerBoardFoot: 'planedAdd',
    wastePercent: 'waste',
    priceBandPercent: 'band',
    longAddPercent: second === 'aboveFt' ? 'longAbove' : 'longAdd',
    largeAddPercent: second === 'aboveIn' ? 'largeAbove' : 'largeAdd'
  }
  return once[head] ?? head
}

const PART_WORDS: Readonly<Record<string, string>> = {
  perBoardFoot: 'price per board foot',
  onRequest: 'on request',
  freeOfHeart: 'free of heart centre',
  freeOfHeartAddPercent: 'addition free of heart centre',
  longestFt: 'longest',
  largestIn: 'largest section',
  species: 'wood',
  addPerBoardFoot: 'addition per board foot',
  leadWeeks: 'lead time',
  yardWeeks: 'weeks in the yard',
  requestWeeks: 'weeks on request',
  joineryWeeks: 'weeks of joinery',
  planedAddPerBoardFoot: 'addition for planing',
  longAddPercent: 'addition for length',
  largeAddPercent: 'addition for size',
  wastePercent: 'waste',
  priceBandPercent: 'price band',
  placeholder: 'whether the prices are placeholders'
}

/** A place in a sheet in words: "wood 4 (red-oak), price per board foot". Text from the file is cut short. */
export function placeWords(path: string, input: unknown): string {
  const [head = '', second = '', ...rest] = path.split('.')
  const list = (input as Readonly<Record<string, unknown>> | null)?.[head]
  const one = Array.isArray(list) ? (list[Number(second)] as Readonly<Record<string, unknown>> | null) : null
  const name = one?.['species'] ?? one?.['id']
  const tail = rest.map((part) => PART_WORDS[part] ?? part).join(', ')
  const nth = /^\d+$/.test(second) ? `${Number(second) + 1}` : second
  const what = head === 'woods' ? 'wood' : head === 'seasonings' ? 'way of seasoning' : (PART_WORDS[head] ?? head)
  const named = typeof name === 'string' ? ` (${name})` : ''
  return [`${what}${nth === '' ? '' : ` ${nth}`}${named}`, tail].filter(Boolean).join(', ').slice(0, 120)
}
