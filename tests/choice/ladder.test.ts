/** The size ladder: a door that never throws, woods leanest first, more load never leaner, no hole in what it says. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ladderRanges, readLadder } from '../../src/choice/ladder/door'
import { ladderReport } from '../../src/choice/ladder/report'
import { sectionsOf } from '../../src/choice/ladder/series'
import { FLOORS, KINDS, type LadderAsked, type LadderReport, LIVES, ROOFS } from '../../src/choice/ladder/types'
import { usesField } from '../../src/choice/ladder/uses'
import type { Quantity, Sentence } from '../../src/data/quantity'
import { FOOT, INCH, POUND_FORCE, PSF } from '../../src/data/units'
import { restingLoads } from '../../src/ui/size-ladder/points'
import { reference, sheet } from '../reference'

const usual: LadderAsked = {
  kind: 'king',
  span: 24 * FOOT,
  width: 10 * FOOT,
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
const shorter = { span: 14 * FOOT, width: 6 * FOOT }
const bearsFor = (kind: string) => (kind === 'joist' ? 'rooms' : 'roof')
const report = (change: Partial<LadderAsked> = {}): LadderReport => {
  const found = ladderReport({ ...usual, ...change }, reference, sheet)
  if ('problems' in found) throw new Error(JSON.stringify(found.problems))
  return found
}
const problems = (change: object) => {
  const found = ladderReport({ ...usual, ...change } as LadderAsked, reference, sheet)
  return 'problems' in found ? found.problems : []
}
const area = (q: Quantity | null) => (Array.isArray(q?.value) ? Number(q.value[0]) * Number(q.value[1]) : Infinity)

/** Everything in a report, however deep. */
function* inside(value: unknown): Generator<object> {
  if (typeof value !== 'object' || value === null) return
  yield value
  for (const next of Object.values(value)) yield* inside(next)
}
const quantitiesIn = (r: LadderReport) =>
  [...inside(r)].filter((v): v is Quantity => 'kind' in v && 'origin' in v && 'value' in v)
const sentencesIn = (r: LadderReport) => [...inside(r)].filter((v): v is Sentence => 'text' in v)

const JOBS: Partial<LadderAsked>[] = [
  ...KINDS.map((kind) => ({ ...shorter, kind, bears: bearsFor(kind) })),
  ...ROOFS.map((bears) => ({ bears })),
  ...FLOORS.map((bears) => ({ ...shorter, kind: 'beam', bears, lives: 'weather' })),
  { span: 60 * FOOT, width: 24 * FOOT, snow: 200 * PSF, kind: 'beam' },
  { span: 60 * FOOT, width: 24 * FOOT, snow: 200 * PSF, bears: 'roof-slate', kind: 'queen', lives: 'unheated' },
  { span: 60 * FOOT, width: 24 * FOOT, snow: 200 * PSF, kind: 'rafter' },
  { kind: 'post', height: 30 * FOOT, width: 24 * FOOT, span: 60 * FOOT, bears: 'storage' },
  {
    kind: 'ridge',
    loads: '1',
    point1: 4000 * POUND_FORCE,
    at1: 7 * FOOT,
    snow: 0,
    surface: 'planed',
    grade: 'select',
    dryness: 'dry',
    ...shorter
  }
]

describe('the door', () => {
  it('never throws, whatever comes, and what it lets through is sized', () => {
    const junk = fc.oneof(
      fc.double(),
      fc.string(),
      fc.constantFrom(null, undefined, Number.NaN, -1, '__proto__', 'constructor', true)
    )
    fc.assert(
      fc.property(
        fc.record(Object.fromEntries(Object.keys(usual).map((key) => [key, junk])), { requiredKeys: [] }),
        (change) => {
          const found = ladderReport({ ...usual, ...change } as unknown as LadderAsked, reference, sheet)
          if ('problems' in found) expect(found.problems.length).toBeGreaterThan(0)
          else expect(found.lines.length).toBeGreaterThan(0)
        }
      ),
      { numRuns: 60 }
    )
  })
  it.each([
    [{ span: 0 }, 'span'],
    [{ span: 200 * FOOT }, 'span'],
    [{ slope: Number.POSITIVE_INFINITY }, 'slope'],
    [{ slope: Number.NaN }, 'slope'],
    [{ width: 0 }, 'width'],
    [{ snow: 1e9 }, 'snow'],
    [{ kind: 'post', height: 0 }, 'height'],
    [{ kind: 'beam', loads: '1', point1: -1 }, 'point1'],
    [{ kind: 'beam', loads: '12', at2: 25 * FOOT }, 'at2'],
    [{ kind: 'beam', loads: '12', at1: -1 }, 'at1'],
    [{ kind: 'beam', loads: '1', point1: Number.NaN }, 'point1'],
    [{ kind: 'beam', loads: '15' }, 'loads'],
    [{ kind: 'beam', loads: '11' }, 'loads'],
    [{ surface: 'cubits' }, 'surface'],
    [{ wood: 'balsa' }, 'wood'],
    [{ kind: 'joist' }, 'bears'],
    [{ bears: 'rooms' }, 'bears'],
    [{ kind: 'beam', bears: 'deck', lives: 'heated' }, 'lives']
  ])('%o is refused at %s, alone', (change, field) => {
    expect(problems(change).map((p) => p.field)).toEqual([field])
  })
  it('does not judge what a job does not use', () => {
    expect(usesField('height', usual)).toBe(false)
    expect(problems({ height: -1, loads: 'zz', point1: Number.NaN })).toEqual([])
    expect(problems({ kind: 'beam', bears: 'rooms', slope: 99, snow: 1e9 })).toEqual([])
  })
  it('takes the ends of every range', () => {
    for (const kind of KINDS) {
      const ranges = ladderRanges(kind, reference)
      for (const end of ['least', 'most'] as const) {
        const numbers = Object.fromEntries(Object.entries(ranges).map(([field, range]) => [field, range[end]]))
        const read = readLadder({ ...usual, ...numbers, kind, bears: bearsFor(kind) }, reference)
        expect(read.ok, `${kind} ${end}`).toBe(true)
      }
    }
  })
})

describe.each(JOBS)('%o', (change) => {
  const r = report(change)
  it('has every wood with values once, those that pass before the rest', () => {
    const ids = r.lines.map((l) => l.wood)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.length).toBeGreaterThan(25)
    for (const id of ids) expect(reference.woods.has(id)).toBe(true)
    const passes = r.lines.map((l) => l.passes)
    expect(passes.indexOf(false) === -1 || passes.lastIndexOf(true) < passes.indexOf(false)).toBe(true)
    const used = r.lines.filter((l) => l.passes).map((l) => Number(l.used?.value))
    for (const n of used) expect(n > 0 && n <= 1).toBe(true)
  })
  it('runs from lean to stout', () => {
    const volumes = r.lines.filter((l) => l.passes).map((l) => Number(l.volume?.value))
    for (let i = 1; i < volumes.length; i++) expect(volumes[i]).toBeGreaterThanOrEqual((volumes[i - 1] ?? 0) - 1e-9)
  })
  it('says why the next lighter section fails', () => {
    for (const line of r.lines) {
      if (!line.lighter) continue
      expect(area(line.lighter.section)).toBeLessThanOrEqual(area(line.section))
      expect(line.lighter.lacks).not.toBe('')
    }
  })
  it('holds finite numbers with sources that resolve, and sentences without holes', () => {
    for (const q of quantitiesIn(r)) {
      for (const n of [q.value].flat()) expect(Number.isFinite(n), JSON.stringify(q)).toBe(true)
      for (const s of q.origin.sources) expect(Object.keys(reference.sources)).toContain(s.key)
      if (q.origin.formula) expect(reference.formulas[q.origin.formula], q.origin.formula).toBeDefined()
    }
    for (const s of sentencesIn(r)) {
      for (const [, name] of s.text.matchAll(/\{(\w+)\}/g)) expect(s.values?.[name ?? ''], s.text).toBeDefined()
      for (const name of Object.keys(s.values ?? {})) expect(s.text).toContain(`{${name}}`)
      expect(s.text).toMatch(/\.$/)
      expect(s.text).not.toMatch(/undefined|null|NaN/)
    }
  })
  it('says that it is preliminary and what is left out', () => {
    const said = r.cautions.map((s) => s.text).join(' ')
    expect(said).toMatch(/not for construction/i)
    expect(said).toMatch(/wind/)
    expect(said).toMatch(/earthquake/)
    expect(said).toMatch(/licensed engineer/)
  })
  it('where it is impossible in the wood chosen, says so and what would do', () => {
    const line = r.lines.find((l) => l.wood === r.asked.wood)
    expect(r.chosen.ways.length > 0).toBe(line?.passes !== true)
    expect(r.chosen.drawn === null).toBe(line?.passes !== true)
    if (r.chosen.ways.length > 0) {
      expect(r.chosen.ways[0]?.text).toMatch(/^Impossible/)
      expect(r.chosen.ways.at(-1)?.text).toMatch(/engineer/)
    }
  })
})

describe('more load', () => {
  it('is never leaner in any wood', () => {
    const kinds = fc.constantFrom('beam', 'ridge', 'purlin', 'rafter', 'post')
    const sizes = (r: LadderReport) => new Map(r.lines.map((l) => [l.wood, l.passes ? area(l.section) : Infinity]))
    fc.assert(
      fc.property(
        kinds,
        fc.constantFrom(...LIVES),
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (kind, lives, psf, k) => {
          const at = (snow: number) => sizes(report({ ...shorter, kind, lives, snow: snow * PSF }))
          const [light, heavy] = [at(psf), at(psf * k)]
          for (const [wood, least] of light) expect(heavy.get(wood), wood).toBeGreaterThanOrEqual(least)
        }
      ),
      { numRuns: 12 }
    )
  })
  it('asks more of a truss: pushes and pulls grow with snow', () => {
    const pushes = (snow: number) => report({ snow }).chosen.parts.map((p) => Number(p.push?.value ?? p.pull?.value))
    const [light, heavy] = [pushes(20 * PSF), pushes(60 * PSF)]
    expect(heavy[0]).toBeGreaterThan(light[0] ?? 0)
    expect(heavy[1]).toBeGreaterThan(light[1] ?? 0)
  })
})

describe('what it says', () => {
  it('a rafter is pushed, a tie and a king post are pulled', () => {
    const [rafter, tie, king] = report().chosen.parts
    expect([rafter?.name, tie?.name, king?.name]).toEqual(['Rafter', 'Tie', 'King post'])
    expect(rafter?.push && !rafter.pull).toBe(true)
    expect(tie?.pull && !tie.push).toBe(true)
    expect(king?.pull && !king.push).toBe(true)
  })
  it('the pull of a king-post truss is that of its statics: w L / 4 tan, by hand within its own weight', () => {
    // 28 psf of snow and 15 psf of roof up the slope, 10 ft apart, 24 ft span, 8 in 12: w = 460.3 lb/ft besides own weight.
    const w = (28 + 15 * Math.hypot(1, 8 / 12)) * 10
    const byHand = (w * 24) / 4 / (8 / 12)
    const own = Number(report().chosen.parts[1]?.pull?.value) / POUND_FORCE
    expect(own).toBeGreaterThan(byHand)
    expect(own).toBeLessThan(byHand * 1.25)
  })
  it('trusses and beams have their joints, others none', () => {
    expect(report().chosen.joints.map((j) => j.name)).toEqual([
      'Rafter foot in the tie',
      'King post hung on its pegs',
      'Rafters against the king post'
    ])
    expect(report({ kind: 'queen' }).chosen.joints.map((j) => j.name)).toEqual([
      'Rafter foot in the tie',
      'Queen post hung on its pegs'
    ])
    expect(report({ kind: 'beam', ...shorter }).chosen.joints.length).toBe(2)
    expect(report({ kind: 'purlin', ...shorter }).chosen.joints).toEqual([])
  })
  it('the heaviest stick: two people, a hoist, a crane', () => {
    const lift = (span: number) =>
      report({ kind: 'beam', span: span * FOOT, width: 4 * FOOT, snow: 0 }).lines.find((l) => l.wood === 'douglas-fir')
        ?.heaviest?.lift
    expect(lift(4)).toBe('two')
    expect(['hoist', 'crane']).toContain(lift(16))
    expect(lift(28)).toBe('crane')
  })
  it('marks what is derived from clear wood', () => {
    const lines = report().lines
    expect(new Set(lines.map((l) => l.values)).size).toBeGreaterThan(1)
    const derived = lines.find((l) => l.values === 'derived')
    expect(derived).toBeDefined()
    const says = report({ wood: derived?.wood ?? '' }).chosen.says
    expect(says.map((s) => s.text).join(' ')).toMatch(/indication only/)
  })
  it('a planed timber is half an inch under', () => {
    const sides = report({ surface: 'planed' }).lines.flatMap((l) => (l.section ? [l.section.value].flat() : []))
    for (const mm of sides) expect((mm / INCH) % 1).toBeCloseTo(0.5, 6)
  })
  it('more than one wood fails before all do', () => {
    const r = report({ span: 60 * FOOT, width: 24 * FOOT, snow: 200 * PSF, kind: 'beam' })
    expect(r.lines.some((l) => l.passes)).toBe(false)
    expect(r.says[0]?.text).toMatch(/^None of \d+ woods/)
  })
})

describe('loads at points', () => {
  const beam = { kind: 'beam', span: 16 * FOOT, width: 6 * FOOT, snow: 0 } as const
  const loaded = (loads: string, at: readonly number[] = [8, 4, 12, 2]) =>
    report({
      ...beam,
      loads,
      ...Object.fromEntries(at.map((ft, i) => [`at${i + 1}`, ft * FOOT])),
      ...Object.fromEntries(at.map((_, i) => [`point${i + 1}`, 1500 * POUND_FORCE]))
    })
  it('the moment of three loads and the even one is that of statics', () => {
    const r = loaded('123')
    const inputs = r.chosen.parts[0]?.checks.find((c) => c.name === 'Bending')?.used.origin.inputs ?? {}
    const w = Number(inputs['w']?.value) / (POUND_FORCE / FOOT)
    // Symmetrical: 1,500 lb at mid-span and at both quarters. ft-lb.
    const byHand = (w * 16 ** 2) / 8 + (1500 * 16) / 4 + 1500 * 4
    expect(Number(inputs['M']?.value) / (POUND_FORCE * FOOT) / byHand).toBeCloseTo(1, 3)
  })
  it('each more load asks for no less, and where it stands counts', () => {
    const [none, one, two] = ['', '1', '12'].map((l) =>
      area(loaded(l).lines.find((x) => x.wood === 'douglas-fir')?.section ?? null)
    )
    expect(one).toBeGreaterThanOrEqual(none ?? Infinity)
    expect(two).toBeGreaterThan(none ?? Infinity)
    const end = loaded('1', [1])
    const middle = loaded('1', [8])
    expect(area(end.chosen.parts[0]?.section ?? null)).toBeLessThan(area(middle.chosen.parts[0]?.section ?? null))
  })
  it('the same load mirrored asks for the same, joints and all', () => {
    const [left, right] = [loaded('1', [3]), loaded('1', [13])]
    expect(left.lines.map((l) => [l.wood, l.section?.value, l.joinery])).toEqual(
      right.lines.map((l) => [l.wood, l.section?.value, l.joinery])
    )
    for (const [i, j] of left.chosen.joints.entries()) {
      const used = (of: typeof left) => Number(of.chosen.joints[i]?.says.values?.['used']?.value)
      expect(used(left), j.name).toBeCloseTo(used(right), 6)
    }
  })
  it('are told with their places, nearest to the end first', () => {
    const { loads, chosen } = loaded('12')
    expect(loads.text).toMatch(/\{load1\} at \{at1\} from one end and \{load2\} at \{at2\}/)
    expect(Number(loads.values?.['at1']?.value)).toBeCloseTo(4 * FOOT, 6)
    expect(chosen.drawn?.points?.map((p) => Math.round(p.at / FOOT))).toEqual([4, 8])
  })
})

describe('series', () => {
  it('metric: steps of 25 mm, no deeper than twice the breadth, none below the tables’ least', () => {
    const series = reference.series.get('metric')
    if (!series) throw new Error('no metric series')
    const all = sectionsOf(series, sheet)
    expect(all.length).toBeGreaterThan(30)
    for (const [b, d] of all) {
      expect([b % 25, d % 25]).toEqual([0, 0])
      expect(d >= b && d <= 2 * b && b >= 127 && d <= 400).toBe(true)
    }
    const areas = all.map(([b, d]) => b * d)
    expect(areas).toEqual([...areas].sort((p, q) => p - q))
    const found = report({ surface: 'metric' })
    for (const l of found.lines) for (const mm of l.section ? [l.section.value].flat() : []) expect(mm % 25).toBe(0)
    expect(found.says.at(-1)?.text).toMatch(/millimetres/)
  })
  it('planed takes half an inch off each side of the shop’s own', () => {
    const [full, planed] = ['full-sawn', 'planed'].map((id) => sectionsOf(reference.series.get(id) as never, sheet))
    expect(planed).toHaveLength(full?.length ?? 0)
    const sum = (list: typeof full) => (list ?? []).reduce((n, [b, d]) => n + b + d, 0)
    expect(sum(full) - sum(planed)).toBeCloseTo((full?.length ?? 0) * INCH, 6)
  })
})
