/** One wood for a comparison: fetched when it is chosen. */
import type { APIContext } from 'astro'
import { content } from '../../../data/content'
import { buildReference } from '../../../data/reference'
import { compareWood } from '../../../woods-pages/compare-data'
import { measureOf } from '../../../woods-pages/measure'

const reference = buildReference(content)

export const getStaticPaths = () => [...reference.woods.keys()].map((id) => ({ params: { id } }))

export const GET = ({ params }: APIContext): Response =>
  new Response(JSON.stringify(compareWood(params['id'] ?? '', measureOf(reference))), {
    headers: { 'Content-Type': 'application/json' }
  })
