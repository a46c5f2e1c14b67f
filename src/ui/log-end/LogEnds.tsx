/** The log ends, to be played with. Drawn at build too, so that the picture and its figures stand without script. */
import { useState } from 'preact/hooks'
import { type Library, LibraryProvider } from '../say/library'
import { BenchProvider, makeBench } from './bench'
import { Captions, Legend } from './Captions'
import { Drawing } from './Drawing'
import { Fields } from './Fields'
import type { BenchWood } from './model'
import { Readout } from './Readout'
import { Says } from './Says'
import { Tools } from './Tools'

interface Props {
  readonly woods: readonly BenchWood[]
  /** Id of the wood to begin with. */
  readonly start: string
  readonly library: Library
}

export function LogEnds({ woods, start, library }: Props) {
  const [bench] = useState(() => makeBench(woods, start))
  return (
    <LibraryProvider value={library}>
      <BenchProvider value={bench}>
        <div class="ends">
          <figure class="figure figure--plain ends-figure">
            <Drawing />
            <Captions />
            <Legend />
          </figure>
          <div class="ends-side">
            <Says />
            <Tools />
            <Readout />
          </div>
          <Fields />
        </div>
      </BenchProvider>
    </LibraryProvider>
  )
}
