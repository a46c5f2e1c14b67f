/** Brings the log ends to life: the page was drawn by the same components, from the same data, at build. */
import { type ComponentProps, hydrate } from 'preact'
import { openWordsHere } from '../words/open-here'
import { LogEnds } from './LogEnds'

export function wake(root: HTMLElement): void {
  const data = document.getElementById('log-end-data')?.textContent ?? ''
  hydrate(<LogEnds {...(JSON.parse(data) as ComponentProps<typeof LogEnds>)} />, root)
  root.dataset['live'] = ''
  void openWordsHere()
}
