/** Every question answered, outdoors: whatever the answers, the brief is sound. The other half stands in a file of its own, so that both run at once. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { reference } from '../reference'
import { few, full, spoiled, unfilled } from './any-answers'

const outdoors = fc.constantFrom(...['roofed', 'weather', 'ground'])

describe('the brief of any answers, outdoors', () => {
  it('5,000 full sets: no number in it is NaN or infinite, no sentence has a hole, it survives JSON', () => {
    fc.assert(
      fc.property(full, outdoors, (answers, exposure) => {
        const brief = makeBrief({ ...answers, exposure }, few, reference)
        expect(spoiled(brief)).toEqual([])
        expect(unfilled(brief)).toEqual([])
      }),
      { numRuns: 5000 }
    )
  }, 240_000)
})
