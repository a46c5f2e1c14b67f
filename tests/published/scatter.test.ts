/** Coefficients of variation against the published standard deviations of clear wood. */
import { describe, expect, it } from 'vitest'
import { reference } from '../reference'

/**
 * ASTM D2555, clear wood in the green condition, means and standard deviations as printed (psi; stiffness in 1000 psi), read
 * in a transcription of the table. Woods without a survey of their own carry standard deviations of the general coefficients.
 * Columns: bending, stiffness, compression along the grain, shear, compression across it, specific gravity.
 */
const ROWS = {
  baldcypress: [
    [6640, 1062],
    [1184, 260],
    [3580, 644],
    [812, 114],
    [403, 113],
    [0.43, 0.043]
  ],
  'eastern hemlock': [
    [6420, 1027],
    [1073, 236],
    [3080, 554],
    [848, 119],
    [359, 101],
    [0.39, 0.039]
  ]
} as const
const COLUMNS = [
  'bending',
  'elasticity',
  'compression-parallel',
  'shear',
  'compression-perpendicular',
  'gravity'
] as const

describe('scatter of clear wood', () => {
  for (const [wood, row] of Object.entries(ROWS))
    it(`${wood}: each standard deviation is our coefficient of its mean, within half a unit of its last place`, () => {
      for (const [i, id] of COLUMNS.entries()) {
        const [mean = 0, deviation = 0] = row[i] ?? []
        const place = id === 'gravity' ? 0.0005 : 0.5
        expect(Math.abs(reference.scatter[id].of * mean - deviation), `${wood}, ${id}`).toBeLessThanOrEqual(
          place + 1e-9
        )
      }
    })
  it('every coefficient has a source and is marked as recalled or read', () => {
    for (const { of, origin } of Object.values(reference.scatter)) {
      expect(of).toBeGreaterThan(0)
      expect(['memory', 'seen', 'mixed']).toContain(origin.mark)
      expect(origin.sources.length).toBeGreaterThan(0)
    }
  })
})
