/** How sure the answer is, and which open questions would settle it. */

import type { Brief } from '../../choice/types'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Section } from './Section'

export function Sure({ brief }: { readonly brief: Brief }) {
  const { sure } = brief
  return (
    <Section
      id="sure"
      title="How sure is that?"
      margin={
        sure.of > 1 && (
          <p>
            <b>
              First in {sure.firstIn} of {sure.of}
            </b>{' '}
            of the ways your open answers and the weighing could turn out.
          </p>
        )
      }
    >
      <p>
        <Say s={sure.says} />
      </p>
      {sure.settle.length > 0 && (
        <>
          <h3>What would settle it</h3>
          <ul class="list plain" {...asList}>
            {sure.settle.map((open) => (
              <li key={open.question}>
                <a href={href(`/start/#q=${open.question}`)}>{open.title}</a> <Say s={open.says} />
              </li>
            ))}
          </ul>
        </>
      )}
    </Section>
  )
}
