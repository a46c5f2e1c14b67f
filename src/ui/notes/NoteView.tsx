/** A note as a page shows it, drawn at build; nothing in it needs script. */
import type { ComponentChildren } from 'preact'
import type { Library, Note, NoteBlock } from '../../notes/note'
import { LibraryProvider } from '../say/library'
import { Shelf } from '../say/Shelf'
import { NoteShelf, ShelfProvider } from '../say/shelf'
import { SizeCaution } from '../site/SizeCaution'
import { NoteTable } from './NoteTable'
import { Parts } from './Parts'
import { pictureOf } from './pictures'

interface Props {
  readonly note: Note
  readonly library: Library
  readonly children?: ComponentChildren
}

export function NoteView({ note, library, children }: Props) {
  const { sources, formulas } = library.reference
  return (
    <LibraryProvider value={{ sources, formulas }}>
      <ShelfProvider value={new NoteShelf()}>
        <div class="stack note-text">
          {note.blocks.map((block, i) => (
            <One key={i} block={block} library={library} />
          ))}
          {note.sized && <SizeCaution />}
          {children}
        </div>
        <Shelf />
      </ShelfProvider>
    </LibraryProvider>
  )
}

function One({ block, library }: { readonly block: NoteBlock; readonly library: Library }) {
  switch (block.kind) {
    case 'heading':
      return <h2>{block.text}</h2>
    case 'paragraph':
      return (
        <p>
          <Parts of={block.of} />
        </p>
      )
    case 'warning':
      return (
        <p class="caution">
          <Parts of={block.of} />
        </p>
      )
    case 'list': {
      const items = block.items.map((item, i) => (
        <li key={i}>
          <Parts of={item} />
        </li>
      ))
      return block.ordered ? <ol class="note-steps">{items}</ol> : <ul class="list">{items}</ul>
    }
    case 'table':
      return <NoteTable table={block.table} caption={block.caption} />
    case 'picture':
      return (
        <figure class="figure">
          {pictureOf(block.call, library)}
          <figcaption>
            <Parts of={block.caption} />
          </figcaption>
        </figure>
      )
  }
}
