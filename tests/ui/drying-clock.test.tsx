/** The drying clock drawn: its scales, its names beside their lines, its address, and what it refuses. */
import fc from 'fast-check'
import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { readClock } from '../../src/choice/clock/door'
import { clockReport } from '../../src/choice/clock/report'
import type { ClockAsked, ClockReport } from '../../src/choice/clock/types'
import { INCH } from '../../src/data/units'
import { EXAMPLE, givenOf } from '../../src/ui/drying-clock/at-build'
import { makeClock } from '../../src/ui/drying-clock/bench'
import { linkOf, readLink } from '../../src/ui/drying-clock/link'
import { rangeWords, readField, textOf } from '../../src/ui/drying-clock/read'
import { apart } from '../../src/ui/drying-clock/words'
import type { Engine } from '../../src/ui/engine'
import { formatUs } from '../../src/ui/format/quantity'
import {
  type Box,
  heightAt,
  moistureScale,
  placeNames,
  simplified,
  spread,
  wintersBetween
} from '../../src/ui/pictures/clock-scale'
import { DryingClock } from '../../src/ui/pictures/DryingClock'
import type { Pt } from '../../src/ui/pictures/parts'
import { reference } from '../reference'

const reportOf = (change: Partial<ClockAsked> = {}): ClockReport => {
  const read = readClock({ ...EXAMPLE, ...change }, reference)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return clockReport(read.job, reference)
}
const asked = fc.record({
  wood: fc.constantFrom(...reference.woods.keys()),
  place: fc.constantFrom(...reference.places.keys()),
  breadth: fc.integer({ min: 32, max: 24 * 16 }).map((n) => (n / 16) * INCH),
  depth: fc.integer({ min: 32, max: 30 * 16 }).map((n) => (n / 16) * INCH),
  exposure: fc.constantFrom('heated', 'unheated', 'roofed', 'weather'),
  seasoning: fc.constantFrom('green', 'air', 'kiln', 'rfv'),
  felledMonth: fc.integer({ min: 1, max: 12 }),
  yardWeeks: fc.integer({ min: 0, max: 520 }),
  kilnWeeks: fc.integer({ min: 1, max: 104 }),
  shopWeeks: fc.integer({ min: 0, max: 260 }),
  heating: fc.constantFrom('at-once', 'first-winter', 'next-year')
})

describe('the scale of moisture', () => {
  it.each([
    ['green Douglas-fir, even', 0.37, 0.3, null, true],
    ['the wettest wood, drawn closer above', 1.8, 0.3, 35, true],
    ['wet and of low fibre saturation', 0.9, 0.22, 25, true],
    ['kiln stock: fibre saturation is not in it', 0.15, 0.3, null, false]
  ])('%s', (_, wettest, saturation, closer, within) => {
    const scale = moistureScale(wettest, saturation, 20, 200)
    expect([scale.closer, scale.saturation]).toEqual([closer, within])
    expect(scale.y(wettest)).toBeGreaterThanOrEqual(20)
    expect(scale.y(0)).toBe(200)
    // Drier is lower, all the way, and letters of 13 stand clear of each other.
    const ticks = scale.ticks.map((t) => scale.y(t / 100))
    for (let i = 1; i < ticks.length; i++) expect((ticks[i - 1] ?? 0) - (ticks[i] ?? 0)).toBeGreaterThan(12)
    // From the fibre saturation down there is always a half of the height to read in.
    if (within) expect(200 - scale.y(saturation)).toBeGreaterThan(90)
    else expect(200 - scale.y(0.15)).toBeGreaterThan(90)
  })
})

describe('winters', () => {
  it('begin in December, whatever the month of felling', () => {
    const days = (month: number) => wintersBetween(month, 0, 800).map(([a, b]) => [Math.round(a), Math.round(b)])
    // Felled in the middle of July: four and a half months to the first of December.
    expect(days(7)[0]).toEqual([137, 228])
    // Felled in the middle of January: the rest of this winter first.
    expect(days(1)[0]).toEqual([0, 46])
    expect(days(1)).toHaveLength(3)
  })
})

describe('letters', () => {
  it('keys stand apart, in order, within the sheet', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 38, max: 312, noNaN: true }), { minLength: 2, maxLength: 7 }), (places) => {
        const out = spread(
          places.toSorted((a, b) => a - b),
          13,
          41,
          309
        )
        out.forEach((x, i) => {
          if (i > 0) expect(x - (out[i - 1] ?? 0)).toBeGreaterThan(12.99)
        })
        expect(out[0]).toBeGreaterThanOrEqual(40.99)
        expect(out.at(-1)).toBeLessThanOrEqual(309.01)
      })
    )
  })
  it('a name stays off the other names and within its area', () => {
    const area: Box = { left: 38, right: 312, top: 28, bottom: 200 }
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 30, max: 198 }), { minLength: 2, maxLength: 6 }), (levels) => {
        const lines = levels.map((y, i) => ({
          id: String(i),
          width: 50,
          from: 0.5,
          line: [
            [38, y],
            [312, ((y + 90) % 170) + 28]
          ] as Pt[]
        }))
        const boxes = placeNames(lines, area, 13).map((n) => n.box)
        boxes.forEach((a, i) => {
          expect(a.left >= area.left && a.right <= area.right && a.top >= area.top && a.bottom <= area.bottom).toBe(
            true
          )
          for (const b of boxes.slice(i + 1))
            expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false)
        })
      })
    )
  })
  it('fewer points draw the same line', () => {
    const line = Array.from({ length: 200 }, (_, i): Pt => [i, 100 * Math.exp(-i / 60) + 4 * Math.sin(i / 9)])
    const few = simplified(line, 0.3)
    expect(few.length).toBeLessThan(80)
    for (const [x, y] of line) expect(Math.abs((heightAt(few, x) ?? -99) - y)).toBeLessThanOrEqual(0.31)
  })
})

describe('the picture', () => {
  const texts = (html: string) =>
    [
      ...html.matchAll(
        /<text class="([^"]*)" x="([-\d.]+)" y="([-\d.]+)" text-anchor="(\w+)" font-size="([\d.]+)"[^>]*>(.*?)<\/text>/g
      )
    ].map(([, , x, y, anchor, size, body]) => {
      const words = (body ?? '').replace(/<tspan class="si">.*?<\/tspan>/, '').replace(/<[^>]+>/g, '')
      const width = words.length * Number(size) * 0.45
      const left = Number(x) - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0)
      return { words, left, right: left + width, top: Number(y) - Number(size) * 0.72, bottom: Number(y) }
    })
  it('names every line, and no letters run into others, whatever is asked', () => {
    fc.assert(
      fc.property(asked, fc.option(asked, { nil: undefined }), (one, other) => {
        const kept = other && { curve: reportOf(other).curve, us: 'kept: 10 × 12 in', si: 'kept: 254 × 305 mm' }
        const html = render(<DryingClock report={reportOf(one)} kept={kept} />)
        expect(html).not.toMatch(/NaN|Infinity|undefined|style=/)
        for (const svg of html.split('<svg').slice(1)) {
          const all = texts(svg)
          for (const name of ['mean', 'middle', 'outside', 'air'])
            expect(
              all.filter((t) => t.words === name),
              name
            ).toHaveLength(1)
          all.forEach((a, i) => {
            expect(a.left).toBeGreaterThanOrEqual(0)
            for (const b of all.slice(i + 1)) {
              const apart = a.left >= b.right || b.left >= a.right || a.top >= b.bottom || b.top >= a.bottom
              expect(apart, `${a.words} / ${b.words}`).toBe(true)
            }
          })
        }
      }),
      { numRuns: 60 }
    )
  }, 60_000)
  it('says its story in words', () => {
    const label = /aria-label="([^"]+)"/.exec(render(<DryingClock report={reportOf()} />))?.[1] ?? ''
    expect(label).toMatch(/felled and sawn \(January\) 37.%, raised \(March\) 32.%.*still to come at the raising/)
  })
  it('breaks the scale for the wettest wood, and leaves fibre saturation out where nothing comes near it', () => {
    expect(render(<DryingClock report={reportOf({ wood: 'giant-sequoia' })} />)).toMatch(/>160 %</)
    const dry = render(<DryingClock report={reportOf({ seasoning: 'rfv' })} />)
    expect(dry).not.toContain('shrinks below this')
    expect(dry).toMatch(/>15 %</)
  })
})

describe('the moments', () => {
  it('read alike where the timber is still even: at the saw', () => {
    for (const wood of reference.woods.keys()) {
      const [felled] = reportOf({ wood }).lines
      const told = [felled?.mean, felled?.shell, felled?.core].map((q) => q && formatUs(q))
      expect(new Set(told).size, `${wood} ${told}`).toBe(1)
    }
  })
})

describe('a setting in the address', () => {
  const usual = { ...EXAMPLE, yardWeeks: 11, kilnWeeks: 12 }
  it('reads back as it was, for all that it carries', () => {
    fc.assert(
      fc.property(asked, (one) => {
        const read = readLink(linkOf(one), usual)
        if (!read.ok) throw new Error(read.part)
        const { yardWeeks, kilnWeeks, heating } = read.asked
        expect(linkOf(read.asked)).toBe(linkOf(one))
        expect(Math.abs(read.asked.breadth - one.breadth)).toBeLessThan(0.01)
        expect(yardWeeks).toBe(one.seasoning === 'air' ? one.yardWeeks : 11)
        expect(kilnWeeks).toBe(one.seasoning === 'kiln' ? one.kilnWeeks : 12)
        expect(heating).toBe(one.exposure === 'heated' ? one.heating : usual.heating)
      })
    )
  })
  it('is short enough to read', () => {
    expect(linkOf(EXAMPLE)).toBe('douglas-fir/8x8in/portland-or/heated/green/jan/8/first-winter')
    expect(linkOf({ ...EXAMPLE, breadth: 200, depth: 300, seasoning: 'air', exposure: 'roofed' })).toBe(
      'douglas-fir/200x300mm/portland-or/roofed/air-52/jan/8'
    )
  })
  it('never throws, and names the part that it cannot read', () => {
    fc.assert(fc.property(fc.string(), (text) => void readLink(text, usual)))
    const part = (text: string) => {
      const read = readLink(text, usual)
      return read.ok ? null : read.part
    }
    expect(part('douglas-fir/8by8/portland-or/heated/green/jan/8/first-winter')).toBe('8by8')
    expect(part('douglas-fir/8x8in/portland-or/heated/green/smarch/8/first-winter')).toBe('smarch')
    expect(part('douglas-fir/8x8in/portland-or/heated/green/jan/8/first-winter/more')).toBe('more')
  })
})

describe('what is typed', () => {
  it.each([
    ['breadth', '7 1/2', 'us', 190.5],
    ['depth', '190', 'si', 190],
    ['depth', '8 in', 'si', 203.2],
    ['yardWeeks', '26', 'us', 26],
    ['yardWeeks', '2 years', 'us', 104.357],
    ['shopWeeks', '3 months', 'us', 13.04],
    ['shopWeeks', 'soon', 'us', null],
    ['breadth', '', 'us', null]
  ] as const)('%s %j in %s is %s', (field, text, system, value) => {
    const read = readField(field, text, system)
    if (value === null) expect(read).toBeNull()
    else expect(read).toBeCloseTo(value, 2)
  })
  it('the ends of the range that is named can be typed', () => {
    for (const system of ['us', 'si'] as const)
      for (const field of ['breadth', 'depth', 'yardWeeks', 'kilnWeeks', 'shopWeeks'] as const)
        for (const [, end] of rangeWords(field, system).matchAll(/(\d+)/g)) {
          const value = readField(field, end ?? '', system) ?? Number.NaN
          const read = readClock(
            { ...EXAMPLE, seasoning: field === 'kilnWeeks' ? 'kiln' : 'air', [field]: value },
            reference
          )
          expect(read.ok, `${field} ${end} ${system}`).toBe(true)
          expect(textOf(field, value, system)).toBe(end)
        }
  })
})

describe('the store', () => {
  const given = givenOf(reference)
  const engine = {
    clock: (one: ClockAsked) => {
      const read = readClock(one, reference)
      return read.ok ? clockReport(read.job, reference) : { problems: read.problems }
    },
    places: [...reference.places.values()],
    library: given.library
  } as unknown as Engine
  const make = (load: () => Promise<Engine> = () => Promise.resolve(engine)) => {
    const went: [string, boolean][] = []
    const store = makeClock(given.report, given, { load, address: (to, step) => went.push([to, step]) })
    return { store, went, now: () => store.$view.get() }
  }
  const settled = () => new Promise((done) => setTimeout(done))

  it('waits for the engine, then draws what was asked, and puts it into the address', async () => {
    const { store, went, now } = make()
    store.set('wood', 'white-oak')
    expect([now().waits, now().engine, now().shown.asked.wood]).toEqual([true, 'loading', 'douglas-fir'])
    await settled()
    expect([now().waits, now().engine, now().shown.asked.wood]).toEqual([false, 'ready', 'white-oak'])
    expect(went).toEqual([[expect.stringMatching(/^white-oak\//), true]])
  })
  it('typing on in one field is one step back', async () => {
    const { store, went } = make()
    store.fetch()
    await settled()
    store.set('breadth', 10 * INCH, '10')
    store.set('breadth', 10.5 * INCH, '10.5')
    store.leave('breadth')
    store.set('breadth', 6 * INCH, '6')
    expect(went.map(([, step]) => step)).toEqual([true, false, true])
  })
  it('fails, keeps what was typed, and tries again when asked', async () => {
    let tries = 0
    const { store, now } = make(() => (++tries === 1 ? Promise.reject(new Error('lost')) : Promise.resolve(engine)))
    store.set('breadth', 10 * INCH, '10')
    await settled()
    expect([now().engine, now().waits, now().typed.breadth]).toEqual(['failed', true, '10'])
    store.fetch()
    await settled()
    // The engine takes the shorter side first.
    expect(now().shown.asked.depth).toBeCloseTo(10 * INCH, 6)
  })
  it('refuses beside the field and keeps the picture, until all that counts can be read', async () => {
    const { store, now } = make()
    store.fetch()
    await settled()
    store.set('breadth', 100 * INCH, '100')
    expect([now().wrong.breadth, now().typed.breadth, now().shown]).toEqual(['range', '100', given.report])
    store.misread('shopWeeks', 'soon', 'unread')
    store.set('breadth', 8 * INCH, '8')
    expect([now().wrong.breadth, now().wrong.shopWeeks, now().shown]).toEqual([undefined, 'unread', given.report])
    store.set('shopWeeks', 4, '4')
    expect(now().shown.asked.shopWeeks).toBe(4)
  })
  it('what the way of drying does not use does not stand in the way', async () => {
    const { store, now } = make()
    store.fetch()
    await settled()
    store.set('seasoning', 'air')
    store.misread('yardWeeks', 'long', 'unread')
    store.set('seasoning', 'green')
    store.set('wood', 'red-oak')
    expect(now().shown.asked.wood).toBe('red-oak')
    store.set('seasoning', 'air')
    expect([now().wrong.yardWeeks, now().typed.yardWeeks]).toEqual(['unread', 'long'])
  })
  it('opens a link without putting it into the address again; garbage gives the example and a word', async () => {
    const { store, went, now } = make()
    store.open('white-oak/10x10in/burlington-vt/roofed/air-52/mar/4')
    await settled()
    expect([now().shown.asked.wood, now().shown.asked.place, went]).toEqual(['white-oak', 'burlington-vt', []])
    store.open('mahogany-of-the-moon/10x10in/burlington-vt/roofed/air-52/mar/4')
    expect([now().badLink, now().shown]).toEqual(['mahogany-of-the-moon', given.report])
    store.open('white-oak/10x10in')
    expect(now().badLink).toBe('')
    store.open('')
    expect([now().badLink, now().asked]).toEqual([null, given.report.asked])
  })
  it('tells a kept setting by what sets it apart', () => {
    const names = { woods: given.woods, places: [] }
    const now = EXAMPLE
    expect(apart({ ...now, wood: 'white-oak' }, now, names, 'us')).toBe('white oak')
    expect(apart({ ...now, breadth: 10 * INCH }, now, names, 'us')).toMatch(/^8 × 10/)
    expect(apart({ ...now, seasoning: 'air' }, now, names, 'us')).toBe('52 weeks in the yard')
  })
})
