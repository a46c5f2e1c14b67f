/** The bibliography and the formulas, at hand for every figure on the page. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Mark } from '../../data/schema'

export interface SourceEntry {
  readonly title: string
  readonly by?: string | undefined
  readonly year?: number | undefined
  readonly edition?: string | undefined
}
export interface FormulaEntry {
  readonly name: string
  readonly text: string
  readonly source: string
  readonly where?: string | undefined
  readonly mark: Mark
  readonly valid?: string | undefined
}
export interface Library {
  readonly sources: Readonly<Record<string, SourceEntry>>
  readonly formulas: Readonly<Record<string, FormulaEntry>>
}

const Shelf = createContext<Library>({ sources: {}, formulas: {} })
export const LibraryProvider = Shelf.Provider
export const useLibrary = (): Library => useContext(Shelf)
