/**
 * What a figure opens to. Spans throughout: the note stands inside the paragraph or the cell of its figure, where
 * a block element would be moved out by the parser.
 */
import type { Origin } from '../../data/quantity'
import { Figure } from './Figure'
import { useLibrary } from './library'
import { tell } from './origin'

export function SourceNote({ origin }: { origin: Origin }) {
  const told = tell(origin, useLibrary())
  return (
    <>
      {told.formula && (
        <span class="source-formula">
          <b>{told.formula.name}</b>
          <span class="formula">{told.formula.text}</span>
          {told.formula.valid && <span class="source-valid">Holds for: {told.formula.valid}</span>}
        </span>
      )}
      {told.inputs.length > 0 && (
        <span class="source-inputs">
          {told.inputs.map(([name, q]) => (
            <span key={name} class="source-input">
              <span>{name}</span>{' '}
              <b>
                <Figure q={q} />
              </b>
            </span>
          ))}
        </span>
      )}
      {told.sources.map((source) => (
        <span key={`${source.key} ${source.where}`} class="source-cite">
          {source.title}
          {source.where && <>, {source.where}</>}
        </span>
      ))}
      <span class="source-mark">How we know: {told.mark}.</span>
    </>
  )
}
