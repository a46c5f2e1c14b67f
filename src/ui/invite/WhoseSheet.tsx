/** Whose sheet the invite carries. */
import { href } from '../site/href'
import type { InForce } from './in-force'

export function WhoseSheet({ force, problems }: { readonly force: InForce; readonly problems: readonly string[] }) {
  const { sheet } = force.engine
  const request = sheet.woods.filter((wood) => wood.onRequest).length
  const said = [...force.problems, ...problems]
  return (
    <section class="sheet no-print" aria-labelledby="whose-title">
      <div class="stack">
        <h2 id="whose-title">The sheet</h2>
        <p>
          <b>{sheet.name}</b>: {sheet.woods.length} woods{request > 0 && `, ${request} of them on request`};{' '}
          {sheet.sections.sizes.length} sizes; {sheet.seasonings.length} ways of seasoning.{' '}
          {force.from === 'own' && <a href={href('/shop/')}>Change the sheet</a>}
        </p>
        {force.from === 'sample' && (
          <p class="caution">
            <b>This is the sample sheet.</b> The shop is invented and so are its prices. Try the invite with it, then{' '}
            <a href={href('/shop/')}>make a sheet of your own</a>.
          </p>
        )}
        {said.length > 0 && (
          <div class="notice" role="status">
            <p>{said.join(' ')}</p>
          </div>
        )}
      </div>
      <aside class="margin" aria-label="What is sent">
        <p>
          <b>Nothing is sent from here.</b> The link holds it all, behind the #, which no server gets to see. Whoever
          has the link can read the sheet in it.
        </p>
        <p>No client’s name or address is asked, on this page or in the questions.</p>
      </aside>
    </section>
  )
}
