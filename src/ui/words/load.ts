/** The glossary in the browser: one file of this site, asked for after the first view and kept. */
import { useEffect, useState } from 'preact/hooks'
import type { Glossary } from '../../notes/glossary'
import { href } from '../site/href'

let here: Glossary | null = null
let asked: Promise<Glossary> | null = null

async function ask(): Promise<Glossary> {
  const response = await fetch(href('/data/glossary.json'))
  if (!response.ok) throw new Error(`glossary: ${response.status}`)
  here = (await response.json()) as Glossary
  return here
}

/** @throws where it does not come; the next one to ask tries again. */
export function loadGlossary(): Promise<Glossary> {
  asked ??= ask().catch((error) => {
    asked = null
    throw error
  })
  return asked
}

/** null until it has come. Without it words are words. */
export function useGlossary(): Glossary | null {
  const [glossary, keep] = useState(here)
  useEffect(() => {
    if (glossary === null) loadGlossary().then(keep, () => {})
  }, [glossary])
  return glossary
}
