/** How it will look and be looked after: the woods side by side as the engine colours them, then what each asks for. */
import { useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { FinishLine, FinishView, Swatch } from '../../choice/types'
import { Figure } from '../say/Figure'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { Cell } from './Cell'
import { Paragraphs } from './Sentences'

function Patch({ swatch }: { readonly swatch: Swatch }) {
  return (
    <span class="look">
      <svg class="look-patch" viewBox="0 0 60 34" preserveAspectRatio="none" aria-hidden="true">
        <rect class="swatch" fill={swatch.hex} width="60" height="34" />
      </svg>
      <span>
        {swatch.words}
        {!swatch.inGamut && ', stronger than a screen shows'}
      </span>
    </span>
  )
}

interface LooksProps {
  readonly view: FinishView
  readonly lines: readonly FinishLine[]
  /** Where nothing is renewed this is all there is to say of a wood, and it needs no table of its own. */
  readonly bleeds: boolean
}

function Looks({ view, lines, bleeds }: LooksProps) {
  const bare = view.id === 'grey'
  return (
    <table class="data looks">
      <thead>
        <tr>
          <th scope="col">Wood</th>
          <th scope="col">Own colour</th>
          {!bare && <th scope="col">{view.name}</th>}
          <th scope="col">{view.later}</th>
          {bleeds && <th scope="col">What bleeds</th>}
        </tr>
      </thead>
      <tbody>
        {view.looks.map((look, i) => (
          <tr key={look.species}>
            <th scope="row">
              {lines[i]?.short}
              {lines[i]?.role && <span class="caption-line look-role">{lines[i]?.role}</span>}
            </th>
            <td>
              <Patch swatch={look.own} />
            </td>
            {!bare && (
              <td>
                <Patch swatch={look.finished} />
                {!look.reached && <span class="caption-line look-role">darker than wanted</span>}
              </td>
            )}
            <td>
              <Patch swatch={look.later} />
            </td>
            {bleeds && <td>{lines[i] && <Say s={lines[i].bleeds} />}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Another finish over the same woods: to look at, the answer stays. Only where there is script to change it. */
function Instead({
  views,
  at,
  go
}: {
  readonly views: readonly FinishView[]
  readonly at: string
  readonly go: (id: string) => void
}) {
  return (
    <div class="field no-print">
      <label for="look-with">See it with</label>
      <select id="look-with" value={at} onChange={(event) => go(event.currentTarget.value)}>
        {views.map((v) => (
          <option key={v.id} value={v.id}>
            {v.name}
          </option>
        ))}
      </select>
    </div>
  )
}

function Row({ line, lead }: { readonly line: FinishLine; readonly lead: boolean }) {
  return (
    <tr class={lead ? 'lead' : ''}>
      <th scope="row">{line.wood}</th>
      <Cell label="Paint and films">
        <Say s={line.takes} />
      </Cell>
      <Cell label="What bleeds">
        <Say s={line.bleeds} />
      </Cell>
      <Cell label="Dry enough">
        <Say s={line.dry} />
      </Cell>
      <Cell label="Coat every" num>
        {line.years && <Q q={line.years} />}
      </Cell>
      <Cell label="First coat" num>
        {line.first ? <Q q={line.first} plain /> : 'not priced'}
      </Cell>
      <Cell label="In 20 years" num>
        {line.over ? <Q q={line.over} plain /> : 'not priced'}
        {line.recoats && (
          <span class="caption-line look-role">
            <Figure q={line.recoats} /> more
          </span>
        )}
      </Cell>
    </tr>
  )
}

export function Finish({ brief }: { readonly brief: Brief }) {
  const { says, chosen, views, lines, caution } = brief.finish
  const [at, go] = useState(chosen)
  const view = views.find((v) => v.id === at) ?? views[0]
  const renewed = lines.some((line) => line.years)
  return (
    <section class="sheet" id="finish" aria-labelledby="finish-title">
      <div class="stack bleed">
        <h2 id="finish-title">How it will look, and its upkeep</h2>
        <Paragraphs of={says} />
        {view && (
          <figure class="figure">
            {typeof window !== 'undefined' && <Instead views={views} at={at} go={go} />}
            <Looks view={view} lines={lines} bleeds={!renewed && at === chosen} />
            <figcaption aria-live="polite">
              {at !== chosen && <>{view.name}, to look at; your answer stands. </>}
              Mean colour of heartwood, worked from how much light each layer takes.{' '}
              {caution.map((s) => (
                <Say key={s.text} s={s} />
              ))}
            </figcaption>
          </figure>
        )}
        {renewed && (
          <>
            <table class="data data--stack">
              <Heads
                words={['Wood', 'Paint and films', 'What bleeds', 'Dry enough']}
                numbers={['Coat every', 'First coat', 'In 20 years']}
              />
              <tbody>
                {lines.map((line, i) => (
                  <Row key={line.species} line={line} lead={i === 0 && brief.lead !== null} />
                ))}
              </tbody>
            </table>
            <p class="note">
              In 20 years: the first coat and every one that falls due, at today’s prices, without interest.
              {brief.shop.placeholder && <> Placeholder prices.</>}
            </p>
          </>
        )}
      </div>
    </section>
  )
}
