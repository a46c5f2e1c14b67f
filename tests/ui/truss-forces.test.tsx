/** The picture of forces: each timber once in the key with its force, push and pull told apart by line and arrow. */
import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import type { Quantity } from '../../src/data/quantity'
import { FOOT } from '../../src/data/units'
import { type ForcePart, TrussForces } from '../../src/ui/pictures/TrussForces'
import { type FrameKind, sticksOf, supportsOf } from '../../src/ui/pictures/truss-shapes'

const LB = 4.4482216152605
const force = (pounds: number): Quantity => ({
  kind: 'force',
  value: pounds * LB,
  origin: { mark: 'derived', sources: [{ key: 'derived' }] }
})
const part = (id: string, name: string, push: number, pull: number): ForcePart => ({
  id,
  name,
  section: [203, 254],
  push: push > 0 ? force(push) : null,
  pull: pull > 0 ? force(pull) : null
})
const PARTS: Readonly<Record<'king' | 'king-struts' | 'queen', readonly ForcePart[]>> = {
  king: [part('rafter', 'Rafter', 7070, 0), part('tie', 'Tie', 0, 4520), part('king-post', 'King post', 0, 154)],
  'king-struts': [
    part('rafter', 'Rafter', 25100, 0),
    part('tie', 'Tie', 0, 23300),
    part('king-post', 'King post', 0, 6230),
    part('strut', 'Strut', 11500, 0)
  ],
  queen: [
    part('rafter', 'Rafter', 17400, 0),
    part('upper-rafter', 'Upper rafter', 4460, 0),
    part('tie', 'Tie', 0, 14200),
    part('queen-post', 'Queen post', 1530, 2470),
    part('straining-beam', 'Straining beam', 10900, 0)
  ]
}
const shape = { span: 24 * FOOT, slope: 8 / 12, height: 9 * FOOT, queenAt: 1 / 3 }
const textOf = (html: string) => html.replace(/<[^>]+>/g, '').replace(/\u00a0/g, ' ')
const count = (html: string, what: RegExp) => html.match(what)?.length ?? 0

describe.each(['king', 'king-struts', 'queen'] as const)('%s', (kind) => {
  const parts = PARTS[kind]
  const html = render(<TrussForces kind={kind} {...shape} parts={parts} />)
  it('names each timber once with its force, in both units', () => {
    const said = textOf(html)
    for (const p of parts) {
      expect(said.split(`${p.name.toLowerCase()} pu`).length, p.name).toBeGreaterThan(1)
      expect(said).toMatch(/\d lb/)
      expect(said).toMatch(/\d kN/)
    }
    expect(said).toContain('tie pull')
    expect(said).toContain('rafter push')
  })
  it('draws a pull dashed and a push whole, whatever the colours', () => {
    const lines = [...html.matchAll(/<line class="cut thin force-(\w+)"[^>]*>/g)].map((m) => ({
      sense: m[1],
      dashed: /stroke-dasharray/.test(m[0])
    }))
    expect(lines.length).toBe(sticksOf({ kind, ...shape }).length + parts.length)
    for (const { sense, dashed } of lines) expect(dashed).toBe(sense === 'pull')
    expect(new Set(lines.map((l) => l.sense)).size).toBe(2)
    // Two arrowheads a line.
    expect(count(html, /class="f-ink"/g)).toBe(2 * lines.length)
  })
  it('says in words what is pushed and what is pulled', () => {
    const label = /aria-label="([^"]+)"/.exec(html)?.[1] ?? ''
    expect(label).toMatch(/rafter pushed/)
    expect(label).toMatch(/tie pulled/)
  })
  it('has no hole and no style attribute', () => {
    expect(html).not.toMatch(/NaN|undefined|Infinity|style=/)
  })
})

it('arrows press on the joints for a push and draw away from them for a pull', () => {
  // A post alone: its line runs up. Of a push the upper head points up, of a pull down.
  const tips = (p: ForcePart) => {
    const html = render(<TrussForces kind="post" {...shape} parts={[p]} />)
    return [...html.matchAll(/class="f-ink" d="M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)/g)]
      .slice(0, 2)
      .map((m) => Number(m[2]) - Number(m[4]))
  }
  const [low, high] = tips(part('post', 'Post', 5000, 0))
  expect(low).toBeGreaterThan(0)
  expect(high).toBeLessThan(0)
  const [lowPull, highPull] = tips(part('post', 'Post', 0, 5000))
  expect(lowPull).toBeLessThan(0)
  expect(highPull).toBeGreaterThan(0)
})

it('what is only bent says so, with what it brings to its supports', () => {
  const html = render(
    <TrussForces kind="beam" {...shape} slope={0} parts={[part('beam', 'Beam', 0, 0)]} end={force(3530)} />
  )
  expect(textOf(html)).toMatch(/beam bends/)
  expect(textOf(html)).toMatch(/on each support 3,530 lb/)
  expect(html).not.toMatch(/force-push|force-pull/)
})

it('loads at points: an arrow each, numbered, at its place, told in the key', () => {
  const points = [3, 20].map((ft) => ({ at: ft * FOOT, load: force(1500) }))
  const html = render(
    <TrussForces
      kind="beam"
      {...shape}
      slope={0}
      parts={[part('beam', 'Beam', 0, 0)]}
      end={force(3530)}
      points={points}
    />
  )
  expect(textOf(html)).toMatch(/load 1 1,500 lb.* at 3 ft/)
  expect(textOf(html)).toMatch(/load 2 1,500 lb.* at 20 ft/)
  expect(textOf(html)).toMatch(/on the heavier end/)
  const xs = [...html.matchAll(/<line class="cut thin" x1="([\d.]+)" y1="([\d.-]+)"/g)].map((m) => [
    Number(m[1]),
    Number(m[2])
  ])
  expect(xs).toHaveLength(2)
  const [a, b] = xs
  const scale = ((b?.[0] ?? 0) - (a?.[0] ?? 0)) / (17 * FOOT)
  // Between the arrows as between the loads, and from the middle of the drawing as from mid-span.
  expect(160 - (a?.[0] ?? 0)).toBeCloseTo(9 * FOOT * scale, 3)
  for (const [, y] of xs) expect(y).toBeGreaterThan(10)
})

describe('shapes', () => {
  const kinds: readonly FrameKind[] = [
    'king',
    'king-struts',
    'queen',
    'rafter',
    'post',
    'beam',
    'joist',
    'purlin',
    'ridge'
  ]
  it.each(kinds)('%s: its timbers meet its supports and stay between them, at any slope and span', (kind) => {
    for (const span of [4 * FOOT, 60 * FOOT])
      for (const slope of [1 / 6, 2]) {
        const all = { kind, ...shape, span, slope }
        for (const { a, b } of sticksOf(all)) {
          for (const [x, y] of [a, b]) {
            expect(Math.abs(x)).toBeLessThanOrEqual(span / 2 + 1e-6)
            expect(y).toBeGreaterThanOrEqual(0)
          }
          expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThan(0)
        }
        for (const [, head] of supportsOf(all))
          expect(
            sticksOf(all).some(({ a, b }) => [a, b].some((p) => Math.hypot(p[0] - head[0], p[1] - head[1]) < 1e-6))
          ).toBe(true)
        const html = render(<TrussForces {...all} parts={[]} />)
        const [, high] = /viewBox="0 0 320 (\d+)"/.exec(html) ?? []
        expect(Number(high)).toBeLessThan(400)
      }
  })
})
