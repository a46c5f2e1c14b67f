/** How long the engine takes: one judging, the live list, a whole brief. Reported in the README, never asserted. */
import { describe, test } from 'vitest'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { bundledEngine } from './bundled'

const engine = await bundledEngine()
const { clockOf, dryingCourse, dryingWood, judgeAll, makeBrief, readClock, reference, settle, sheet, whatIfNow } =
  engine

// A new sheet each time: what was worked out for one sheet is kept for the next judging of it.

const answered = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'minneapolis-st-paul-mn',
  carries: 'truss',
  span: 28 * FOOT,
  spacing: 12 * FOOT,
  count: 4,
  slope: 8 / 12,
  snow: 35 * PSF,
  postHeight: 'none',
  stick: 'none',
  size: 'none',
  depthLimit: 'none',
  finish: 'mid',
  knots: 'some',
  checks: 'some',
  joints: 'small',
  resin: 'rather-not',
  stands: 'w52',
  waits: 'weeks',
  heating: 'first-winter',
  budget: 'fair',
  local: 'rather',
  order: ['movement', 'look', 'stoutness', 'cost', 'time', 'durability', 'local']
}

const oak = reference.woods.get('red-oak')
const madison = reference.places.get('madison-wi')
const asked = {
  wood: 'red-oak',
  breadth: 8 * INCH,
  depth: 10 * INCH,
  place: 'madison-wi',
  exposure: 'heated',
  seasoning: 'air',
  felledMonth: 1,
  yardWeeks: 52,
  kilnWeeks: 7,
  shopWeeks: 8,
  heating: 'first-winter'
}

describe('drying', () => {
  test('five years of drying, one section', async ({ bench }) => {
    if (!oak || !madison) throw new Error('no oak at Madison')
    const air = { temperatureC: madison.temperatureC, equilibrium: madison.temperatureC.map(() => 0.13) }
    const stages = [{ air, days: 5 * 365.25, surface: reference.drying.pile }]
    const spec = { wood: dryingWood(oak), breadth: 203, depth: 254, moisture: oak.greenWhole, startDay: 15, stages }
    await bench('five years of drying, one section', () => void dryingCourse(spec)).run()
  })
  test('a drying clock: yard, shop, frame and five years after, with its band', async ({ bench }) => {
    const read = readClock(asked, reference)
    if (!read.ok) throw new Error('refused')
    await bench('a drying clock', () => void clockOf(read.job, reference)).run()
  })
})

describe(`engine, ${sheet.woods.length * 8} options`, () => {
  test('judge every option, sizes included', async ({ bench }) => {
    await bench('judge every option, sizes included', () => void judgeAll(answered, { ...sheet }, reference)).run()
  })
  test('the same in a place not met before: its yards are dried first', async ({ bench }) => {
    const places = [...reference.places.keys()]
    let n = 0
    await bench('judge every option, new place', () => {
      judgeAll({ ...answered, place: places[n++ % places.length] ?? '' }, sheet, reference)
    }).run()
  })
  test('the live list beside the questions', async ({ bench }) => {
    await bench('the live list beside the questions', () => void settle(answered, { ...sheet }, reference)).run()
  })
  test('a whole brief, everything answered', async ({ bench }) => {
    await bench('a whole brief, everything answered', () => void makeBrief(answered, { ...sheet }, reference)).run()
  })
  test('a whole brief, nothing answered (64 ways carried)', async ({ bench }) => {
    await bench(
      'a whole brief, nothing answered (64 ways carried)',
      () => void makeBrief({}, { ...sheet }, reference)
    ).run()
  })
  test('all that would change it', async ({ bench }) => {
    await bench('all that would change it', () => void whatIfNow(answered, { ...sheet }, reference)).run()
  })
})
