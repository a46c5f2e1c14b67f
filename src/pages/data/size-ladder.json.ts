/** The example of the size ladder as figures: fetched after the first view, when the drawn one is to come to life. */
import { content } from '../../data/content'
import { buildReference } from '../../data/reference'
import { givenOf } from '../../ui/size-ladder/at-build'

export const GET = (): Response =>
  new Response(JSON.stringify(givenOf(buildReference(content))), { headers: { 'Content-Type': 'application/json' } })
