/** The picture of moisture across a timber: labels keep apart, extremes stay inside. */
import fc from 'fast-check'
import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { readClock } from '../../src/choice/clock/door'
import { clockReport } from '../../src/choice/clock/report'
import { INCH } from '../../src/data/units'
import { AcrossTimber, beside } from '../../src/ui/pictures/AcrossTimber'
import { reference } from '../reference'

describe('labels', () => {
  it('never closer than they must be, in the order of their lines, inside the picture where there is room', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 10, max: 150, noNaN: true }), { minLength: 1, maxLength: 6 }), (wanted) => {
        const at = beside(wanted, 15, 14, 150)
        const order = wanted.map((y, i) => [y, at[i] ?? 0] as const).sort((a, b) => a[0] - b[0] || a[1] - b[1])
        for (let i = 1; i < order.length; i++) {
          expect((order[i]?.[1] ?? 0) - (order[i - 1]?.[1] ?? 0)).toBeGreaterThanOrEqual(15 - 1e-9)
        }
        for (const y of at) expect(y).toBeGreaterThanOrEqual(10)
        for (const y of at) expect(y).toBeLessThanOrEqual(150 + 1e-9)
      })
    )
  })
})

describe('drawn', () => {
  it.each([
    ['giant-sequoia', 'green'],
    ['douglas-fir', 'kiln'],
    ['red-oak', 'air']
  ])('%s, %s: every point inside the sheet, every moment named', (wood, seasoning) => {
    const read = readClock(
      {
        wood,
        breadth: 8 * INCH,
        depth: 10 * INCH,
        place: 'madison-wi',
        exposure: 'heated',
        seasoning,
        felledMonth: 1,
        yardWeeks: 52,
        kilnWeeks: 7,
        shopWeeks: 8,
        heating: 'first-winter'
      },
      reference
    )
    if (!read.ok) throw new Error('refused')
    const { curve, lines } = clockReport(read.job, reference)
    const labels = Object.fromEntries(lines.map((l) => [l.id, l.label]))
    const html = render(
      <AcrossTimber
        moments={curve.milestones}
        labels={labels}
        fibreSaturation={curve.fibreSaturation}
        thickness={8 * INCH}
      />
    )
    for (const l of lines) expect(html).toContain(l.label)
    for (const [, px, py] of html.matchAll(/[ML]([\d.]+) ([\d.]+)/g)) {
      expect(Number(px)).toBeLessThanOrEqual(320)
      expect(Number(py)).toBeGreaterThanOrEqual(0)
      expect(Number(py)).toBeLessThanOrEqual(176)
    }
    expect(html).not.toContain('NaN')
  })
})
