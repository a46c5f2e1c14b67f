/** How long the engine takes: one judging, the live list, a whole brief. Reported in the README, never asserted. */
import { describe, test } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { judgeAll } from '../../src/choice/judge'
import { settle } from '../../src/choice/settle'
import { FOOT, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

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

describe(`engine, ${sheet.woods.length * 8} options`, () => {
  test('judge every option, sizes included', async ({ bench }) => {
    await bench('judge every option, sizes included', () => void judgeAll(answered, sheet, reference)).run()
  })
  test('the live list beside the questions', async ({ bench }) => {
    await bench('the live list beside the questions', () => void settle(answered, sheet, reference)).run()
  })
  test('a whole brief, everything answered', async ({ bench }) => {
    await bench('a whole brief, everything answered', () => void makeBrief(answered, sheet, reference)).run()
  })
  test('a whole brief, nothing answered (64 ways carried)', async ({ bench }) => {
    await bench('a whole brief, nothing answered (64 ways carried)', () => void makeBrief({}, sheet, reference)).run()
  })
})
