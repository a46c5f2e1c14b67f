/** The checks of rafters and truss timbers, each number by hand. N, mm, MPa. */
import { describe, expect, it } from 'vitest'
import { effectiveLengthPoints } from '../../src/frame/factors'
import { checkLoneRafter, type Rafter, rafterThrust } from '../../src/frame/rafter'
import { checkPart, partLength, type TrussJob } from '../../src/frame/truss-parts'
import type { Section } from '../../src/frame/values'
import { values } from './invented'

const [b, d] = [150, 250]
const section: Section = [b, d]
const find = <T extends { readonly id: string }>(list: readonly T[], id: string) => list.find((c) => c.id === id)

const rafter: Rafter = {
  run: 4000,
  pitch: 0.75,
  dead: 1,
  roof: [{ load: 3, duration: 'snow' }],
  oneSided: null,
  ridgeBeam: true,
  wet: false,
  unseasonedOrWet: true,
  liveRatio: 240,
  totalRatio: 180,
  mortise: 50
}

describe('a rafter on a ridge beam: 4 m run at 0.75, a slope of 5 m', () => {
  const checks = checkLoneRafter(rafter, section, values(1))
  it('bends by w run2 / 8 on its net section, and is not pushed', () => {
    expect(checks.map((c) => c.id)).toEqual(['bending', 'shear', 'deflection-live', 'deflection-total'])
    expect(find(checks, 'bending')?.demand).toBeCloseTo((4 * 4000 ** 2) / 8 / ((100 * d * d) / 6), 9)
    expect(find(checks, 'bending')?.capacity).toBeCloseTo(9 * 1.15, 9)
  })
  it('is sheared across the slope by 0.8 of what its end carries', () =>
    expect(find(checks, 'shear')?.demand).toBeCloseTo((1.5 * 4 * 2000 * 0.8) / (b * d), 9))
  it('sags under 0.64 of the load over 5 m, the permanent part twice for creep', () => {
    const sag = (w: number) => (5 * 0.64 * w * 5000 ** 4) / (384 * 10_000 * ((b * d ** 3) / 12))
    expect(find(checks, 'deflection-live')?.demand).toBeCloseTo(sag(3), 9)
    expect(find(checks, 'deflection-live')?.capacity).toBeCloseTo(5000 / 240, 9)
    expect(find(checks, 'deflection-total')?.demand).toBeCloseTo(2 * sag(1) + sag(3), 9)
  })
  it('does not thrust', () => expect(rafterThrust(rafter)).toEqual({ push: 0, thrust: 0 }))
})

describe('rafters that lean on each other', () => {
  const leaning = { ...rafter, ridgeBeam: false }
  it('are pushed and bent, and thrust by w run / (2 tan)', () => {
    expect(checkLoneRafter(leaning, section, values(1))[0]?.id).toBe('compression-bending')
    expect(rafterThrust(leaning).thrust).toBeCloseTo((4 * 4000) / (2 * 0.75), 6)
  })
  it('snow on one side bends the one under it, the thrust is that of the mean', () => {
    const oneSided = { ...leaning, oneSided: { leeward: 5, windward: 0 } }
    // 6 on one side and 1 on the other thrust less than 4 on both; yet the one is bent more.
    expect(rafterThrust(oneSided).thrust).toBeCloseTo((4 * 4000) / (2 * 0.75), 6)
    const ratio = (r: Rafter) => checkLoneRafter(r, section, values(1))[0]?.ratio ?? 0
    expect(ratio(oneSided)).toBeGreaterThan(ratio(leaning) * 1.2)
  })
})

const job: TrussJob = {
  form: 'king-struts',
  shape: { span: 8000, pitch: 0.75, queenAt: 0.25 },
  dead: 1,
  tieDead: 0,
  roof: [{ load: 3, duration: 'snow' }],
  floor: [],
  oneSided: null,
  wet: false,
  unseasonedOrWet: false,
  liveRatio: 240,
  totalRatio: 180,
  floorLiveRatio: 360,
  floorTotalRatio: 240,
  mortise: 50
}
const none = { roof: 0, tie: 0, straining: 0 }

describe('lengths between joints, 8 m at 0.75', () => {
  it.each([
    ['king', 'rafter', 5000],
    ['king', 'king-post', 3000],
    ['king', 'tie', 4000],
    ['king-struts', 'rafter', 2500],
    ['king-struts', 'strut', 2500],
    ['queen', 'rafter', 2500],
    ['queen', 'upper-rafter', 2500],
    ['queen', 'queen-post', 1500],
    ['queen', 'straining-beam', 4000],
    ['queen', 'tie', 4000]
  ] as const)('%s, %s: %d mm', (form, id, want) => expect(partLength(id, form, job.shape)).toBeCloseTo(want, 6))
})

describe('truss timbers', () => {
  it('a rafter sags across the slope, over one panel', () => {
    const live = find(checkPart(job, 'rafter', none, section, values(1)), 'deflection-live')
    expect(live?.demand).toBeCloseTo((5 * 0.64 * 3 * 2500 ** 4) / (384 * 10_000 * ((b * d ** 3) / 12)), 9)
  })
  it('a strut may buckle about its weak side: 2.5 m over 50 mm is a slenderness of 50, over 49 mm it is refused', () => {
    expect(checkPart(job, 'strut', none, [50, 250], values(1)).map((c) => c.id)).toEqual(['compression'])
    expect(checkPart(job, 'strut', none, [49, 250], values(1)).map((c) => c.id)).toEqual(['slenderness'])
  })
  it('a strut takes 10/8 of a panel’s 4 N/mm over 2 sin', () => {
    const push = find(checkPart(job, 'strut', none, section, values(1)), 'compression')
    expect(push?.demand).toBeCloseTo((1.25 * 4 * 2000) / (2 * 0.6) / (b * d), 9)
  })
  it('a king post is pulled on its net section', () => {
    const pull = find(checkPart(job, 'king-post', none, section, values(1)), 'tension')
    expect(pull?.demand).toBeCloseTo((1.25 * 4 * 2000) / (100 * d), 9)
    expect(pull?.capacity).toBeCloseTo(5 * 1.15, 9)
  })
  it('a straining beam bears itself besides', () => {
    const queen = { ...job, form: 'queen' as const }
    const ids = (straining: number) =>
      checkPart(queen, 'straining-beam', { ...none, straining }, section, values(1)).map((c) => c.id)
    expect(ids(0)).toEqual(['compression'])
    expect(ids(1)).toEqual(['compression-bending'])
  })
  it('a tie sags only where a floor lies on it, and then by the floor’s limits', () => {
    const tie = (floor: TrussJob['floor']) => checkPart({ ...job, floor }, 'tie', none, section, values(1))
    expect(find(tie([]), 'deflection-live')).toBeUndefined()
    const live = find(tie([{ load: 2, duration: 'ten-years' }]), 'deflection-live')
    expect(live?.demand).toBeCloseTo((5 * 2 * 4000 ** 4) / (384 * 10_000 * ((b * d ** 3) / 12)), 9)
    expect(live?.capacity).toBeCloseTo(4000 / 360, 9)
  })
})

describe('effective lengths under loads at points (nds, Table 3.3.3), d 300', () => {
  it.each([
    [2000, true, 1.8 * 2000],
    [6000, true, 1.37 * 6000 + 900],
    [2000, false, 2.06 * 2000],
    [4000, false, 1.63 * 4000 + 900],
    [6000, false, 1.84 * 6000]
  ])('%d mm, all in the middle %s: %d', (length, central, want) =>
    expect(effectiveLengthPoints(length, 300, central)).toBeCloseTo(want, 6)
  )
})
