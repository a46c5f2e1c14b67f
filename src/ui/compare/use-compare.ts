/** Two briefs on their way in, and what they come to side by side. What was typed stays as it was typed. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { $answers } from '../../stores/answers'
import { useSaved } from '../../stores/use-saved'
import { type Engine, loadEngine } from '../engine'
import { inSlices } from '../in-slices'
import type { InForce } from '../invite/in-force'
import { href } from '../site/href'
import type { Side } from './pair'
import type { Brought, Read } from './read'

export interface Slot {
  readonly text: string
  readonly problem: string | null
  /** What a file held; typing puts it away. */
  readonly brought: Brought | null
  readonly left: readonly string[]
}
export type Outcome =
  | { readonly state: 'none' | 'working' | 'failed' }
  | { readonly state: 'done'; readonly draw: typeof import('./draw'); readonly sides: readonly [Side, Side] }

const EMPTY: Slot = { text: '', problem: null, brought: null, left: [] }
const LARGEST_FILE = 5_000_000

/** The reader comes when it is first needed: it is larger than the page. */
const reader = () => import('./read')

async function linkTo({ answers, sheet, given }: Omit<Brought, 'left'>): Promise<string> {
  return `${href('/brief/')}#b=${(await reader()).codeOf(answers, sheet ?? null, given)}`
}
const whole = (link: string): string => new URL(link, location.href).href

/** What the engine does not know is left out and said. @throws Error where the engine cannot be loaded */
async function readText(text: string): Promise<Read> {
  const [{ readBrought, knownTo }, sample] = await Promise.all([reader(), loadEngine()])
  return readBrought(text, knownTo(sample))
}

/** Each side from its own sheet; without one, from the sheet in use on this device, as the brief's own page has it. */
async function engineOf(sheet: Brought['sheet'], force: InForce): Promise<Engine> {
  return sheet ? loadEngine(sheet) : force.engine
}

export function useCompare() {
  const [slots, set] = useState<readonly [Slot, Slot]>([EMPTY, EMPTY])
  const [outcome, show] = useState<Outcome>({ state: 'none' })
  const own = useSaved($answers)
  const put = (at: 0 | 1, change: Partial<Slot>) =>
    set(([a, b]) => (at === 0 ? [{ ...a, ...change }, b] : [a, { ...b, ...change }]))

  const type = (at: 0 | 1, text: string) => put(at, { text, problem: null, brought: null, left: [] })
  const open = async (at: 0 | 1, file: File) => {
    if (file.size > LARGEST_FILE)
      return put(at, { problem: 'This file is far larger than any brief; it was not opened.' })
    try {
      const read = await readText(await file.text())
      if ('says' in read) return put(at, { problem: `${file.name.slice(0, 60)}: ${read.says}` })
      put(at, { text: whole(await linkTo(read)), problem: null, brought: read, left: read.left })
    } catch {
      put(at, { problem: 'This file could not be read, or the numbers about wood did not load; try again.' })
    }
  }
  const takeOwn = async (at: 0 | 1) => {
    try {
      const { sheetInForce, underInvite } = await reader()
      const { from, engine, invite } = await sheetInForce()
      const sheet = from === 'sample' ? {} : { sheet: engine.sheet }
      type(at, whole(await linkTo({ answers: underInvite(own, invite), ...sheet })))
    } catch {
      put(at, { problem: 'The answers on this device could not be fetched; try again.' })
    }
  }

  /** Both briefs' answers, or null where one of them is refused: then that is said beside it. */
  const readBoth = async (): Promise<readonly [Brought, Brought] | null> => {
    const [a, b] = await Promise.all([slots[0], slots[1]].map((slot) => slot.brought ?? readText(slot.text)))
    if (!a || !b) return null
    for (const [at, read] of [
      [0, a],
      [1, b]
    ] as const)
      put(at, 'says' in read ? { problem: read.says, left: [] } : { problem: null, left: read.left })
    if (!('says' in a) && !('says' in b)) return [a, b]
    document.getElementById('says' in a ? 'first-brief' : 'second-brief')?.focus()
    return null
  }

  const turn = useRef(0)
  const compare = async () => {
    const mine = ++turn.current
    const latest = (next: Outcome) => mine === turn.current && show(next)
    try {
      latest({ state: 'working' })
      const both = await readBoth()
      // Refused: what was drawn last stays.
      if (both === null) return latest(outcome.state === 'done' ? outcome : { state: 'none' })
      const [a, b] = both
      const [draw, force] = await Promise.all([import('./draw'), (await reader()).sheetInForce()])
      const sideOf = async (brought: Brought): Promise<Side> => {
        const { makeBrief, library, sheet } = await engineOf(brought.sheet, force)
        return {
          brief: await inSlices(makeBrief(brought.answers)),
          link: await linkTo(brought),
          library,
          sheet,
          own: brought.sheet !== undefined
        }
      }
      latest({ state: 'done', draw, sides: [await sideOf(a), await sideOf(b)] })
      requestAnimationFrame(() => document.getElementById('compared')?.focus())
    } catch {
      latest({ state: 'failed' })
    }
  }

  // A brief's own page leads here with its code.
  useEffect(() => {
    if (/^#[ab]=/.test(location.hash)) type(0, whole(`${href('/brief/')}${location.hash.replace(/^#a=/, '#b=')}`))
  }, [])
  return { slots, outcome, type, open, compare, takeOwn: Object.keys(own).length > 0 ? takeOwn : null }
}
