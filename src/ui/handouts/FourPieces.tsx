/** Four pieces out of alike logs, as sawn and as they dry, each with what its faces lose. */
import type { Quantity } from '../../data/quantity'
import { SET, type ShownPiece } from '../../handouts/movement'
import type { FaceId } from '../../wood/log-end'
import { SMALLEST_GAP_MM } from '../format/length'
import { Figure } from '../say/Figure'
import { LogSheet } from './LogSheet'

const gap = (value: number): Quantity => ({ kind: 'gap', value, origin: SET })

function Says({ shown }: { readonly shown: ShownPiece }) {
  const { piece, dried } = shown
  const lost = (id: FaceId) => dried.faces[id].before - dried.faces[id].after
  const cup = dried.faces.bottom.cup
  return (
    <>
      <Figure q={{ kind: 'section', value: [piece.breadth, piece.depth], origin: SET }} />. Loses{' '}
      <Figure q={gap(lost('top'))} /> of its breadth, <Figure q={gap(lost('right'))} /> of its depth.{' '}
      {dried.boxed ? (
        <>
          Checks on one face: up to <Figure q={gap(Math.max(...Object.values(dried.faces).map((f) => f.check)))} />.
        </>
      ) : cup > SMALLEST_GAP_MM ? (
        <>
          Bark side hollow by <Figure q={gap(cup)} />.
        </>
      ) : (
        `${shown.id === 'quarter' ? 'It stays' : 'It stays nearly'} flat.`
      )}
    </>
  )
}

export function FourPieces({ pieces }: { readonly pieces: readonly ShownPiece[] }) {
  return (
    <div class="four">
      {pieces.map((shown) => (
        <div key={shown.id}>
          <LogSheet
            id={`four-${shown.id}`}
            says={`${shown.name}: dashed as sawn, filled as it dries.`}
            piece={shown.piece}
            dried={shown.dried}
            reach={(shown.piece.logDiameter / 2) * 1.03}
          />
          <p class="under">
            <b>{shown.name},</b> <Says shown={shown} />
          </p>
        </div>
      ))}
    </div>
  )
}
