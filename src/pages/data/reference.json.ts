/** What the engine needs to know, as one compact file of this site: fetched after the first view, never from elsewhere. */
import { content, sampleShop } from '../../data/content'

export const GET = (): Response =>
  new Response(JSON.stringify({ content, shop: sampleShop }), { headers: { 'Content-Type': 'application/json' } })
