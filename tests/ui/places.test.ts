/** The table of places says what the engine says, for every place. */
import { describe, expect, it } from 'vitest'
import { monthsSay } from '../../src/ui/places/MonthStrip'
import { placeRows } from '../../src/ui/places/rows'
import { reference } from '../reference'

const rows = placeRows(reference)
const row = (id: string) => {
  const found = rows.find((r) => r.id === id)
  if (!found) throw new Error(id)
  return found
}

describe('places', () => {
  it('every one of them once, by state', () => {
    expect(rows.length).toBe(reference.places.size)
    expect(rows.length).toBeGreaterThanOrEqual(200)
    expect(rows.map((r) => r.state)).toEqual([...rows.map((r) => r.state)].sort())
  })
  it('the index is the published reckoning: Seattle 58.5, Madison 46.1, Las Vegas 0 (see tests/published/decay)', () => {
    expect(Number(row('seattle-wa').index.value)).toBeCloseTo(58.5, 1)
    expect(Number(row('madison-wi').index.value)).toBeCloseTo(46.1, 1)
    expect(Number(row('las-vegas-nv').index.value)).toBeCloseTo(0, 1)
    expect(row('miami-fl').hazard).toBe('high')
  })
  it('a heated room is drier than the air outside wherever winter is cold', () => {
    for (const id of ['duluth-mn', 'burlington-vt', 'madison-wi', 'fairbanks-ak']) {
      expect(Number(row(id).heated.value), id).toBeLessThan(Number(row(id).outdoors.value))
    }
  })
  it('the months add up to the index', () => {
    for (const r of rows) {
      expect(r.months.length, r.id).toBe(12)
      expect(
        r.months.reduce((sum, m) => sum + m, 0),
        r.id
      ).toBeCloseTo(Number(r.index.value), 9)
    }
  })
  it('the months in words', () => {
    const year = (...adds: number[]) => Array.from({ length: 12 }, (_, i) => adds[i] ?? 0)
    expect(monthsSay(year())).toBe('no month')
    expect(monthsSay(year(0, 0.49, 0.5, 3))).toBe('Mar to Apr, most in Apr')
    expect(monthsSay(year(1, 0, 0, 0, 2))).toBe('Jan and May, most in May')
    expect(monthsSay(year(1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 2, 3))).toBe('Nov to Jan, most in Dec')
    expect(monthsSay(Array.from({ length: 12 }, () => 2))).toBe('all year, most in Jan')
    expect(monthsSay(row('las-vegas-nv').months)).toBe('no month')
    expect(monthsSay(row('madison-wi').months)).toMatch(/^Apr to (Sep|Oct), most in (Jun|Jul|Aug)$/)
  })
})
