/** The yard: how a wood dries there, from the month in which it is felled. Courses are shared by all options that need them. */
import type { Reference, Wood } from '../data/reference'
import type { Section } from '../frame/values'
import { type Course, type DryingWood, dryingCourse, type YearlyAir } from '../wood/drying'
import type { Facts } from './facts'

/** How the wood dries: in the middle, or as the slowest or quickest of its published boards. */
export function dryingWood(wood: Wood, which: keyof Wood['drying'] = 'factor'): DryingWood {
  return { gravityGreen: wood.gravityGreen, fibreSaturation: wood.fibreSaturation, factor: wood.drying[which] }
}

/** Outdoor air of the place, under cover. */
export const outdoorAir = ({ place, service }: Facts): YearlyAir => ({
  temperatureC: place.temperatureC,
  equilibrium: service.outdoor
})

const MONTH = 365.25 / 12
/** Day of the year on which the timbers are felled and stacked: the middle of the month. */
export const felledDay = ({ felledMonth }: Pick<Facts, 'felledMonth'>): number => (felledMonth - 0.5) * MONTH

/**
 * Courses already run: the same wood, section, place and month dry the same whatever else is asked. Kept beside the reference
 * that they came from; nothing can be told from outside but the time saved.
 */
const kept = new WeakMap<Reference, Map<string, Course>>()
const MOST_KEPT = 2000
/** Enough for one figure of the mean: within half a point of the finest grid, in under half its time. */
export const COARSE = 8

/** The course of a section in the yard of the place down to `target`, long enough to read its quickest board off it too. */
export function yardCourse(
  wood: Wood,
  section: Section,
  weeks: number,
  target: number,
  facts: Facts,
  reference: Reference
): Course {
  const known = kept.get(reference) ?? new Map<string, Course>()
  kept.set(reference, known)
  const key = `${wood.id}/${section[0]}/${section[1]}/${weeks}/${facts.place.id}/${facts.felledMonth}`
  const found = known.get(key)
  if (found) return found
  if (known.size >= MOST_KEPT) known.clear()
  const course = dryingCourse({
    wood: dryingWood(wood),
    breadth: section[0],
    depth: section[1],
    moisture: wood.greenWhole,
    startDay: felledDay(facts),
    cells: COARSE,
    stages: [
      {
        air: outdoorAir(facts),
        days: 7 * weeks * (wood.drying.quickest / wood.drying.factor),
        surface: reference.drying.pile,
        untilMean: target
      }
    ]
  })
  known.set(key, course)
  return course
}
