/** Trusses by statics against a frame solved by stiffness (`plane-frame.ts`, on `ml-matrix`), the engine's work nowhere in it. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FOOT } from '../../src/data/units'
import {
  bentBetween,
  kingStrutJoints,
  type PartId,
  type TrussForm,
  type TrussLoad,
  type TrussShape,
  trussParts
} from '../../src/frame/truss-forces'
import { type Frame, solveFrame } from './plane-frame'

const shapes = fc.record({
  span: fc.double({ min: 10 * FOOT, max: 60 * FOOT, noNaN: true }),
  pitch: fc.double({ min: 2 / 12, max: 2, noNaN: true }),
  queenAt: fc.double({ min: 0.2, max: 0.42, noNaN: true })
})
const line = fc.double({ min: 0.5, max: 20, noNaN: true })
const loads = fc.record({ left: line, right: line, tie: fc.double({ min: 0, max: 5, noNaN: true }) })
const parts = (form: TrussForm, shape: TrussShape, load: TrussLoad, id: PartId) =>
  trussParts(form, shape, load).filter((p) => p.id === id)
/** Within a part in a million of the largest force about. */
const near = (got: number | undefined, want: number | undefined, scale: number) =>
  expect(Math.abs((got ?? Number.NaN) - (want ?? Number.NaN))).toBeLessThan(1e-5 * scale)
const held = { A: 'pin', B: 'roller' } as const

describe('the solver itself, against a textbook beam', () => {
  it('propped over its middle: 10/8 of a span’s load there, w l2 / 8 over it', () => {
    const out = solveFrame({
      joints: { A: [0, 0], M: [1000, 0], B: [2000, 0] },
      bars: {
        l: { from: 'A', to: 'M', hinge: 'from', load: 2 },
        r: { from: 'M', to: 'B', hinge: 'to', load: 2 }
      },
      held: { A: 'pin', M: 'roller', B: 'roller' }
    })
    expect(out['l']?.moment[1]).toBeCloseTo((-2 * 1000 ** 2) / 8, 3)
  })
})

describe('king post without struts', () => {
  const frame = ({ span, pitch }: TrussShape, load: TrussLoad): Frame => ({
    joints: { A: [0, 0], B: [span, 0], K: [span / 2, 0], R: [span / 2, (span / 2) * pitch] },
    bars: {
      left: { from: 'A', to: 'R', load: load.left },
      right: { from: 'B', to: 'R', load: load.right },
      tieL: { from: 'A', to: 'K', load: load.tie },
      tieR: { from: 'K', to: 'B', load: load.tie },
      post: { from: 'K', to: 'R' }
    },
    held
  })
  it('every force is that of the solved frame, loads alike or not', () => {
    fc.assert(
      fc.property(shapes, loads, (shape, load) => {
        const got = (id: PartId) => parts('king', shape, load, id)
        const want = solveFrame(frame(shape, load))
        const scale = want['left']?.push[0] ?? 1
        near(got('rafter')[0]?.push, want['left']?.push[0], scale)
        near(got('rafter')[1]?.push, want['right']?.push[0], scale)
        near(got('tie')[0]?.push, want['tieL']?.push[0], scale)
        near(got('king-post')[0]?.push, want['post']?.push[0], scale)
      })
    )
  })
})

describe('king post with struts', () => {
  const joints = ({ span, pitch }: TrussShape): Frame['joints'] => {
    const rise = (span / 2) * pitch
    return {
      A: [0, 0],
      B: [span, 0],
      K: [span / 2, 0],
      R: [span / 2, rise],
      D: [span / 4, rise / 2],
      E: [(3 * span) / 4, rise / 2]
    }
  }
  const web = {
    strutL: { from: 'K', to: 'D' },
    strutR: { from: 'K', to: 'E' },
    post: { from: 'K', to: 'R' },
    tieL: { from: 'A', to: 'K' },
    tieR: { from: 'K', to: 'B' }
  } as const
  it('pinned, any loads at its joints: every force is that of the solved truss', () => {
    const load = fc.double({ min: 0, max: 5e4, noNaN: true })
    fc.assert(
      fc.property(shapes, load, load, load, load, (shape, left, right, ridge, hung) => {
        const got = kingStrutJoints(shape.pitch, { left, right, ridge, hung })
        const want = solveFrame({
          joints: joints(shape),
          bars: {
            ...web,
            lowL: { from: 'A', to: 'D' },
            upL: { from: 'D', to: 'R' },
            lowR: { from: 'B', to: 'E' },
            upR: { from: 'E', to: 'R' }
          },
          held,
          forces: { D: [0, -left], E: [0, -right], R: [0, -ridge], K: [0, -hung] }
        })
        const scale = Math.max(1, got.lower[0], got.lower[1])
        near(got.lower[0], want['lowL']?.push[0], scale)
        near(got.lower[1], want['lowR']?.push[0], scale)
        near(got.upper, want['upL']?.push[0], scale)
        near(got.upper, want['upR']?.push[0], scale)
        near(got.strut[0], want['strutL']?.push[0], scale)
        near(got.strut[1], want['strutR']?.push[0], scale)
        near(-got.tie[0], want['tieL']?.push[0], scale)
        near(-got.tie[1], want['tieR']?.push[0], scale)
        near(-got.kingPost, want['post']?.push[0], scale)
      })
    )
  })
  /** Rafters in one stick over their struts. @param stiffness area of every bar, mm2, with the bending of an 8 x 8 */
  const built = (shape: TrussShape, load: TrussLoad, area: number) =>
    solveFrame({
      joints: joints(shape),
      bars: {
        ...Object.fromEntries(Object.entries(web).map(([id, bar]) => [id, { ...bar, area }])),
        lowL: { from: 'A', to: 'D', hinge: 'from', load: load.left, area, inertia: 1.4e8 },
        upL: { from: 'D', to: 'R', hinge: 'to', load: load.left, area, inertia: 1.4e8 },
        lowR: { from: 'B', to: 'E', hinge: 'from', load: load.right, area, inertia: 1.4e8 },
        upR: { from: 'E', to: 'R', hinge: 'to', load: load.right, area, inertia: 1.4e8 }
      },
      held
    })
  it('rafters in one stick over stiff struts: forces, and the moment over the strut, are those of the solved frame', () => {
    fc.assert(
      fc.property(shapes, loads, (shape, { left, right }) => {
        const load = { left, right, tie: 0 }
        const want = built(shape, load, 1e10)
        const got = (id: PartId) => parts('king-struts', shape, load, id)
        const scale = Math.max(want['lowL']?.push[0] ?? 1, want['lowR']?.push[0] ?? 1) * 10
        near(got('rafter')[0]?.push, want['lowL']?.push[0], scale)
        near(got('rafter')[1]?.push, want['lowR']?.push[0], scale)
        near(got('strut')[0]?.push, want['strutL']?.push[0], scale)
        near(got('tie')[0]?.push, want['tieL']?.push[0], scale)
        near(got('tie')[1]?.push, want['tieR']?.push[0], scale)
        near(got('king-post')[0]?.push, want['post']?.push[0], scale)
        const moment = got('rafter')[0]?.moment ?? 0
        near(moment, -(want['lowL']?.moment[1] ?? 0), moment * 100) // a stiff strut still gives by a thousandth
      })
    )
  })
  it('with timbers of 8 x 8 that give, 16 to 40 ft: strut, king post and foot of the rafter are never asked more', () => {
    const usual = fc.record({
      span: fc.double({ min: 16 * FOOT, max: 40 * FOOT, noNaN: true }),
      pitch: fc.double({ min: 4 / 12, max: 1, noNaN: true }),
      queenAt: fc.constant(1 / 3)
    })
    fc.assert(
      fc.property(usual, line, (shape, w) => {
        const load = { left: w, right: w, tie: 0 }
        const real = built(shape, load, 203 * 203)
        const got = (id: PartId) => parts('king-struts', shape, load, id)[0]
        expect(real['strutL']?.push[0]).toBeLessThanOrEqual((got('strut')?.push ?? 0) * 1.000001)
        expect(-(real['post']?.push[0] ?? 0)).toBeLessThanOrEqual(-(got('king-post')?.push ?? 0) * 1.000001)
        expect(real['lowL']?.push[0]).toBeLessThanOrEqual((got('rafter')?.push ?? 0) * 1.000001)
        // The strut that gives lets the rafter sag there: less hogging over it.
        expect(-(real['lowL']?.moment[1] ?? 0)).toBeLessThanOrEqual((got('rafter')?.moment ?? 0) * 1.000001)
      })
    )
  })
})

describe('queen posts', () => {
  const frame = ({ span, pitch, queenAt }: TrussShape, load: TrussLoad, through: boolean, tieHinged = false): Frame => {
    const a = queenAt * span
    return {
      joints: {
        A: [0, 0],
        B: [span, 0],
        E: [a, 0],
        F: [span - a, 0],
        C: [a, a * pitch],
        D: [span - a, a * pitch],
        R: [span / 2, (span / 2) * pitch]
      },
      bars: {
        lowL: { from: 'A', to: 'C', hinge: through ? 'from' : 'both', load: load.left },
        upL: { from: 'C', to: 'R', hinge: through ? 'to' : 'both', load: load.left },
        lowR: { from: 'B', to: 'D', hinge: through ? 'from' : 'both', load: load.right },
        upR: { from: 'D', to: 'R', hinge: through ? 'to' : 'both', load: load.right },
        beam: { from: 'C', to: 'D' },
        postL: { from: 'E', to: 'C' },
        postR: { from: 'F', to: 'D' },
        tie1: { from: 'A', to: 'E', hinge: tieHinged ? 'both' : 'from', load: load.tie },
        tie2: { from: 'E', to: 'F', hinge: tieHinged ? 'both' : 'none', load: load.tie },
        tie3: { from: 'F', to: 'B', hinge: tieHinged ? 'both' : 'to', load: load.tie }
      },
      held
    }
  }
  it('rafters jointed at the queens’ heads, the tie in one stick: every force is that of the solved frame, one-sided or not', () => {
    fc.assert(
      fc.property(shapes, loads, (shape, { left, right }) => {
        const load = { left, right, tie: 0 }
        const stiff = frame(shape, load, false)
        const want = solveFrame({
          ...stiff,
          bars: Object.fromEntries(Object.entries(stiff.bars).map(([id, bar]) => [id, { ...bar, area: 1e9 }]))
        })
        const got = (id: PartId) => parts('queen', shape, load, id)
        const scale = Math.max(want['lowL']?.push[0] ?? 1, want['lowR']?.push[0] ?? 1) * 10
        near(got('rafter')[0]?.push, want['lowL']?.push[0], scale)
        near(got('rafter')[1]?.push, want['lowR']?.push[0], scale)
        near(got('upper-rafter')[0]?.push, want['upL']?.push[0], scale)
        near(got('upper-rafter')[1]?.push, want['upR']?.push[0], scale)
        near(got('tie')[0]?.push, want['tie2']?.push[0], scale)
        near(got('queen-post')[0]?.push, want['postL']?.push[0], scale)
        near(got('queen-post')[1]?.push, want['postR']?.push[0], scale)
        near(got('straining-beam')[0]?.push, want['beam']?.push[0], scale)
        near(got('tie')[0]?.moment, Math.abs(want['tie1']?.moment[1] ?? 0), scale * shape.span)
      })
    )
  })
  it('under a floor on the tie, hinged at the queens: they carry what lies nearest', () => {
    fc.assert(
      fc.property(shapes, loads, (shape, { left, tie }) => {
        const load = { left, right: left, tie }
        const got = (id: PartId) => parts('queen', shape, load, id)[0]
        // Hinged all over it stands only by its symmetry: a hair of stiffness in the straining beam keeps it upright.
        const f = frame(shape, load, false, true)
        const want = solveFrame({ ...f, bars: { ...f.bars, hair: { from: 'E', to: 'D', area: 1e-3 } } })
        const scale = (want['lowL']?.push[0] ?? 1) * 10
        near(got('queen-post')?.push, want['postL']?.push[0], scale)
        near(got('tie')?.push, want['tie2']?.push[0], scale)
        near(got('rafter')?.push, want['lowL']?.push[0], scale)
      })
    )
  })
  it('rafters that run through relieve the tie, and are bent over the queens less than the model bends the loaded one', () => {
    const usual = fc.record({
      span: fc.double({ min: 16 * FOOT, max: 60 * FOOT, noNaN: true }),
      pitch: fc.double({ min: 4 / 12, max: 1.5, noNaN: true }),
      queenAt: fc.double({ min: 0.3, max: 1 / 3, noNaN: true })
    })
    fc.assert(
      fc.property(usual, line, (shape, w) => {
        const load = { left: w, right: 0, tie: 0 }
        const real = solveFrame(frame(shape, load, true))
        const tie = parts('queen', shape, load, 'tie')[0]?.moment ?? 0
        expect(Math.abs(real['tie1']?.moment[1] ?? 0)).toBeLessThan(tie)
        const rafter = parts('queen', shape, load, 'rafter')[0]?.moment ?? 0
        for (const id of ['lowL', 'lowR']) expect(Math.abs(real[id]?.moment[1] ?? 0)).toBeLessThan(rafter)
      })
    )
  })
  it('load on one side bends the tie, on both alike it does not', () => {
    const shape = { span: 9000, pitch: 0.7, queenAt: 1 / 3 }
    expect(parts('queen', shape, { left: 8, right: 8, tie: 0 }, 'tie')[0]?.moment).toBe(0)
    // With nothing on the tie its shear is that moment over the distance to the foot, or to the middle.
    const [tie] = parts('queen', shape, { left: 10, right: 6, tie: 0 }, 'tie')
    expect(tie?.shear).toBeCloseTo((4500 * 1000) / 1500, 6)
    // 2 N/mm more than the mean comes to 2 x 9000 / 4 at the queen; bent by that times a (L - 2a) / L.
    expect(parts('queen', shape, { left: 10, right: 6, tie: 0 }, 'tie')[0]?.moment).toBeCloseTo(4500 * 1000, 3)
  })
})

describe('shear of rafters and ties', () => {
  // Across the slope a rafter bears the cosine of what lies on it: its ends share that, or 5/8 goes to the strut.
  const shape = { span: 8000, pitch: 0.75, queenAt: 0.25 }
  const load = { left: 5, right: 5, tie: 2 }
  it.each([
    ['king', 'rafter', 5 * 2000 * 0.8],
    ['king', 'tie', 2 * 2000],
    ['king-struts', 'rafter', 5 * 2000 * 0.625 * 0.8],
    ['king-struts', 'tie', 2 * 2000],
    ['queen', 'rafter', 5 * 1000 * 0.8],
    ['queen', 'upper-rafter', 5 * 1000 * 0.8],
    ['queen', 'tie', 2 * 2000]
  ] as const)('%s, %s: %d N', (form, id, want) => expect(parts(form, shape, load, id)[0]?.shear).toBeCloseTo(want, 6))
})

describe('bentBetween', () => {
  it('is w l2 / 8 with free ends, the greater end moment with no load', () => {
    expect(bentBetween(3, 1000, 0, 0)).toBeCloseTo((3 * 1e6) / 8, 6)
    expect(bentBetween(0, 1000, 5, -9)).toBe(9)
  })
  it('is what a fine walk along it finds', () => {
    const m = fc.double({ min: -1e6, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), m, m, (w, start, end) => {
        const l = 3000
        const walk = Array.from({ length: 3001 }, (_, x) =>
          Math.abs(start + ((end - start) * x) / l + (w * x * (l - x)) / 2)
        )
        const most = Math.max(...walk)
        expect(bentBetween(w, l, start, end)).toBeGreaterThanOrEqual(most * (1 - 1e-12))
        // Between two steps a parabola rises at most w / 8 above both.
        expect(bentBetween(w, l, start, end)).toBeLessThanOrEqual(most + w / 8 + 1e-6)
      })
    )
  })
})

describe('what makes no truss is refused', () => {
  const load = { left: 1, right: 1, tie: 0 }
  it.each([
    ['king', { span: 0, pitch: 1, queenAt: 0.3 }],
    ['king-struts', { span: 9000, pitch: 0, queenAt: 0.3 }],
    ['king', { span: 9000, pitch: Number.POSITIVE_INFINITY, queenAt: 0.3 }],
    ['king', { span: Number.NaN, pitch: 1, queenAt: 0.3 }],
    ['queen', { span: 9000, pitch: 1, queenAt: 0.5 }],
    ['queen', { span: 9000, pitch: 1, queenAt: 0 }]
  ] as const)('%s %o', (form, shape) => expect(() => trussParts(form, shape, load)).toThrow(RangeError))
})
