/** A single member: what must hold of any, what is refused, and a way out that is worked out. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../src/choice/frame-for'
import { memberRanges, snowOnOneSide, snowOnRoof, usualSpec } from '../../src/choice/ladder/member-for'
import type { Wood } from '../../src/data/reference'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { sizeFrame } from '../../src/frame/job'
import { type MemberSize, sizeMember } from '../../src/frame/member'
import type { MemberKind, MemberSpec } from '../../src/frame/member-spec'
import type { Section } from '../../src/frame/values'
import { reference } from '../reference'
import { series, values } from './invented'

const ranges = memberRanges(reference)
const fir = reference.woods.get('douglas-fir') as Wood
const KINDS: readonly MemberKind[] = [
  'beam',
  'joist',
  'purlin',
  'ridge',
  'rafter',
  'post',
  'king',
  'king-struts',
  'queen'
]
const FLOORS = ['joist']
const measures = { span: 16 * FOOT, width: 8 * FOOT, slope: 6 / 12, height: 9 * FOOT }

/** A roof or a floor of that kind, 30 psf of snow, 16 ft. */
function spec(kind: MemberKind, change: Partial<MemberSpec> = {}): MemberSpec {
  const floor = FLOORS.includes(kind)
  return {
    ...usualSpec(reference, fir, false, { ...measures, slope: floor ? 0 : measures.slope }),
    ...(floor
      ? { floorDead: 12 * PSF, floor: [{ load: 40 * PSF, duration: 'ten-years' }], width: 3 * FOOT }
      : { dead: 15 * PSF, roof: [{ load: 30 * PSF, duration: 'snow' }] }),
    ...change
  }
}
const size = (kind: MemberKind, change: Partial<MemberSpec> = {}, strength = 1): MemberSize => {
  const found = sizeMember(kind, spec(kind, change), series, () => values(strength), ranges)
  if (!found.ok) throw new Error(`refused: ${JSON.stringify(found)}`)
  return found
}
const area = (s: Section | null | undefined) => (s ? s[0] * s[1] : Number.POSITIVE_INFINITY)
/** Area of the largest timber, infinite where one does not pass: a tie follows its rafter's breadth, so parts alone may swap. */
const need = (kind: MemberKind, change: Partial<MemberSpec> = {}, strength = 1) =>
  Math.max(...size(kind, change, strength).members.map((m) => area(m.sized.section)))

const kinds = fc.constantFrom(...KINDS)
const span = fc.double({ min: 8 * FOOT, max: 30 * FOOT, noNaN: true })
const more = fc.double({ min: 1, max: 2, noNaN: true })

describe('what must hold of any member', () => {
  it('a longer span is never smaller', () => {
    fc.assert(
      fc.property(kinds, span, more, (kind, s, k) => {
        expect(need(kind, { span: s * k })).toBeGreaterThanOrEqual(need(kind, { span: s }))
      })
    )
  })
  it('more load on the roof or floor, for good or not, is never smaller', () => {
    fc.assert(
      fc.property(kinds, span, more, fc.constantFrom('dead', 'roof', 'floor'), (kind, s, k, which) => {
        const plain = spec(kind, { span: s })
        const heavier =
          which === 'dead'
            ? { dead: plain.dead * k, floorDead: plain.floorDead * k }
            : { [which]: plain[which].map((v) => ({ ...v, load: v.load * k })) }
        expect(need(kind, { span: s, ...heavier })).toBeGreaterThanOrEqual(need(kind, { span: s }))
      })
    )
  })
  it('a wider spacing is never smaller', () => {
    fc.assert(
      fc.property(kinds, span, more, (kind, s, k) => {
        const { width } = spec(kind)
        expect(need(kind, { span: s, width: width * k })).toBeGreaterThanOrEqual(need(kind, { span: s }))
      })
    )
  })
  it('a weaker wood is never smaller', () => {
    fc.assert(
      fc.property(kinds, span, more, (kind, s, k) => {
        expect(need(kind, { span: s }, 1 / k)).toBeGreaterThanOrEqual(need(kind, { span: s }))
      })
    )
  })
  it('wet, unseasoned or heavier timber is never smaller', () => {
    fc.assert(
      fc.property(kinds, span, (kind, s) => {
        const dry = need(kind, { span: s })
        for (const change of [{ wet: true }, { unseasoned: true }, { density: 1000 }])
          expect(need(kind, { span: s, ...change })).toBeGreaterThanOrEqual(dry)
      })
    )
  })
  it('snow on one side as well is never smaller; floor and roof together are never smaller than either', () => {
    fc.assert(
      fc.property(kinds, span, (kind, s) => {
        const oneSided = { leeward: 43 * PSF, windward: 0 }
        expect(need(kind, { span: s, oneSided })).toBeGreaterThanOrEqual(need(kind, { span: s }))
        if (['joist', 'purlin', 'ridge', 'rafter'].includes(kind)) return
        const floor = [{ load: 20 * PSF, duration: 'ten-years' }] as const
        const both = need(kind, { span: s, floor, floorDead: 10 * PSF })
        expect(both).toBeGreaterThanOrEqual(need(kind, { span: s, floorDead: 10 * PSF }))
        expect(both).toBeGreaterThanOrEqual(need(kind, { span: s, floorDead: 10 * PSF, floor, roof: [] }))
      })
    )
  })
  it('a taller post, and one loaded farther off its axis, is never smaller', () => {
    const height = fc.double({ min: 4 * FOOT, max: 14 * FOOT, noNaN: true })
    fc.assert(
      fc.property(height, more, fc.double({ min: 0, max: 6 * INCH, noNaN: true }), (h, k, seat) => {
        const loaded = { width: 16 * FOOT, span: 30 * FOOT }
        const plain = need('post', { ...loaded, height: h, seat })
        expect(need('post', { ...loaded, height: h * k, seat })).toBeGreaterThanOrEqual(plain)
        expect(need('post', { ...loaded, height: h, seat: seat * k })).toBeGreaterThanOrEqual(plain)
      })
    )
  })
  it('what it gives passes its checks, the next lighter section does not, and each check names its clause', () => {
    fc.assert(
      fc.property(kinds, span, (kind, s) => {
        for (const m of size(kind, { span: s }).members) {
          for (const c of m.sized.checks) expect(c.clause).toMatch(/^(nds|ibc) /)
          if (m.sized.section) expect(m.sized.governing?.ratio).toBeLessThanOrEqual(1)
          if (m.lighter) {
            expect(m.lighter.governing?.ratio).toBeGreaterThan(1)
            expect(area(m.lighter.section)).toBeLessThanOrEqual(area(m.sized.section))
          } else if (m.sized.section) expect([series[0]?.[0], 8 * INCH]).toContain(Math.min(...m.sized.section))
        }
      })
    )
  })
})

describe('pushes and pulls have their signs', () => {
  it.each([
    ['king', ['king-post', 'tie'], ['rafter']],
    ['king-struts', ['king-post', 'tie'], ['rafter', 'strut']],
    ['queen', ['queen-post', 'tie'], ['rafter', 'upper-rafter', 'straining-beam']]
  ] as const)('%s', (kind, pulled, pushed) => {
    const { members } = size(kind)
    expect(members.map((m) => m.id).sort()).toEqual([...pulled, ...pushed].sort())
    for (const id of pulled) expect(members.find((m) => m.id === id)?.pull, id).toBeLessThan(0)
    for (const id of pushed) expect(members.find((m) => m.id === id)?.push, id).toBeGreaterThan(0)
    for (const id of pushed) expect(members.find((m) => m.id === id)?.pull, id).toBe(0)
  })
  it('snow on one side pushes a queen post that even snow only pulls', () => {
    const push = (oneSided: MemberSpec['oneSided']) =>
      size('queen', { oneSided }).members.find((m) => m.id === 'queen-post')?.push
    expect(push(null)).toBe(0)
    expect(push({ leeward: 40 * PSF, windward: 0 })).toBeGreaterThan(0)
  })
  it('rafters thrust where they lean on each other, not on a ridge beam', () => {
    const thrust = (ridgeBeam: boolean) => size('rafter', { ridgeBeam, span: 10 * FOOT, width: 4 * FOOT }).members[0]
    expect(thrust(true)?.thrust).toBe(0)
    // Half the roof over a run of 10 ft at 6 on 12: w run / (2 tan), w with the own weight.
    const w = ((15 * Math.hypot(1, 0.5) + 30) * PSF * 4 * FOOT) / 1e6
    const least = (w * 10 * FOOT) / (2 * 0.5)
    expect(thrust(false)?.thrust).toBeGreaterThan(least)
    expect(thrust(false)?.thrust).toBeLessThan(1.15 * least)
  })
  it('a king post without a loft hangs hardly anything: the tie’s own weight', () => {
    const post = size('king').members.find((m) => m.id === 'king-post')
    expect(-(post?.pull ?? 0)).toBeLessThan(2000)
    const loft = size('king', { floor: [{ load: 20 * PSF, duration: 'ten-years' }], floorDead: 10 * PSF })
    // Half of 30 psf on 16 by 8 ft comes to it, and half of the tie.
    const hung = ((30 * PSF * 8 * FOOT) / 1e6) * 8 * FOOT
    expect(loft.members.find((m) => m.id === 'king-post')?.pull).toBeLessThan(-hung)
    expect(loft.members.find((m) => m.id === 'king-post')?.pull).toBeGreaterThan(-1.2 * hung)
  })
})

describe('against the brief', () => {
  it('a king post sized alone has the brief’s rafter and tie, in nine spans of ten and never less', () => {
    const spans = Array.from({ length: 40 }, (_, i) => (12 + i * 0.6) * FOOT)
    for (const s of spans) {
      const own = spec('king', { span: s })
      const job = {
        ...own,
        form: 'king',
        carries: 'truss',
        spacing: own.width,
        variable: own.roof,
        postHeight: null
      } as const
      const brief = sizeFrame(job, series, series, () => values(1))
      const alone = size('king', { span: s }).members
      const pair = (id: string) =>
        [brief, alone].map((list) => area((list as typeof alone).find((m) => m.id === id)?.sized.section))
      for (const id of ['rafter', 'tie', 'king-post']) expect(pair(id)[0], `${id} ${s}`).toBe(pair(id)[1])
    }
  })
  it('the brief may ask for struts by one word; its rafter is then leaner on a long span', () => {
    const own = spec('king', { span: 32 * FOOT, width: 12 * FOOT })
    const job = { ...own, carries: 'truss', spacing: own.width, variable: own.roof, postHeight: null } as const
    const rafter = (form: 'king' | 'king-struts') =>
      area(sizeFrame({ ...job, form }, series, series, () => values(1))[0]?.sized.section)
    expect(rafter('king-struts')).toBeLessThan(rafter('king'))
  })
})

describe('out of range is refused, with the range', () => {
  const cases: readonly (readonly [MemberKind, Partial<MemberSpec>, keyof MemberSpec])[] = [
    ['beam', { span: 0 }, 'span'],
    ['king', { span: 200 * FOOT }, 'span'],
    ['rafter', { slope: Math.tan(Math.PI / 2) }, 'slope'],
    ['king', { slope: Number.POSITIVE_INFINITY }, 'slope'],
    ['queen', { slope: 0 }, 'slope'],
    ['joist', { width: 0 }, 'width'],
    ['beam', { dead: 1e6 * PSF }, 'dead'],
    ['beam', { roof: [{ load: -1, duration: 'snow' }] }, 'roof'],
    ['joist', { floor: [{ load: Number.NaN, duration: 'ten-years' }] }, 'floor'],
    ['king', { oneSided: { leeward: 1e9, windward: 0 } }, 'oneSided'],
    ['post', { height: 100 * FOOT }, 'height'],
    ['post', { seat: -1 }, 'seat'],
    ['queen', { queenAt: 0.5 }, 'queenAt'],
    ['beam', { points: [{ at: 17 * FOOT, dead: 1, roof: 0, floor: 0 }] }, 'points'],
    ['beam', { points: [{ at: 1, dead: 1e9, roof: 0, floor: 0 }] }, 'points'],
    ['beam', { unsupported: 17 * FOOT }, 'unsupported']
  ]
  it.each(cases)('%s %o', (kind, change, field) => {
    const found = sizeMember(kind, spec(kind, change), series, () => values(1), ranges)
    expect(found).toMatchObject({ ok: false, why: 'range', field })
    if (found.ok || found.why !== 'range') throw new Error('not refused')
    expect(found.permitted.least).toBeLessThan(found.permitted.most)
    expect(found.value >= found.permitted.least && found.value <= found.permitted.most).toBe(false)
  })
  it('the ends of every range are permitted', () => {
    for (const kind of KINDS)
      for (const end of ['least', 'most'] as const) {
        const change = {
          span: ranges.span[end],
          width: ranges.width[end],
          height: ranges.height[end],
          slope: ranges.slope[end],
          seat: ranges.seat[end],
          queenAt: ranges.queenAt[end]
        }
        expect(sizeMember(kind, spec(kind, change), series, () => values(1), ranges).ok, `${kind} ${end}`).toBe(true)
      }
  })
  it('no sections, or a wood with no values, is refused', () => {
    expect(sizeMember('beam', spec('beam'), [], () => values(1), ranges)).toEqual({ ok: false, why: 'no-sections' })
    expect(sizeMember('beam', spec('beam'), series, () => null, ranges)).toEqual({ ok: false, why: 'no-values' })
  })
})

describe('an impossible job says what would make it possible', () => {
  const hard: readonly (readonly [MemberKind, Partial<MemberSpec>])[] = [
    ['beam', { span: 40 * FOOT, width: 16 * FOOT }],
    ['joist', { span: 40 * FOOT, width: 8 * FOOT }],
    ['rafter', { span: 30 * FOOT, width: 12 * FOOT }],
    ['ridge', { span: 36 * FOOT, width: 14 * FOOT }],
    ['king', { span: 60 * FOOT, width: 20 * FOOT }],
    ['king-struts', { span: 60 * FOOT, width: 24 * FOOT, roof: [{ load: 120 * PSF, duration: 'snow' }] }],
    ['queen', { span: 60 * FOOT, width: 24 * FOOT }],
    ['beam', { span: 30 * FOOT, points: [{ at: 15 * FOOT, dead: 60_000, roof: 0, floor: 0 }] }]
  ]
  it.each(hard)('%s %o: the longest span passes and a hair more does not, and so the spacing', (kind, change) => {
    const found = size(kind, change)
    expect(found.passes).toBe(false)
    const { span: shorter, width } = found.wayOut ?? { span: null, width: null }
    const full = spec(kind, change)
    const at = (s: number) => full.points.map((p) => ({ ...p, at: (p.at * s) / full.span }))
    const passes = (s: number) => size(kind, { ...change, span: s, points: at(s) }).passes
    expect(shorter).not.toBeNull()
    expect(passes(shorter ?? 0)).toBe(true)
    expect(passes((shorter ?? 0) + 10)).toBe(false)
    if (width !== null) {
      expect(size(kind, { ...change, width }).passes).toBe(true)
      expect(size(kind, { ...change, width: width + 10 }).passes).toBe(false)
    } else expect(size(kind, { ...change, width: ranges.width.least }).passes).toBe(false)
  })
  it('a truss is offered in place of a beam or rafter only where it passes', () => {
    const beam = size('beam', { span: 30 * FOOT, width: 12 * FOOT })
    expect(beam.passes).toBe(false)
    expect(beam.wayOut?.trusses.length).toBeGreaterThan(0)
    for (const form of ['king', 'king-struts', 'queen'] as const)
      expect(size(form, { span: 30 * FOOT, width: 12 * FOOT }).passes).toBe(beam.wayOut?.trusses.includes(form))
    const rafter = size('rafter', { span: 30 * FOOT, width: 12 * FOOT })
    expect(rafter.passes).toBe(false)
    for (const form of ['king', 'king-struts', 'queen'] as const)
      expect(size(form, { span: 60 * FOOT, width: 12 * FOOT }).passes).toBe(rafter.wayOut?.trusses.includes(form))
  })
  it('no truss is offered under a floor or a flat roof', () => {
    expect(size('joist', { span: 40 * FOOT, width: 8 * FOOT }).wayOut?.trusses).toEqual([])
    expect(size('beam', { span: 40 * FOOT, width: 16 * FOOT, slope: 0 }).wayOut?.trusses).toEqual([])
  })
  it('a post too high is told how high it may be', () => {
    const tall = {
      height: 30 * FOOT,
      span: 40 * FOOT,
      width: 24 * FOOT,
      roof: [{ load: 120 * PSF, duration: 'snow' as const }]
    }
    const { wayOut } = size('post', tall)
    expect(wayOut?.span).toBeNull()
    expect(size('post', { ...tall, height: wayOut?.height ?? 0 }).passes).toBe(true)
    expect(size('post', { ...tall, height: (wayOut?.height ?? 0) + 10 }).passes).toBe(false)
  })
  it('loads at points: those of the share that is named pass, a hundredth more does not', () => {
    const heavy = (share: number) => ({
      span: 16 * FOOT,
      points: [
        { at: 6 * FOOT, dead: 60_000 * share, roof: 0, floor: 0 },
        { at: 12 * FOOT, dead: 0, roof: 30_000 * share, floor: 0 }
      ]
    })
    const { passes, wayOut } = size('beam', heavy(1))
    expect(passes).toBe(false)
    const share = wayOut?.points?.share ?? 0
    expect(share).toBeGreaterThan(0.05)
    expect(wayOut?.points?.largest).toBeCloseTo(60_000 * share, 6)
    expect(size('beam', heavy(share)).passes).toBe(true)
    expect(size('beam', heavy(share + 0.01)).passes).toBe(false)
    expect(size('beam', { span: 60 * FOOT }).wayOut?.points ?? null).toBeNull()
  })
  it('what passes has no way out to seek', () => expect(size('beam', { span: 8 * FOOT }).wayOut).toBeNull())
})

describe('roof and floor on one post', () => {
  it('0.75 of both outweighs either: 30 psf of snow and 40 of people on 160 sq ft, no dead load', () => {
    const both = {
      dead: 0,
      density: 0,
      span: 20 * FOOT,
      width: 8 * FOOT,
      floor: [{ load: 40 * PSF, duration: 'ten-years' as const }]
    }
    const square = (160 * FOOT * FOOT) / 1e6
    expect(size('post', both).members[0]?.push).toBeCloseTo(0.75 * 70 * PSF * square, 3)
    expect(size('post', { ...both, roof: [] }).members[0]?.push).toBeCloseTo(40 * PSF * square, 3)
  })
  it('a beam in two spans bears on its middle 10/8 of a span, and needs the wider seat there', () => {
    const [beam] = size('beam', { spans: 2, span: 10 * FOOT }).members
    expect((beam?.bearing?.middle ?? 0) / (beam?.bearing?.end ?? 1)).toBeCloseTo(
      (beam?.ends?.middle ?? 0) / (beam?.ends?.end ?? 1),
      9
    )
    expect(beam?.bearing?.middle).toBeGreaterThan(2.5 * (beam?.bearing?.end ?? 0))
  })
})

describe('what is not checked is said', () => {
  it.each(KINDS)('%s leaves out its joints, wind and earthquake', (kind) =>
    expect(size(kind).notChecked).toEqual(expect.arrayContaining(['joints', 'wind-uplift', 'earthquake']))
  )
  it('and what is its own', () => {
    expect(size('joist').notChecked).toContain('vibration')
    expect(size('purlin').notChecked).toContain('down-slope')
    expect(size('rafter', { ridgeBeam: false }).notChecked).toContain('feet')
    expect(size('rafter').notChecked).not.toContain('feet')
    expect(size('post').notChecked).toContain('sway')
  })
})

describe('from the reference', () => {
  const on = { ground: 40 * PSF, heated: true, slope: 6 / 12, sheds: false }
  it('snow is that of the brief, and less only where it sheds', () => {
    expect(snowOnRoof(reference, on)).toBeCloseTo(28 * PSF, 6)
    expect(snowOnRoof(reference, { ...on, sheds: true })).toBeCloseTo((28 * PSF * (70 - 26.565)) / 65, 2)
  })
  it('one-sided snow is for rafters and trusses', () => {
    expect(snowOnOneSide(reference, 'beam', spec('beam'), on)).toBeNull()
    expect(snowOnOneSide(reference, 'king', spec('king'), on)).toEqual({ leeward: 40 * PSF, windward: 0 })
  })
  it('Douglas-fir, 24 ft at 8 on 12, 12 ft apart, 40 psf: every truss passes with shop sizes', () => {
    const wide = { span: 24 * FOOT, width: 12 * FOOT, slope: 8 / 12 }
    for (const kind of ['king', 'king-struts', 'queen'] as const) {
      const found = sizeMember(kind, spec(kind, wide), series, valuesOf(fir, 'No.1', reference), ranges)
      expect(found.ok && found.passes, kind).toBe(true)
    }
  })
})
