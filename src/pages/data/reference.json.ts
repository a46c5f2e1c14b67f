/** What the engine needs to know, as one compact file of this site: fetched after the first view, never from elsewhere. */
import { content, sampleShop } from '../../data/content'
import { buildReference } from '../../data/reference'
import { readSheetFile } from '../../shop/sheet/file'

// The sheet may be a shop's own, put in place of the sample: what is wrong with it stops the build, in words.
const read = readSheetFile(JSON.stringify(sampleShop), new Set(buildReference(content).woods.keys()))
if (!read.ok) throw new Error(['The shop sheet of this build:', read.says, ...read.list].join('\n  '))
if (read.unknown.length > 0)
  throw new Error(`The shop sheet of this build has woods that there is no data on: ${read.unknown.join(', ')}`)

export const GET = (): Response =>
  new Response(JSON.stringify({ content, shop: sampleShop }), { headers: { 'Content-Type': 'application/json' } })
