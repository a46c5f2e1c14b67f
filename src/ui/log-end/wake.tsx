/** Brings the log ends to life: the page was drawn by the same components, from the same woods, at build. */
import { hydrate } from 'preact'
import { LogEnds } from './LogEnds'
import type { BenchWood } from './model'

export function wake(root: HTMLElement): void {
  const woods = JSON.parse(document.getElementById('log-end-woods')?.textContent ?? '[]') as BenchWood[]
  hydrate(<LogEnds woods={woods} start={root.dataset['start'] ?? ''} />, root)
  root.dataset['live'] = ''
}
