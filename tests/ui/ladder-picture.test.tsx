/** The picture of the ladder: every section and the person at one scale, on any number of rungs, inside the sheet. */
import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { PERSON_MM } from '../../src/ui/pictures/parts'
import { type LadderItem, SizeLadder } from '../../src/ui/pictures/SizeLadder'

const item = (b: number, d: number, more: Partial<LadderItem> = {}): LadderItem => ({
  label: `Wood of ${b} by ${d}`,
  section: [b, d],
  ...more
})
const SIDES = [150, 200, 254, 305, 406, 508]
const ITEMS = SIDES.flatMap((b) => SIDES.filter((d) => d >= b).map((d) => item(b, d, { note: 'and 3 more' })))
const drawings = (items: readonly LadderItem[]) =>
  render(<SizeLadder items={items} />)
    .split('<svg')
    .slice(1)
const numbers = (html: string, what: RegExp) => [...html.matchAll(what)].map((m) => m.slice(1).map(Number))

describe.each([1, 2, 3, 5, 8, ITEMS.length])('%i rungs', (count) => {
  const items = ITEMS.slice(0, count)
  it.each([0, 1])('sheet %i: one person, and each timber as tall beside them as it is', (sheet) => {
    const html = drawings(items)[sheet] ?? ''
    const people = numbers(html, /translate\(([\d.]+) ([\d.]+)\) scale\(([\d.]+)\)/g)
    expect(people).toHaveLength(1)
    const [, feet = 0, scale = 0] = people[0] ?? []
    const blocks = numbers(
      html,
      /<rect class="seen f-pale" x="([\d.]+)" y="([\d.-]+)" width="([\d.]+)" height="([\d.]+)"/g
    )
    expect(blocks).toHaveLength(count)
    const [, , , wide = 0, high = 0] = (/viewBox="(\d+) (\d+) (\d+) (\d+)"/.exec(html) ?? []).map(Number)
    for (const [i, [x = 0, y = 0, w = 0, h = 0]] of blocks.entries()) {
      const [b, d] = items[i]?.section ?? [0, 0]
      expect(Math.abs(w - b * scale)).toBeLessThan(0.1)
      expect(Math.abs(h - d * scale)).toBeLessThan(0.1)
      expect(x >= 0 && y >= 0 && x + w <= wide && y + h <= feet + 0.2).toBe(true)
    }
    // Head in the sheet, feet on the ground on which the last row lies.
    expect(feet - PERSON_MM * scale).toBeGreaterThanOrEqual(0)
    expect(feet).toBeLessThan(high)
    const last = blocks.at(-1) ?? []
    expect(Math.abs((last[1] ?? 0) + (last[3] ?? 0) - feet)).toBeLessThan(0.2)
    expect(html).toMatch(/beside a person/)
    expect(html).not.toMatch(/NaN|undefined|style=/)
  })
  it('timbers of a row keep clear of each other', () => {
    for (const html of drawings(items)) {
      const blocks = numbers(
        html,
        /<rect class="seen f-pale" x="([\d.]+)" y="([\d.-]+)" width="([\d.]+)" height="([\d.]+)"/g
      )
      for (const [i, [x = 0, y = 0, w = 0, h = 0]] of blocks.entries()) {
        const [nx, ny = 0, , nh = 0] = blocks[i + 1] ?? []
        if (nx !== undefined && Math.abs(ny + nh - y - h) < 0.2) expect(nx).toBeGreaterThan(x + w)
      }
    }
  })
})

it('inches are called by inches, a metric series by its millimetres', () => {
  const text = (section: LadderItem['section']) =>
    (drawings([{ label: 'x', section }])[0] ?? '').replace(/<[^>]+>/g, ' ')
  expect(text([8 * INCH, 12 * INCH])).toMatch(/8 × 12 +203 × 305/)
  expect(text([200, 300])).toMatch(/ 200 × 300 +x/)
})
