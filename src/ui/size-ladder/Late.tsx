/**
 * A figure whose note is made once there is script to make it with, so that the page need not carry hundreds of notes before
 * anyone asks. Where a figure stands in sight, or tells what no other does, its note is in the page from the start: `now`.
 */
import { useEffect, useState } from 'preact/hooks'
import type { Quantity, Sentence } from '../../data/quantity'
import { Figure } from '../say/Figure'
import { Q } from '../say/Q'
import { Say } from '../say/Say'

/** False until there is script. */
export function useLive(): boolean {
  const [live, setLive] = useState(false)
  useEffect(() => setLive(true), [])
  return live
}

export function Late({ q, now = false }: { readonly q: Quantity; readonly now?: boolean }) {
  const live = useLive()
  return now || live ? <Q q={q} /> : <Figure q={q} />
}

/** A sentence whose figures open once there is script. */
export const LateSay = ({ s }: { readonly s: Sentence }) => <Say s={s} bare={!useLive()} />
