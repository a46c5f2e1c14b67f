/** Under each log end: what it is, the log it lies in, what its faces do; and the way to work on the other one. */
import type { DriedPiece, LogPiece } from '../../wood/log-end'
import { Figure } from '../say/Figure'
import { useBench, useView } from './bench'
import { SIDES, type Side, type View } from './model'
import { FACES, figure, kindOf, length, mostOf, section, timesWords } from './words'

function Told({ piece, dried }: { readonly piece: LogPiece; readonly dried: DriedPiece }) {
  const change = (id: (typeof FACES)[number]) => dried.faces[id].before - dried.faces[id].after
  const most = change(mostOf(change))
  const check = Math.max(...FACES.map((id) => dried.faces[id].check))
  return (
    <>
      <p>
        <Figure q={section(piece)} /> from a <Figure q={figure('diameter', piece.logDiameter)} /> log
      </p>
      <p>
        a face loses up to <Figure q={length(Math.max(0, most))} />
      </p>
      <p>
        {dried.boxed ? (
          <>
            a check opens up to <Figure q={length(check)} />
          </>
        ) : (
          'no check has to open'
        )}
      </p>
    </>
  )
}

/** What the drawing shows, in words that follow it. */
export function Legend() {
  const { shown, dried } = useView()
  const times = dried[0].drawnTimes
  const capped = times < shown.exaggeration - 0.05
  return (
    <figcaption>
      {shown.wood.name} from <Figure q={figure('moisture', shown.from)} /> moisture to{' '}
      <Figure q={figure('moisture', shown.to)} />.{' '}
      <b>
        Movement drawn {timesWords(Number(times.toFixed(1)))}
        {capped && ', as far as it can be drawn'}.
      </b>{' '}
      Dashed, as sawn; filled, as dried. The pale band is sapwood, the dot the pith. Rings are set evenly.
    </figcaption>
  )
}

export function Captions() {
  const { change } = useBench()
  const view = useView()
  const { asked, shown, dried } = view
  // A setting that was refused is left behind: the other log end is taken up as it was last drawn.
  const take = (side: Side) => change((now) => ({ ...now, pieces: lastDrawn(view), chosen: side }))
  return (
    <div class="ends-captions">
      {SIDES.map((side) => (
        <div key={side} class={side === asked.chosen ? 'ends-caption ends-caption--chosen' : 'ends-caption'}>
          <p class="ends-name">{kindOf(dried[side])}</p>
          <Told piece={shown.pieces[side]} dried={dried[side]} />
          <p class="needs-script">
            {side === asked.chosen ? (
              'This one moves.'
            ) : (
              <button type="button" class="btn btn--link" onClick={() => take(side)}>
                Move this one instead
              </button>
            )}
          </p>
        </div>
      ))}
    </div>
  )
}

const lastDrawn = (view: View): View['asked']['pieces'] => view.shown.pieces
