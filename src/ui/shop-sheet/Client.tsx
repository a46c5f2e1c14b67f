/** What a client would see of this sheet, on an invented job: worked by the engine once this part comes into view. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Engine } from '../engine'
import { inSlices } from '../in-slices'
import { useSheet } from './use-sheet'

type View = typeof import('./ClientView')
type Shown =
  | { readonly state: 'waiting' }
  | { readonly state: 'working' }
  | { readonly state: 'failed' }
  | {
      readonly state: 'brief'
      readonly view: View
      readonly brief: Brief
      readonly engine: Engine
      readonly sheet: ShopSheetContent
    }

/** Long enough that a price is typed to its end before all woods are judged again. */
const PAUSE = 500

/** Everything that draws a brief comes only now. */
async function work(sheet: ShopSheetContent, answers: Parameters<Engine['makeBrief']>[0]): Promise<Shown> {
  const [{ loadEngine }, view] = await Promise.all([import('../engine'), import('./ClientView')])
  const engine = await loadEngine(sheet)
  return { state: 'brief', view, engine, sheet, brief: await inSlices(engine.makeBrief(answers)) }
}

export function Client() {
  const { given, read } = useSheet()
  const { sheet } = read
  const [shown, show] = useState<Shown>({ state: 'waiting' })
  const [seen, see] = useState(false)
  const [job, choose] = useState(0)
  const [tries, again] = useState(0)
  const place = useRef<HTMLElement>(null)
  const example = given.examples?.[job]

  useEffect(() => {
    const target = place.current
    if (target === null) return
    const watch = new IntersectionObserver((entries) => entries.some((entry) => entry.isIntersecting) && see(true))
    watch.observe(target)
    return () => watch.disconnect()
  }, [])

  useEffect(() => {
    if (!seen || sheet === null || example === undefined) return
    let mine = true
    if (shown.state !== 'brief') show({ state: 'working' })
    const wait = setTimeout(() => {
      work(sheet, example.answers)
        .catch((): Shown => ({ state: 'failed' }))
        .then((next) => mine && show(next))
    }, PAUSE)
    return () => {
      mine = false
      clearTimeout(wait)
    }
  }, [seen, sheet, job, tries])

  return (
    <section class="shop-client stack" aria-labelledby="shop-client-title" ref={place}>
      <h2 id="shop-client-title">What a client sees</h2>
      {given.examples !== undefined && (
        <div class="field">
          <label for="shop-job">Tried on an invented job</label>
          <select id="shop-job" value={String(job)} onChange={(event) => choose(Number(event.currentTarget.value))}>
            {given.examples.map(({ id, title }, i) => (
              <option key={id} value={String(i)}>
                {title}
              </option>
            ))}
          </select>
          <p class="help">{example?.about.replace('An invented project. ', '')}</p>
        </div>
      )}
      {shown.state === 'waiting' && <p class="note">It stands here as soon as the sheet is complete.</p>}
      {shown.state === 'working' && (
        <p class="note" role="status">
          Working it out …
        </p>
      )}
      {shown.state === 'failed' && (
        <div class="notice">
          <p>The numbers about wood did not load. The sheet itself is kept.</p>
          <button type="button" class="btn btn--small" onClick={() => again(tries + 1)}>
            Try again
          </button>
        </div>
      )}
      {shown.state === 'brief' && (
        <>
          {sheet === null && <p class="note">As of the last complete sheet.</p>}
          <shown.view.ClientView brief={shown.brief} sheet={shown.sheet} library={shown.engine.library} />
        </>
      )}
    </section>
  )
}
