/** Where to find what on the sheet: a brief is long, and a framer in a hurry wants the sizes. */
import { asList } from '../say/as-list'

const PARTS: readonly (readonly [string, string])[] = [
  ['sure', 'How sure'],
  ['why', 'Why'],
  ['side', 'Two side by side'],
  ['change', 'What would change it'],
  ['woods', 'Every wood'],
  ['trade', 'What for what'],
  ['sizes', 'How big'],
  ['movement', 'How it moves'],
  ['drying', 'How dry'],
  ['lasting', 'Will it last'],
  ['finish', 'Look and upkeep'],
  ['cost', 'Cost'],
  ['cautions', 'Cautions'],
  ['ask', 'What to ask'],
  ['shop', 'Shop detail'],
  ['told', 'Your answers'],
  ['origins', 'Sources']
]

/** The fragment of a brief's address may be the brief itself, so going to a part leaves it alone. */
function go(event: Event, id: string): void {
  const part = document.getElementById(id)
  if (part === null) return
  event.preventDefault()
  part.scrollIntoView()
  part.setAttribute('tabindex', '-1')
  part.focus({ preventScroll: true })
}

export function Contents() {
  return (
    <nav aria-label="On this sheet" class="no-print">
      <ul class="contents plain" {...asList}>
        {PARTS.map(([id, name]) => (
          <li key={id}>
            <a href={`#${id}`} onClick={(event) => go(event, id)}>
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
