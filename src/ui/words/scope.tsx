/** Within a scope, such as a section of the brief, each word is explained where it is first said. */
import { type ComponentChildren, createContext } from 'preact'
import { useContext, useMemo } from 'preact/hooks'
import type { Glossary } from '../../notes/glossary'

export interface Scope {
  readonly glossary: Glossary
  /** Which text explains a word, by the word's id: the first to be drawn, and the same one when drawn again. */
  readonly claims: Map<string, string>
}

/** null where pages are built, since there the words are marked in the page as a whole, and until the glossary has come. */
const Known = createContext<Glossary | null>(null)
export const GlossaryProvider = Known.Provider

const Here = createContext<Scope | null>(null)
export const useScope = (): Scope | null => useContext(Here)

export function WordScope({ children }: { readonly children: ComponentChildren }) {
  const glossary = useContext(Known)
  const scope = useMemo(() => (glossary === null ? null : { glossary, claims: new Map<string, string>() }), [glossary])
  return <Here.Provider value={scope}>{children}</Here.Provider>
}
