/** The brief as a sheet, top-down as a person would ask. Drawn at build for the examples, in the browser for one's own. */
import type { ComponentChildren } from 'preact'
import type { Brief } from '../../choice/brief-types'
import type { Comparison } from '../../choice/firm/comparison'
import type { WhatIf as WhatIfList } from '../../choice/firm/what-if'
import { encodeLink, type Given } from '../../shop/link'
import { type Library, LibraryProvider } from '../say/library'
import { Say } from '../say/Say'
import { Shelf } from '../say/Shelf'
import { NoteShelf, ShelfProvider } from '../say/shelf'
import { WordScope } from '../words/scope'
import { Advice } from './Advice'
import { Contents } from './Contents'
import { Cost } from './Cost'
import { Drying } from './Drying'
import { Lasting } from './Lasting'
import { Movement } from './Movement'
import { Origins } from './Origins'
import { Paragraphs } from './Sentences'
import { ShopDetail } from './ShopDetail'
import { SideBySide } from './SideBySide'
import { Sizes } from './Sizes'
import { Sure } from './Sure'
import { TitleBlock } from './TitleBlock'
import { Told } from './Told'
import { TradeOffs } from './TradeOffs'
import { WhatIf } from './WhatIf'
import { Why } from './Why'
import { Woods } from './Woods'

interface Props {
  readonly brief: Brief
  readonly library: Library
  /** The same job, to hold any two options against each other. */
  readonly compare: Comparison
  /** null while it is worked off. */
  readonly whatIf: WhatIfList | null
  /** The code of its link, where it carries a sheet. */
  readonly code?: string
  /** Which of its answers came with the shop's invite. */
  readonly given?: Given | undefined
  readonly actions?: ComponentChildren
}

export function BriefView({ brief, library, compare, whatIf, code, given, actions }: Props) {
  const shelf = typeof window === 'undefined' ? new NoteShelf() : null
  return (
    <LibraryProvider value={library}>
      <ShelfProvider value={shelf}>
        <article class="brief">
          <TitleBlock brief={brief} />
          <h1>
            <Say s={brief.headline} />
          </h1>
          <div class="stack summary">
            <WordScope>
              <Paragraphs of={brief.summary} lead />
            </WordScope>
            {actions}
            <Contents />
          </div>
          <Sure brief={brief} />
          <Why brief={brief} />
          <SideBySide brief={brief} compare={compare} />
          <WhatIf list={whatIf} />
          <Woods brief={brief} />
          <TradeOffs brief={brief} compare={compare} />
          <Sizes brief={brief} />
          <Movement brief={brief} />
          <Drying brief={brief} />
          <Lasting brief={brief} />
          <Cost brief={brief} />
          <Advice brief={brief} />
          <ShopDetail brief={brief} code={code ?? encodeLink(brief.answers)} />
          <Told brief={brief} given={given} />
          <Origins brief={brief} />
          <Shelf />
        </article>
      </ShelfProvider>
    </LibraryProvider>
  )
}
