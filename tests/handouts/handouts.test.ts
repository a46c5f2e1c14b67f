/** What the handouts say: worked by the engine, marked where recalled, and every word of them in order. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { largestBoxed, logTasks, nearest } from '../../src/handouts/log-end'
import { fourPieces, moveRows, shownShoulder, TARGETS } from '../../src/handouts/movement'
import { HANDOUTS } from '../../src/handouts/prose'
import { matrixRows, regionRows, woodsByClass } from '../../src/handouts/rot'
import { chartRows, recalled } from '../../src/handouts/species-chart'
import { STANDS, upkeepRows } from '../../src/handouts/upkeep'
import { KEYS } from '../../src/ui/handouts/shop-name'
import { outsideBy } from '../../src/wood/log-end'
import { reference, sheet } from '../reference'

const row = (id: string) => {
  const found = chartRows(reference).find((r) => r.id === id)
  if (found === undefined) throw new Error(id)
  return found
}

describe('the shop’s name', () => {
  it('is looked for under the names that the stores keep sheets under', () => {
    const store = (name: string) => readFileSync(new URL(`../../src/stores/${name}.ts`, import.meta.url), 'utf8')
    expect(store('invite')).toContain(`'${KEYS.invite}'`)
    expect(store('own-sheet')).toContain(`'${KEYS.ownSheet}'`)
  })
})

describe('the words', () => {
  it('name sources that exist', () => {
    for (const prose of HANDOUTS)
      for (const { source } of [prose, ...prose.sections.flatMap((s) => s.items)])
        if (source !== undefined) expect(Object.keys(reference.sources), prose.id).toContain(source)
  })
  it('carry a caution, and name places that exist', () => {
    for (const prose of HANDOUTS) {
      expect(prose.caution).toMatch(/[Pp]reliminary.*engineer.*code/)
      expect(() => regionRows(reference, prose.places)).not.toThrow()
    }
  })
})

describe('the species chart', () => {
  it('has every wood once, softwoods first', () => {
    const rows = chartRows(reference)
    expect(new Set(rows.map((r) => r.id))).toEqual(new Set(reference.woods.keys()))
    expect(rows).toHaveLength(reference.woods.size)
    const first = rows.findIndex((r) => r.kind === 'hardwood')
    expect(rows.slice(first).every((r) => r.kind === 'hardwood')).toBe(true)
  })
  it('white oak beside Douglas-fir, from the printed rows', () => {
    // Wood Handbook: 5.6 and 10.5 %, rupture 57,000 against 53,000 kPa (2021, Tables 4-3 and 5-3).
    const oak = row('white-oak')
    expect(oak.ratio.value).toBeCloseTo(10.5 / 5.6, 6)
    expect(oak.bending?.value).toBe(108)
    expect(row('douglas-fir').bending?.value).toBe(100)
    // 0.60 green volume with 68.3 % of water: 1,010 kg a cubic metre, the sum that anybody can do.
    expect(oak.green.value).toBeCloseTo(600 * 1.683, 0)
    expect(Number(oak.dry.value)).toBeLessThan(Number(oak.green.value))
  })
  it('keeps a recalled figure marked, also where it went into another', () => {
    const marks = [...reference.woods.values()].map((wood) => [
      ['memory', 'mixed'].includes(wood.gravityOrigin.mark) || ['memory', 'mixed'].includes(wood.greenOrigin.mark),
      recalled(row(wood.id).green.origin)
    ])
    for (const [known, shown] of marks) expect(shown).toBe(known)
    expect(marks.some(([known]) => known)).toBe(true)
  })
  it('gives no strength where none is published', () => {
    for (const wood of reference.woods.values())
      if (wood.strengthGreen === null) expect(row(wood.id).bending).toBeNull()
  })
})

describe('movement', () => {
  it('on a foot of white oak to 8 % is 12 × 10.5 % × 22/30 round the rings', () => {
    const oak = moveRows(reference).find((r) => r.id === 'white-oak')
    const dry = oak?.moves[TARGETS.indexOf(0.08)]
    expect(Number(dry?.tangential.foot.value) / INCH).toBeCloseTo(12 * 0.105 * (22 / 30), 6)
    expect(Number(dry?.radial.metre.value)).toBeCloseTo(1000 * 0.056 * (22 / 30), 6)
  })
  it('grows with drying, and is less towards the pith than round the rings', () => {
    for (const { moves } of moveRows(reference)) {
      const rings = moves.map((m) => Number(m.tangential.foot.value))
      expect(rings).toEqual([...rings].sort((a, b) => a - b))
      for (const m of moves) expect(Number(m.radial.foot.value)).toBeLessThanOrEqual(Number(m.tangential.foot.value))
    }
  })
  it('of four pieces: one checks, the flat one cups most, the quartered one loses least of its breadth', () => {
    const by = Object.fromEntries(fourPieces(reference).map((p) => [p.id, p]))
    expect(Object.values(by).map((p) => p.dried.boxed)).toEqual([false, false, true, false])
    const lost = (id: string) => {
      const face = by[id]?.dried.faces.top
      return face ? (face.before - face.after) / face.before : Number.NaN
    }
    expect(lost('quarter')).toBeLessThan(lost('free'))
    expect(lost('free')).toBeLessThan(lost('flat'))
    expect(by['flat']?.dried.faces.bottom.cup).toBeGreaterThan(Number(by['free']?.dried.faces.bottom.cup))
  })
  it('the housing is deeper than the widest gap', () => {
    const { gap, housing } = shownShoulder(reference)
    expect(Number(housing.value)).toBeGreaterThan(gap.high ?? Number.POSITIVE_INFINITY)
  })
})

describe('the log ends', () => {
  it('hold their pieces', () => {
    const tasks = logTasks(reference)
    expect(tasks).toHaveLength(6)
    for (const { piece, number } of tasks) expect(outsideBy(piece), `${number}`).toBeLessThanOrEqual(1e-9)
    expect(tasks.map((t) => t.dried.boxed)).toEqual([true, false, false, false, true, false])
  })
  it('the largest boxed square is the largest', () => {
    const end = { logDiameter: 15 * INCH, pith: [0.8 * INCH, -0.6 * INCH] as const, sapwood: 0 }
    const piece = largestBoxed(end)
    const more = piece.breadth / 2 + INCH / 4
    const [x, y] = end.pith
    expect(outsideBy(piece)).toBeLessThanOrEqual(0)
    expect(outsideBy({ ...piece, left: x - more, top: y - more, breadth: 2 * more, depth: 2 * more })).toBeGreaterThan(
      0
    )
  })
  it('the check is said to come through the least wood', () => {
    const [first] = logTasks(reference)
    expect(first && nearest(first.dried)).toBe('bottom')
  })
})

describe('rot and upkeep', () => {
  it('sorts Miami from Phoenix', () => {
    const [wet, dry] = regionRows(reference, [
      ['wet', 'miami-fl'],
      ['dry', 'phoenix-az']
    ])
    expect([wet?.hazard, dry?.hazard]).toEqual(['high', 'low'])
    expect(() => regionRows(reference, [['nowhere', 'atlantis']])).toThrow(/atlantis/)
  })
  it('the matrix gets no milder with use or class, and every wood stands in one class', () => {
    const order = ['enough', 'usually', 'depends', 'treat-advised', 'treat']
    const grid = matrixRows(reference).map((r) => r.verdicts.map((verdict) => order.indexOf(verdict)))
    for (const line of grid) expect(line).toEqual([...line].sort((a, b) => a - b))
    expect(woodsByClass(reference).flatMap((c) => c.woods)).toHaveLength(reference.woods.size)
  })
  it('coats last longer under a roof than in the rain; grey needs none', () => {
    const at = (stand: (typeof STANDS)[number][0]) => STANDS.findIndex(([where]) => where === stand)
    for (const { build, years } of upkeepRows(reference, sheet)) {
      const [rain, roof] = [years[at('weather')], years[at('roofed')]]
      if (build === 'none') expect(years.every((y) => y === null)).toBe(true)
      else expect(Number(roof?.high)).toBeGreaterThan(Number(rain?.high))
    }
  })
})
