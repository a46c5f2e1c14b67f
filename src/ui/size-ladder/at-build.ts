/** The example that the page begins with, and what goes with it to the browser. */
import * as v from 'valibot'
import { ladderRanges } from '../../choice/ladder/door'
import { ladderReport } from '../../choice/ladder/report'
import type { LadderAsked, LadderReport } from '../../choice/ladder/types'
import { sampleShop } from '../../data/content'
import type { Reference } from '../../data/reference'
import { shopSheetSchema } from '../../data/shop-schema'
import { FOOT, PSF } from '../../data/units'
import { libraryOf, rounded } from '../bench/at-build'
import type { LadderGiven } from './LadderBench'
import { restingLoads } from './points'

/** A king-post truss of 24 ft over a heated room. */
export const EXAMPLE: LadderAsked = {
  kind: 'king',
  span: 24 * FOOT,
  width: 12 * FOOT,
  slope: 8 / 12,
  height: 9 * FOOT,
  bears: 'roof',
  snow: 40 * PSF,
  lives: 'heated',
  dryness: 'green',
  grade: 'no1',
  surface: 'full-sawn',
  loads: '',
  ...restingLoads(24 * FOOT),
  wood: 'douglas-fir'
}

/** @throws Error where the door refuses, which at build is a mistake of ours. */
export function reportAsked(change: Partial<LadderAsked>, reference: Reference): LadderReport {
  const found = ladderReport({ ...EXAMPLE, ...change }, reference, v.parse(shopSheetSchema, sampleShop))
  if ('problems' in found) throw new Error(`size ladder: ${found.problems.map((p) => p.field).join(', ')}`)
  return found
}

export function givenOf(reference: Reference): LadderGiven {
  // What is asked is kept to the last digit: it is what the fields show and the link says.
  const report = { ...rounded(reportAsked({}, reference)), asked: EXAMPLE }
  const known = new Set(report.lines.map((l) => l.wood))
  const woods = [...reference.woods.values()]
    .filter(({ id }) => known.has(id))
    .map(({ id, name, said }) => ({ id, name, said }))
    .sort((a, b) => a.name.localeCompare(b.name))
  return {
    report,
    woods,
    ranges: { level: ladderRanges('beam', reference), sloped: ladderRanges('king', reference) },
    library: libraryOf(report, reference)
  }
}
