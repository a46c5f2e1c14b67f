/** What every stick does from delivery on: across both faces, in checks, in twist. */
import type { MoveLine } from '../../../choice/detail-types'
import { Heads } from '../../say/Heads'
import { Q } from '../../say/Q'
import { Cell } from '../Cell'

const COLUMNS = [
  ['breadth', 'Breadth shrinks'],
  ['breadthShare', 'Of it'],
  ['depth', 'Depth shrinks'],
  ['depthShare', 'Of it'],
  ['checks', 'Checks, at most'],
  ['twist', 'Twist at a corner']
] as const

export function MoveTable({ of }: { readonly of: readonly MoveLine[] }) {
  return (
    <table class="data data--stack shop-table">
      <caption>Movement of each stick</caption>
      <Heads words={['Stick']} numbers={COLUMNS.map(([, label]) => label)} />
      <tbody>
        {of.map((line) => (
          <tr key={line.id}>
            <th scope="row">{line.name}</th>
            {COLUMNS.map(([key, label]) => {
              const q = line[key]
              return (
                <Cell key={key} label={label} num>
                  {q === null ? 'surface only' : <Q q={q} />}
                </Cell>
              )
            })}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
