/** The sticks of a job: every timber that is sized, with its section, length and number. The one count that price and cut list share. */
import type { Reference } from '../data/reference'
import { FOOT } from '../data/units'
import type { MemberId } from '../frame/job'
import type { Section } from '../frame/values'
import { type Facts, limit } from './facts'
import type { Frame } from './frame-for'
import { MEMBER_NAMES } from './member-names'

/** One kind of stick; `stick` where the timbers carry nothing and only their looks count. */
export interface Stick {
  readonly id: MemberId | 'stick'
  readonly section: Section
  /** With what its joinery needs at its ends, mm. */
  readonly length: number
  /** In all frame lines together. */
  readonly count: number
}

const ORDER: readonly Stick['id'][] = Object.keys(MEMBER_NAMES) as MemberId[]

/**
 * Sticks of all frame lines. A tie or beam is as long as the longest stick asked for; a post has a tenon at its top. Where
 * nothing passes, the section is the one that is shown. Braces, plates, purlins and joists are not sized and so not in it.
 */
export function sticksOf(facts: Facts, frame: Frame, reference: Reference): readonly Stick[] {
  const { count } = facts
  const { members, section } = frame
  if (members.length === 0) return [{ id: 'stick', section, length: facts.stick, count }]
  const ends = limit(reference, 'end-allowance') * FOOT
  const lengthOf = (id: MemberId, length: number) =>
    id === 'post' ? length + ends / 2 : id === 'beam' || id === 'tie' ? Math.max(length, facts.stick) : length
  const sticks = members.map(
    (m): Stick => ({
      id: m.id,
      section: m.sized.section ?? section,
      length: lengthOf(m.id, m.length),
      count: m.pieces * count
    })
  )
  return sticks.sort((p, q) => ORDER.indexOf(p.id) - ORDER.indexOf(q.id))
}

/** Volume of one stick, m3. */
export const volumeOfOne = ({ section: [b, d], length }: Stick): number => (b * d * length) / 1e9

/** Volume of all sticks, m3, before waste. */
export const netVolume = (sticks: readonly Stick[]): number =>
  sticks.reduce((sum, s) => sum + s.count * volumeOfOne(s), 0)

/** Volume to be bought, m3. @param wastePercent what is sawn off and thrown out, of the net volume */
export const grossVolume = (sticks: readonly Stick[], wastePercent: number): number =>
  netVolume(sticks) * (1 + wastePercent / 100)

/** The stick of the largest volume, and so of the greatest weight: all are of one wood. */
export const heaviestOf = (sticks: readonly Stick[]): Stick =>
  sticks.reduce((most, s) => (volumeOfOne(s) > volumeOfOne(most) ? s : most))

/** Length of the longest stick, mm. */
export const longestOf = (sticks: readonly Stick[]): number => Math.max(...sticks.map((s) => s.length))
