/** A run of a note's text: words, and figures that open their source. */
import type { Origin } from '../../data/quantity'
import type { Mark } from '../../data/schema'
import type { Parts as Of, Part } from '../../notes/note'
import { Figure } from '../say/Figure'
import { Opens } from '../say/Opens'
import { Q } from '../say/Q'
import { href } from '../site/href'

/** What the button behind a statement says: whether it was read, or is what the trade says. */
const CITES: Readonly<Record<Mark, string>> = {
  seen: 'source',
  mixed: 'source, part recalled',
  memory: 'recalled',
  practice: 'trade opinion',
  derived: 'worked out here',
  placeholder: 'invented'
}

export function Parts({ of }: { readonly of: Of }) {
  return (
    <>
      {held(of).map(([part, mark], i) =>
        mark === '' ? (
          <One key={i} part={part} />
        ) : (
          <span key={i} class="held">
            <One part={part} />
            {mark}
          </span>
        )
      )}
    </>
  )
}

/**
 * Each part with the marks of punctuation that follow it: a line may break behind a button, and must not between it and its
 * full stop. The space before a source goes with the source, so that paper, which has none, shows no gap.
 */
function held(of: Of): readonly (readonly [Part, string])[] {
  const marksAfter = (i: number): string => {
    const next = of[i + 1]
    return of[i]?.kind === 'figure' && next?.kind === 'text'
      ? (/^(?:’s\b)?[.,;:!?)’”]*/.exec(next.text)?.[0] ?? '')
      : ''
  }
  return of.map((part, i) => {
    if (part.kind !== 'text') return [part, marksAfter(i)]
    const text = part.text.slice(i > 0 ? marksAfter(i - 1).length : 0)
    return [{ ...part, text: of[i + 1]?.kind === 'cite' ? text.trimEnd() : text }, '']
  })
}

/** A button behind a statement that opens where it comes from. */
export function Cite({ origin }: { readonly origin: Origin }) {
  return (
    <span class="cited">
      {' '}
      <Opens kind="cite" origin={origin} label={`source of this statement: ${CITES[origin.mark]}`}>
        {CITES[origin.mark]}
      </Opens>
    </span>
  )
}

function One({ part }: { readonly part: Part }) {
  switch (part.kind) {
    case 'text':
      return <>{part.text}</>
    case 'strong':
      return <b>{part.text}</b>
    case 'link':
      return <a href={href(part.to)}>{part.text}</a>
    case 'plain':
      return <span data-plain>{part.text}</span>
    case 'figure':
      return part.plain ? (
        <span class="given">
          <Figure q={part.quantity} />
        </span>
      ) : (
        <Q q={part.quantity} />
      )
    case 'cite':
      return <Cite origin={part.origin} />
  }
}
