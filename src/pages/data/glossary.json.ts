/** The glossary as a file: fetched after the first view where words are to open in what the browser draws. */
import { glossary } from '../../notes/words'

export const GET = (): Response =>
  new Response(JSON.stringify(glossary), { headers: { 'Content-Type': 'application/json' } })
