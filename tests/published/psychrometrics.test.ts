/** Saturation pressure and room humidity against a general-purpose psychrometrics library (ASHRAE formulas). */
import psychrolib from 'psychrolib'
import { beforeAll, describe, expect, it } from 'vitest'
import { saturationPressure } from '../../src/wood/air'

describe('saturation vapour pressure, against psychrolib', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI))
  const misfit = (t: number) => Math.abs(saturationPressure(t) / psychrolib.GetSatVapPres(t) - 1)
  // ISO 13788 prints a two-line fit; it stays within half a percent of the ASHRAE polynomial over a building's range.
  it.each([-15, -10, -5, 0.5, 5, 10, 15, 20, 21, 25, 30, 35, 40])('%d C within half a percent', (t) => {
    expect(misfit(t)).toBeLessThan(0.005)
  })
  // In deep cold the fit drifts to one percent of a pressure that is itself a hundredth of a room's: 0.4 Pa of 2,500.
  it.each([-30, -20])('%d C within 1.1 percent, the drift of the fit', (t) => {
    expect(misfit(t)).toBeLessThan(0.011)
    expect(Math.abs(saturationPressure(t) - psychrolib.GetSatVapPres(t))).toBeLessThan(1)
  })
})
