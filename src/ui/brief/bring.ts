/** Finds the answers and the sheet of the brief to show. Comes after the first view, with all that reads links. */
import type { Answers } from '../../choice/types'
import { decodeLink } from '../../shop/link'
import { $answers } from '../../stores/answers'
import { loadEngine } from '../engine'
import { framersSheet, knownTo, sheetInForce, underInvite } from '../invite/in-force'
import { readSpot } from '../questionnaire/flow'
import { href } from '../site/href'
import { OpenFile } from './OpenFile'
import type { Unworked, Worked } from './worked'

type Brought = Omit<Worked, 'brief' | 'compare'> & { readonly answers: Answers }

/** What the address asks for, where that can be said without the engine. */
export function atOnce(): Unworked | null {
  const spot = readSpot(location.hash)
  const own = Object.keys($answers.get()).length
  if (spot.at === 'file') return { state: 'file', OpenFile }
  if (spot.at !== 'link') return own === 0 ? { state: 'empty', OpenFile } : null
  const link = decodeLink(spot.code)
  if (!link.ok) return { state: 'bad-link', says: link.says, own }
  // An invite is to be answered.
  if (link.locked) {
    location.replace(href(`/start/#i=${spot.code}`))
    return { state: 'loading' }
  }
  return null
}

export async function bring(): Promise<Brought | Unworked> {
  const spot = readSpot(location.hash)
  const own = $answers.get()
  if (spot.at !== 'link') {
    const force = await sheetInForce()
    const answers = underInvite(own, force.invite)
    return { answers, engine: force.engine, from: force.from, linked: false, left: force.problems, otherOwn: null }
  }
  const known = knownTo(await loadEngine())
  const link = decodeLink(spot.code, known)
  if (!link.ok) return { state: 'bad-link', says: link.says, own: Object.keys(own).length }
  const { answers, sheet, given } = link
  const left = link.problems.map((p) => p.says)
  if (!sheet) {
    const force = await sheetInForce()
    return { answers, engine: force.engine, from: force.from, linked: true, left, otherOwn: null }
  }
  const mine = await framersSheet()
  const text = JSON.stringify(sheet)
  const differs = mine.from === 'own' && JSON.stringify(mine.engine.sheet) !== text
  const otherOwn = !differs ? null : mine.engine.sheet.name === sheet.name ? 'changed' : 'renamed'
  const engine = await loadEngine(sheet)
  return { answers, engine, from: 'link', linked: true, left, otherOwn, ...(given && { given }) }
}
