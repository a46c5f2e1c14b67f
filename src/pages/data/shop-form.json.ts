/** What the form of a shop sheet goes by: fetched after the first view, when the drawn form is to come to life. */
import { content } from '../../data/content'
import { buildReference } from '../../data/reference'
import { givenOf } from '../../ui/shop-sheet/given'

export const GET = (): Response =>
  new Response(JSON.stringify(givenOf(buildReference(content))), { headers: { 'Content-Type': 'application/json' } })
