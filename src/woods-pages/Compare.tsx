/** Two to four woods beside each other. Drawn at build too, so that the first ones stand there without script. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { type Library, LibraryProvider } from '../ui/say/library'
import { CompareSheet } from './CompareSheet'
import type { CompareWood } from './compare-data'
import { LEAST, linkOf, MOST, readLink } from './link'

export interface WoodName {
  readonly id: string
  readonly name: string
}
/** What the page outside brings: where a wood comes from, and the address. */
export interface Outside {
  readonly load: (id: string) => Promise<CompareWood>
  readonly address: (fragment: string, step: boolean) => void
  readonly follow: (open: (fragment: string) => void) => void
}
interface Props {
  readonly names: readonly WoodName[]
  readonly first: readonly CompareWood[]
  readonly outside?: Outside
}

export function Compare({ names, first, outside }: Props) {
  const [asked, ask] = useState<readonly string[]>(first.map((w) => w.id))
  const [had, have] = useState<ReadonlyMap<string, CompareWood>>(new Map(first.map((w) => [w.id, w])))
  const [failed, fail] = useState<readonly string[]>([])
  const [refused, refuse] = useState<readonly string[]>([])
  /** Asked for, or here already: not fetched again. */
  const coming = useRef(new Set<string>(asked))
  const nameOf = (id: string) => names.find((n) => n.id === id)?.name ?? id

  const fetchAll = (ids: readonly string[]) => {
    for (const id of ids) {
      if (coming.current.has(id) || !outside) continue
      coming.current.add(id)
      fail((list) => list.filter((f) => f !== id))
      outside.load(id).then(
        (wood) => have((map) => new Map(map).set(id, wood)),
        () => {
          coming.current.delete(id)
          fail((list) => [...list, id])
        }
      )
    }
  }
  const show = (ids: readonly string[]) => {
    ask(ids)
    fetchAll(ids)
  }
  useEffect(() => {
    outside?.follow((fragment) => {
      const read = readLink(fragment, new Set(names.map((n) => n.id)))
      const says = read ? linkSays(read) : fragment === '' ? [] : ['The address asks for something else than woods.']
      refuse(says)
      // Where too few are left, the woods of the example fill up.
      const filled = [...(read?.woods ?? []), ...first.map((w) => w.id)]
      const enough = read && read.woods.length >= LEAST
      show(enough ? read.woods : [...new Set(filled)].slice(0, read && read.woods.length > 0 ? LEAST : first.length))
    })
  }, [])

  const choose = (slot: number, id: string) => {
    const next = [...asked]
    if (id === '') next.splice(slot, 1)
    else next[slot] = id
    refuse([])
    show(next)
    outside?.address(linkOf(next), true)
  }
  const shown = asked.flatMap((id) => had.get(id) ?? [])
  const waits = asked.filter((id) => !had.has(id) && !failed.includes(id))

  return (
    <LibraryProvider value={together(shown)}>
      <form
        class="wood-picks needs-script no-print"
        aria-label="The woods"
        autocomplete="off"
        onSubmit={(event) => event.preventDefault()}
      >
        {Array.from({ length: Math.min(MOST, asked.length + 1) }, (_, slot) => (
          <div class="field" key={slot}>
            <label for={`wood-${slot}`}>{slot < asked.length ? `Wood ${slot + 1}` : 'One more'}</label>
            <select
              id={`wood-${slot}`}
              value={asked[slot] ?? ''}
              onChange={(event) => choose(slot, event.currentTarget.value)}
            >
              {(slot >= asked.length || asked.length > LEAST) && (
                <option value="">{slot < asked.length ? 'take it away' : 'none'}</option>
              )}
              {names.map(({ id, name }) => (
                <option
                  key={id}
                  value={id}
                  selected={asked[slot] === id}
                  disabled={asked.includes(id) && asked[slot] !== id}
                >
                  {name}
                </option>
              ))}
            </select>
          </div>
        ))}
      </form>
      <div role="status" class="wood-says">
        {refused.map((says) => (
          <p key={says} class="notice">
            {says}
          </p>
        ))}
        {waits.length > 0 && <p>Fetching {waits.map(nameOf).join(', ')} …</p>}
      </div>
      {failed.some((id) => asked.includes(id)) && (
        <div class="notice">
          <p>{failed.map(nameOf).join(', ')} did not come. What was chosen is kept.</p>
          <button type="button" class="btn btn--small" onClick={() => fetchAll(asked)}>
            Try again
          </button>
        </div>
      )}
      <CompareSheet of={shown} />
    </LibraryProvider>
  )
}

/** What a link asked for and did not get. */
function linkSays({ woods, unknown, tooMany }: NonNullable<ReturnType<typeof readLink>>): string[] {
  return [
    ...(unknown.length > 0
      ? [`The address names ${unknown.map((id) => `“${id}”`).join(', ')}, which is no wood here.`]
      : []),
    ...(tooMany ? [`The address names more than ${MOST} woods: the first ${MOST} are shown.`] : []),
    ...(woods.length < LEAST ? ['It takes two woods to compare: the example fills up.'] : [])
  ]
}

const together = (woods: readonly CompareWood[]): Library => ({
  sources: Object.assign({}, ...woods.map((w) => w.library.sources)),
  formulas: Object.assign({}, ...woods.map((w) => w.library.formulas))
})
