/**
 * On a page built without script every figure's note has to stand in the page, and many figures share one note.
 * The shelf keeps each note once; `Shelf` at the end of the page sets them down, and buttons point at them by id.
 */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Origin } from '../../data/quantity'

export class NoteShelf {
  readonly notes = new Map<string, { readonly id: string; readonly origin: Origin }>()

  idOf(origin: Origin): string {
    const key = JSON.stringify(origin)
    const found = this.notes.get(key)
    if (found !== undefined) return found.id
    const id = `note-${this.notes.size + 1}`
    this.notes.set(key, { id, origin })
    return id
  }
}

/** null in the browser, where each note is made when it is first opened. */
const Here = createContext<NoteShelf | null>(null)
export const ShelfProvider = Here.Provider
export const useShelf = (): NoteShelf | null => useContext(Here)
