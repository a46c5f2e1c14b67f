/** The drying of timbers against what has been measured and what the trade reports; misfits said. */
import { describe, expect, it } from 'vitest'
import { chamberDays } from '../../src/choice/delivery'
import { dryingWood } from '../../src/choice/yard'
import type { Wood } from '../../src/data/reference'
import { INCH } from '../../src/data/units'
import { dayOfMean, dryingCourse, onDay, type Stage } from '../../src/wood/drying'
import { equilibriumMoisture } from '../../src/wood/moisture'
import { reference } from '../reference'

const woodOf = (id: string): Wood => {
  const wood = reference.woods.get(id)
  if (!wood) throw new Error(id)
  return wood
}
const yardOf = (wood: Wood, days: number): Stage => {
  const town = reference.places.get(reference.drying.yards[wood.regions[0] ?? ''] ?? '')
  if (!town) throw new Error(`no yard for ${wood.id}`)
  const equilibrium = town.temperatureC.map((t, i) => equilibriumMoisture(t, town.humidity[i] ?? 0))
  return { air: { temperatureC: town.temperatureC, equilibrium }, days, surface: reference.drying.pile }
}
const room = (equilibrium: number, days: number): Stage => ({
  air: { temperatureC: 21, equilibrium },
  days,
  surface: reference.drying.open
})
/** The middle of a month, January 1. */
const mid = (month: number): number => (month - 0.5) * (365.25 / 12)
const course = (id: string, breadth: number, depth: number, moisture: number, startDay: number, stage: Stage) =>
  dryingCourse({ wood: dryingWood(woodOf(id)), breadth, depth, moisture, startDay, stages: [stage] })

describe('red oak ties, 7 x 9 in, from 85 to 50 % (mathewson-1949, abstract seen)', () => {
  // "5 months piled in spring, twice as long piled in autumn". The factor is the one fitted to 1 in boards.
  const months = (month: number) => {
    const stage = yardOf(woodOf('red-oak'), 900)
    return dayOfMean(course('red-oak', 7 * INCH, 9 * INCH, 0.85, mid(month), stage), 0.5) / (365.25 / 12)
  }
  it('piled in spring: 5 months, within one', () => {
    const best = Math.min(...[3, 4, 5].map(months))
    expect(best).toBeGreaterThan(4)
    expect(best).toBeLessThan(6)
  })
  it('piled in autumn: about 10, within one', () => {
    const worst = Math.max(...[9, 10, 11].map(months))
    expect(worst).toBeGreaterThan(9)
    expect(worst).toBeLessThan(11)
  })
})

describe('two-inch boards of hardwood against one-inch ones (wengert-qa: 180 and 60 days in good weather)', () => {
  it('about three times as long, stacked in spring', () => {
    const days = (thick: number) => {
      const stage = yardOf(woodOf('red-oak'), 1500)
      return dayOfMean(course('red-oak', thick * INCH, 1e6, woodOf('red-oak').greenWhole, mid(4), stage), 0.2)
    }
    const times = days(2) / days(1)
    // The note gives both times as round figures of a month or two: 2.4 to 4 covers a half month either way.
    expect(times).toBeGreaterThan(2.4)
    expect(times).toBeLessThan(4)
  })
})

describe('oak beams in the yard (trade page, seen)', () => {
  // The page names no size, season or depth: the pins of a meter reach 5 to 10 mm. The model's face is 1 to 5 points
  // wetter than reported, the more the nearer to winter and the bigger the beam.
  it.each([
    [8, 3],
    [8, 9],
    [10, 9]
  ])(
    '%d in, stacked in month %d: after two years the face is near 20 %, the core still at 30 or above',
    (size, month) => {
      const stage = yardOf(woodOf('white-oak'), 730)
      const beam = course('white-oak', size * INCH, size * INCH, woodOf('white-oak').greenWhole, mid(month), stage)
      const face = beam.profiles.at(-1)?.[0]
      expect(face?.from).toBeLessThan(10)
      expect(face?.moisture).toBeGreaterThan(0.17)
      expect(face?.moisture).toBeLessThan(0.25)
      expect(beam.core.at(-1)).toBeGreaterThan(0.3)
    }
  )
})

describe('timbers drying in a heated house', () => {
  it('log walls come to 6 to 12 % in about four years (trade page, seen): an 8 in softwood timber from a dry-ish start', () => {
    // "20 to 90 % at the start": a pine at 35 %.
    const mean = course('eastern-white-pine', 8 * INCH, 8 * INCH, 0.35, 0, room(0.08, 4 * 365)).mean.at(-1)
    expect(mean).toBeGreaterThan(0.06)
    expect(mean).toBeLessThan(0.12)
  })
  it('1 in white oak in a heated house comes below 10 % in 90 to 150 days (miceli-1982, abstract seen)', () => {
    const days = dayOfMean(course('white-oak', INCH, 1e6, woodOf('white-oak').greenWhole, 0, room(0.065, 900)), 0.1)
    expect(days).toBeGreaterThan(90)
    expect(days).toBeLessThan(150)
  })
  it('its 2 in boards were as quick there; the model gives three to four times as long, and errs to the slow side', () => {
    const days = (thick: number) =>
      dayOfMean(course('white-oak', thick * INCH, 1e6, woodOf('white-oak').greenWhole, 0, room(0.065, 1500)), 0.1)
    expect(days(2) / days(1)).toBeGreaterThan(3)
    expect(days(2) / days(1)).toBeLessThan(4.2)
  })
})

describe('house logs of Sitka spruce under cover: most of the loss within 8 months (nicholls-brackley-2009, abstract seen)', () => {
  it('an 8 in timber at Juneau', () => {
    const wood = woodOf('sitka-spruce')
    const log = course('sitka-spruce', 8 * INCH, 8 * INCH, wood.greenWhole, mid(4), yardOf(wood, 730))
    const [first, end] = [onDay(log, log.mean, 243), log.mean.at(-1) ?? 0]
    expect((wood.greenWhole - first) / (wood.greenWhole - end)).toBeGreaterThan(0.5)
  })
})

describe('kiln and vacuum', () => {
  it('6 x 8 in softwood cants take 4 to 6 weeks to 15 % (trade page): what the seasoning says', () => {
    const weeks = chamberDays(seasoning('kiln'), 6 * INCH) / 7
    expect(weeks).toBeGreaterThanOrEqual(4)
    expect(weeks).toBeLessThanOrEqual(6)
  })
  it('the model with a factor from the yard is slower at kiln heat, by up to about three: its kiln is paced to those weeks', () => {
    const steps = reference.drying.kiln[0] ?? []
    const stages = steps.map((step) => ({
      air: step,
      days: 900,
      surface: reference.drying.open,
      untilMean: Math.max(step.above, 0.15)
    }))
    const spruce = dryingCourse({
      wood: dryingWood(woodOf('white-spruce')),
      breadth: 6 * INCH,
      depth: 8 * INCH,
      moisture: woodOf('white-spruce').greenWhole,
      startDay: 0,
      stages
    })
    const weeks = (spruce.days.at(-1) ?? 0) / 7
    expect(weeks).toBeGreaterThan(4)
    expect(weeks).toBeLessThan(18)
  })
  it('6 in by radio-frequency vacuum: between thick squares (1 to 1.3 days) and boxed-heart posts of 150 mm (7 days)', () => {
    const days = chamberDays(seasoning('rfv'), 6 * INCH)
    expect(days).toBeGreaterThan(1)
    expect(days).toBeLessThan(7.1)
  })
})

function seasoning(id: 'kiln' | 'rfv') {
  const found = reference.seasonings.get(id)
  if (!found) throw new Error(id)
  return found
}
