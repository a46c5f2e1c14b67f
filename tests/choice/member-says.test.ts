/** What a single member says: ranges with their unit, only a way out that was worked out, nothing left unnamed. */
import { describe, expect, it } from 'vitest'
import { memberRanges, usualSpec } from '../../src/choice/ladder/member-for'
import { leftOutSays, refusalSays, wayOutSays } from '../../src/choice/ladder/member-says'
import type { Sentence } from '../../src/data/quantity'
import type { Wood } from '../../src/data/reference'
import { FOOT, PSF } from '../../src/data/units'
import { type MemberSpec, outOfRange, type Refusal } from '../../src/frame/member-spec'
import { reference } from '../reference'

const spec: MemberSpec = usualSpec(reference, reference.woods.get('douglas-fir') as Wood, false, {
  span: 16 * FOOT,
  width: 8 * FOOT,
  slope: 0.5,
  height: 9 * FOOT
})
const full = (s: Sentence) => {
  for (const [, name] of s.text.matchAll(/\{(\w+)\}/g)) expect(s.values?.[name ?? ''], s.text).toBeDefined()
  expect(s.text).toMatch(/\.$/)
}
const refused = (change: Partial<MemberSpec>) => {
  const wanted = { ...spec, ...change }
  return refusalSays(outOfRange('king', wanted, memberRanges(reference)) as Refusal, wanted)
}

describe('refusals', () => {
  it.each([
    [{ span: 0 }, 'The span', 'span'],
    [{ slope: Number.POSITIVE_INFINITY }, 'The slope', 'ratio'],
    [{ dead: 1e9 }, 'The weight of the roof', 'areaLoad'],
    [{ points: [{ at: 99 * FOOT, dead: 0, roof: 0, floor: 0 }] }, 'The place of a load', 'span'],
    [{ points: [{ at: 0, dead: 1e12, roof: 0, floor: 0 }] }, 'A load at a point', 'force']
  ] as const)('%o is told its range, in its unit', (change, name, kind) => {
    const said = refused(change)
    full(said)
    expect(said.text.startsWith(name)).toBe(true)
    expect(said.values?.['most']?.kind).toBe(kind)
  })
  it('200 psf is within, 301 is not', () => {
    expect(outOfRange('king', { ...spec, dead: 200 * PSF }, memberRanges(reference))).toBeNull()
    expect(refused({ dead: 301 * PSF }).values?.['most']?.value).toBeCloseTo(300 * PSF, 6)
  })
  it('the other two have words', () => {
    full(refusalSays({ ok: false, why: 'no-sections' }, spec))
    full(refusalSays({ ok: false, why: 'no-values' }, spec))
  })
})

describe('a way out', () => {
  it('names only what was found', () => {
    const all = wayOutSays('beam', {
      span: 5000,
      height: null,
      width: 2000,
      points: { share: 0.4, largest: 5000 },
      trusses: ['king', 'queen']
    })
    all.forEach(full)
    expect(all.map((s) => s.text).join(' ')).toMatch(
      /as far as .* a width of .* \{share\} of what is asked.* a king-post truss, or a queen-post truss/
    )
    const none = wayOutSays('joist', { span: null, height: null, width: null, points: null, trusses: [] })
    expect(none.length).toBe(1)
    expect(none[0]?.text).toMatch(/^Neither/)
    const post = wayOutSays('post', { span: null, height: 3000, width: 2000, points: null, trusses: [] })
    expect(post.map((s) => s.text).join(' ')).toMatch(/high.*At this height/)
  })
  it('what is left out is one sentence', () => full(leftOutSays(['joints', 'drift'])))
})
