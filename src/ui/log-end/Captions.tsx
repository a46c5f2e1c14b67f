/** Under each log end: what it is, the log it lies in, what its faces do; and the way to work on the other one. */
import type { DriedPiece, FaceId, LogPiece } from '../../wood/log-end'
import { Figure } from '../say/Figure'
import { Q } from '../say/Q'
import { useBench, useView } from './bench'
import { type Bench, SIDES, type Side, type View } from './model'
import { FACES, figure, figuresOf, kindOf, mostOf, section, swells, timesWords, VISIBLE } from './words'

function Told({
  bench,
  piece,
  dried
}: {
  readonly bench: Bench
  readonly piece: LogPiece
  readonly dried: DriedPiece
}) {
  const figures = figuresOf(bench, piece, dried)
  const change = (id: FaceId) => Math.abs(dried.faces[id].before - dried.faces[id].after)
  const check = Math.max(...FACES.map((id) => dried.faces[id].check))
  return (
    <>
      <p>
        <Figure q={section(piece)} /> from a <Figure q={figure('diameter', piece.logDiameter)} /> log
      </p>
      <p>
        a face {swells(dried) ? 'gains' : 'loses'} up to <Q q={figures.face(change(mostOf(change)))} />
      </p>
      <p>
        {check >= VISIBLE ? (
          <>
            a check opens up to <Q q={figures.check(check)} />
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
      Dashed, as sawn; filled, as {swells(dried[0]) ? 'swollen' : 'dried'}. The band under the bark is sapwood, the dot
      the pith; rings are set evenly.
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
          <Told bench={shown} piece={shown.pieces[side]} dried={dried[side]} />
          <p class="needs-script">
            {side === asked.chosen ? (
              'This one moves: drag it, or use the arrow keys.'
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
