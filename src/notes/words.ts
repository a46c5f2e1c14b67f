/** The glossary of the site, gathered by the bundler and read once. */
import { readGlossary } from './glossary'

export const glossary = readGlossary(
  Object.values(import.meta.glob('../../content/glossary.json', { eager: true, import: 'default' }))[0]
)
