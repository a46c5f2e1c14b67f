/** The sample shop sheet as a file: where no script runs, a sheet can be written from it by hand. */
import { sampleShop } from '../../data/content'

export const GET = (): Response =>
  new Response(`${JSON.stringify(sampleShop, null, 2)}\n`, { headers: { 'Content-Type': 'application/json' } })
