/** Finding a place by what is typed: beginnings of words first, then near misses, then the places of the state. */
import type { PlaceName } from './field-props'

const STATES =
  'AK Alaska,AL Alabama,AR Arkansas,AZ Arizona,CA California,CO Colorado,CT Connecticut,DC District of Columbia,DE Delaware,FL Florida,GA Georgia,HI Hawaii,IA Iowa,ID Idaho,IL Illinois,IN Indiana,KS Kansas,KY Kentucky,LA Louisiana,MA Massachusetts,MD Maryland,ME Maine,MI Michigan,MN Minnesota,MO Missouri,MS Mississippi,MT Montana,NC North Carolina,ND North Dakota,NE Nebraska,NH New Hampshire,NJ New Jersey,NM New Mexico,NV Nevada,NY New York,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VA Virginia,VT Vermont,WA Washington,WI Wisconsin,WV West Virginia,WY Wyoming'
    .split(',')
    .map((entry) => ({ code: entry.slice(0, 2), name: entry.slice(3) }))

const fold = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()

const stateOf = (place: PlaceName): string => place.name.slice(-2)

function haystack(place: PlaceName): string {
  const state = STATES.find((s) => s.code === stateOf(place))
  return ` ${fold(place.name)} ${fold(state?.name ?? '')}`
}

/** Places whose every typed word begins a word of the name or the state. */
export function findPlaces(typed: string, places: readonly PlaceName[], limit = 8): readonly PlaceName[] {
  const words = fold(typed).split(' ').filter(Boolean)
  if (words.length === 0) return []
  const first = words[0] ?? ''
  return places
    .filter((place) => words.every((word) => haystack(place).includes(` ${word}`)))
    .sort((a, b) => Number(fold(b.name).startsWith(first)) - Number(fold(a.name).startsWith(first)))
    .slice(0, limit)
}

/** The typed text names exactly this place. */
export function exactPlace(typed: string, places: readonly PlaceName[]): PlaceName | undefined {
  const wanted = fold(typed)
  const same = places.filter((place) => fold(place.name) === wanted)
  if (same.length === 1) return same[0]
  const town = places.filter((place) => fold(place.name.slice(0, -2)) === wanted)
  return town.length === 1 ? town[0] : undefined
}

const pairs = (text: string): string[] =>
  Array.from({ length: Math.max(0, text.length - 1) }, (_, i) => text.slice(i, i + 2))

/** Share of letter pairs in common, 0 to 1. */
function likeness(a: string, b: string): number {
  const of = pairs(a)
  const rest = pairs(b)
  const total = of.length + rest.length
  let shared = 0
  for (const pair of of) {
    const index = rest.indexOf(pair)
    if (index < 0) continue
    rest.splice(index, 1)
    shared++
  }
  return total === 0 ? 0 : (2 * shared) / total
}

/** The state that the typed text ends with, by name or by its two letters. */
function stateTyped(typed: string): string | undefined {
  const text = fold(typed)
  return STATES.find(
    (s) => text === fold(s.name) || text.endsWith(` ${s.code.toLowerCase()}`) || text.endsWith(` ${fold(s.name)}`)
  )?.code
}

/** For a name that is not in the list: the places of its state if one was typed, else the names spelled most like it. */
export function nearPlaces(typed: string, places: readonly PlaceName[], limit = 6): readonly PlaceName[] {
  const text = fold(typed.slice(0, 80))
  const state = stateTyped(typed)
  const among = state === undefined ? places : places.filter((place) => stateOf(place) === state)
  return among
    .map((place) => ({
      place,
      score: likeness(text, fold(state === undefined ? place.name.slice(0, -2) : place.name))
    }))
    .filter(({ score }) => state !== undefined || score > 0.35)
    .sort((a, b) => b.score - a.score)
    .slice(0, limit)
    .map(({ place }) => place)
}
