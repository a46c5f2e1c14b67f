/** The picture of a post and its beam marks what the words beside it name, and nothing where the details shed water. */
import { render } from 'preact-render-to-string'
import { expect, it } from 'vitest'
import { WaterMarks } from '../../src/ui/pictures/WaterMarks'

const marks = (html: string) => html.match(/f-caution/g)?.length ?? 0

it.each([
  ['sheltered', false, []],
  ['sheltered', true, []],
  ['usual', false, ['end grain', 'post foot']],
  ['usual', true, ['end grain', 'post foot']],
  ['holding', false, ['end grain', 'joint', 'check on top', 'post foot']],
  ['holding', true, ['end grain', 'joint', 'post foot']]
] as const)('%s, under a roof %s: rot starts at %j', (kept, roofed, places) => {
  const html = render(<WaterMarks kept={kept} roofed={roofed} />)
  expect(marks(html)).toBe(places.length)
  const label = /aria-label="([^"]+)"/.exec(html)?.[1] ?? ''
  for (const place of places) {
    expect(html).toContain(`>${place}</text>`)
    expect(label).toContain(place)
  }
  if (places.length === 0) expect(label).toContain('no place holds water')
})
