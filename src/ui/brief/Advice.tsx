/** Cautions, and what to settle with the framer and the engineer. */

import type { Brief } from '../../choice/brief-types'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'
import { Section } from './Section'
import { List } from './Sentences'

export function Advice({ brief }: { readonly brief: Brief }) {
  return (
    <>
      {brief.cautions.length > 0 && (
        <Section id="cautions" title="Cautions">
          <ul class="cautions plain" {...asList}>
            {brief.cautions.map((s) => (
              <li key={s.text}>
                <Say s={s} />
              </li>
            ))}
          </ul>
          {brief.shop.cautions.length > 0 && (
            <>
              <h3>From {brief.shop.name}</h3>
              <ul class="cautions plain" {...asList}>
                {brief.shop.cautions.map((says) => (
                  <li key={says}>{says}</li>
                ))}
              </ul>
            </>
          )}
        </Section>
      )}
      <Section id="ask" title="What to settle, and with whom">
        <div class="two">
          <div class="stack">
            <h3>Ask the framer</h3>
            <List of={brief.ask.framer} />
          </div>
          <div class="stack">
            <h3>Ask the engineer</h3>
            <List of={brief.ask.engineer} />
          </div>
        </div>
      </Section>
    </>
  )
}
