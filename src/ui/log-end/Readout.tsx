/** The figures of the piece that is worked on, face by face. True sizes: nothing here is enlarged. */
import type { ComponentChildren } from 'preact'
import { Figure } from '../say/Figure'
import { useView } from './bench'
import { chosenOf, smallestLog } from './model'
import { FACE_NAMES, FACES, figure, kindOf, length, VISIBLE } from './words'

function Change({ mm }: { readonly mm: number }) {
  if (Math.abs(mm) < VISIBLE) return <>none</>
  return (
    <>
      {mm > 0 ? '−' : '+'}
      <Figure q={length(mm)} />
    </>
  )
}

function Cup({ mm }: { readonly mm: number }) {
  if (Math.abs(mm) < VISIBLE) return <>flat</>
  return (
    <>
      <Figure q={length(mm)} /> {mm > 0 ? 'hollow' : 'proud'}
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
  return (
    <div class="ends-readout">
      <table class="data">
        <caption>
          {kindOf(d)}, {shown.wood.said}. Straight across each face.
        </caption>
        <thead>
          <tr>
            <th scope="col">Face</th>
            <th scope="col">Now</th>
            <th scope="col">Later</th>
            <th scope="col">Change</th>
            <th scope="col">{d.boxed ? 'Check, at most' : 'Cup'}</th>
          </tr>
        </thead>
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
                  <Figure q={length(face.after)} />
                </td>
                <td>
                  <Change mm={face.before - face.after} />
                </td>
                <td>{d.boxed ? <Figure q={length(face.check)} /> : <Cup mm={face.cup} />}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <dl class="ends-figures">
        <Row name="Out of square, corner to corner">
          {d.boxed ? 'checks decide' : d.outOfSquare < VISIBLE ? 'none' : <Figure q={length(d.outOfSquare)} />}
        </Row>
        <Row name="Shrinks towards the pith">
          <Figure q={figure('percent', d.radial)} />
        </Row>
        <Row name="Shrinks round the rings">
          <Figure q={figure('percent', d.tangential)} />
        </Row>
        <Row name="Sapwood in the section">
          <Figure q={figure('percent', d.sapwoodShare)} />
        </Row>
        <Row name="Smallest log that holds it here">
          <Figure q={figure('diameter', smallestLog(chosenOf(shown)))} />
        </Row>
      </dl>
    </div>
  )
}
