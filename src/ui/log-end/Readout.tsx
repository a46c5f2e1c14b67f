/** The figures of the piece that is worked on, face by face. True sizes: nothing here is enlarged. */
import type { ComponentChildren } from 'preact'
import type { Quantity } from '../../data/quantity'
import { Figure } from '../say/Figure'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { useView } from './bench'
import { chosenOf } from './model'
import { FACE_NAMES, FACES, figuresOf, kindOf, length, swells, VISIBLE } from './words'

type Of = (mm: number) => Quantity

function Change({ mm, of }: { readonly mm: number; readonly of: Of }) {
  if (Math.abs(mm) < VISIBLE) return <>none</>
  return (
    <>
      {mm > 0 ? '−' : '+'}
      <Q q={of(mm)} />
    </>
  )
}

function Cup({ mm, of }: { readonly mm: number; readonly of: Of }) {
  if (Math.abs(mm) < VISIBLE) return <>flat</>
  return (
    <>
      <Q q={of(mm)} /> {mm > 0 ? 'hollow' : 'proud'}
    </>
  )
}

const Row = ({ name, children }: { readonly name: string; readonly children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
)

export function Readout() {
  const { shown, dried } = useView()
  const d = dried[shown.chosen]
  const figures = figuresOf(shown, chosenOf(shown), d)
  const moves = swells(d) ? 'Swells' : 'Shrinks'
  return (
    <div class="ends-readout">
      <table class="data">
        <caption>
          {kindOf(d)}, {shown.wood.said}. Straight across each face.
        </caption>
        <Heads words={['Face', 'Now', 'Later', 'Change', d.boxed ? 'Check, at most' : 'Cup']} />
        <tbody>
          {FACES.map((id) => {
            const face = d.faces[id]
            return (
              <tr key={id}>
                <th scope="row">{FACE_NAMES[id]}</th>
                <td>
                  <Figure q={length(face.before)} />
                </td>
                <td>
                  <Q q={figures.face(face.after)} />
                </td>
                <td>
                  <Change mm={face.before - face.after} of={figures.face} />
                </td>
                <td>
                  {!d.boxed ? (
                    <Cup mm={face.cup} of={figures.face} />
                  ) : face.check < VISIBLE ? (
                    'none'
                  ) : (
                    <Q q={figures.check(face.check)} />
                  )}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <dl class="ends-figures">
        <Row name="Out of square, corner to corner">
          {d.missingAngle > 0 ? (
            'checks decide'
          ) : d.outOfSquare < VISIBLE ? (
            'none'
          ) : (
            <Q q={figures.face(d.outOfSquare)} />
          )}
        </Row>
        <Row name={`${moves} towards the pith`}>
          <Q q={figures.radial} />
        </Row>
        <Row name={`${moves} round the rings`}>
          <Q q={figures.tangential} />
        </Row>
        <Row name="Sapwood in the section">
          <Q q={figures.sapwood} />
        </Row>
        <Row name="Smallest log that holds it here">
          <Q q={figures.smallest} />
        </Row>
      </dl>
    </div>
  )
}
