/**
 * Which shop sheet is in force on this device: that of an opened invite, else the framer's own, else the sample. What
 * is kept is checked here, beside the engine and as late, so that no first view pays for it.
 */
import type { Answers } from '../../choice/types'
import type { Invite, Known } from '../../shop/invite/door'
import { $invite } from '../../stores/invite'
import { $ownSheet } from '../../stores/own-sheet'
import { type Engine, loadEngine } from '../engine'

export interface InForce {
  readonly from: 'invite' | 'own' | 'sample'
  readonly engine: Engine
  /** The opened invite, where it is its sheet that is in force. */
  readonly invite: Invite | null
  /** What was kept and could not be used, in words. */
  readonly problems: readonly string[]
}

const door = () => import('../../shop/invite/door')

/** What the engine has numbers on. */
export const knownTo = (engine: Engine): Known => ({
  woods: new Set(engine.woods.map((wood) => wood.id)),
  places: new Set(engine.places.map((place) => place.id))
})

/** The framer's own sheet, else the sample. @throws Error where the engine cannot be loaded */
export async function framersSheet(problems: readonly string[] = []): Promise<InForce> {
  const sample = await loadEngine()
  const own = $ownSheet.get()
  const none: InForce = { from: 'sample', engine: sample, invite: null, problems }
  if (own === null) return none
  const read = (await door()).readKnownSheet(own, knownTo(sample).woods)
  if (!read.ok)
    return {
      ...none,
      problems: [...problems, `Your own sheet is not in use: ${read.says} The sample sheet stands in.`]
    }
  const said = [...problems, ...read.problems.map((p) => p.says)]
  return { from: 'own', engine: await loadEngine(read.sheet), invite: null, problems: said }
}

/** The sheet in force. @throws Error where the engine cannot be loaded */
export async function sheetInForce(): Promise<InForce> {
  const kept = $invite.get()
  if (kept === null) return framersSheet()
  const sample = await loadEngine()
  const read = (await door()).readInvite(kept, knownTo(sample))
  if (!read.ok) return framersSheet([`The invite kept on this device is not in use: ${read.says}`])
  const { invite, problems } = read
  return {
    from: 'invite',
    engine: await loadEngine(invite.sheet),
    invite,
    problems: problems.map((p) => p.says)
  }
}

/** One's own answers under what the shop has settled. */
export function underInvite(own: Answers, invite: Invite | null): Answers {
  if (invite === null) return own
  return { ...own, ...Object.fromEntries(Object.entries(invite.answers).filter(([id]) => invite.locked.includes(id))) }
}
