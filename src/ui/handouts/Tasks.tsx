/** The log ends to work on, and the key to them. */
import type { Quantity } from '../../data/quantity'
import { type LogTask, most, nearest } from '../../handouts/log-end'
import { SET } from '../../handouts/movement'
import type { FaceId } from '../../wood/log-end'
import { Figure } from '../say/Figure'
import { LogSheet } from './LogSheet'

const gap = (value: number): Quantity => ({ kind: 'gap', value, origin: SET })
const SEEN_MM = 0.8

const reachOf = (tasks: readonly LogTask[]) => Math.max(...tasks.map((t) => t.piece.logDiameter / 2)) * 1.02

export function Tasks({ tasks }: { readonly tasks: readonly LogTask[] }) {
  const reach = reachOf(tasks)
  return (
    <ol class="tasks plain">
      {tasks.map(({ number, piece, given }) => (
        <li key={number}>
          <b class="task-number">{number}</b>
          <LogSheet
            id={`task-${number}`}
            says={given ? `Log end ${number}, the piece dashed.` : `Log end ${number}, bare: draw the piece.`}
            piece={piece}
            outline={given}
            reach={reach}
          />
          <p class="write" aria-hidden="true" />
        </li>
      ))}
    </ol>
  )
}

function Answer({ task: { piece, dried } }: { readonly task: LogTask }) {
  const lost = (id: FaceId) => Math.max(0, dried.faces[id].before - dried.faces[id].after)
  const size = <Figure q={{ kind: 'section', value: [piece.breadth, piece.depth], origin: SET }} />
  if (dried.boxed) {
    const open = nearest(dried)
    const wide = most(dried, 'check')
    return (
      <>
        {size}, pith inside: it has to check.{' '}
        {open === null ? (
          <>
            Any face may open, up to <Figure q={gap(dried.faces[wide].check)} />.
          </>
        ) : (
          <>
            Likeliest on the {open}, nearest to the pith, up to <Figure q={gap(dried.faces[open].check)} />. If all of
            it opened on the {wide}: <Figure q={gap(dried.faces[wide].check)} />.
          </>
        )}
      </>
    )
  }
  const hollow = most(dried, 'cup')
  const cup = dried.faces[hollow].cup
  return (
    <>
      {size}, pith outside: it can stay whole. Loses <Figure q={gap((lost('top') + lost('bottom')) / 2)} /> across,{' '}
      <Figure q={gap((lost('left') + lost('right')) / 2)} /> up and down.
      {cup > SEEN_MM && (
        <>
          {' '}
          The {hollow} goes hollow by <Figure q={gap(cup)} />.
        </>
      )}
      {dried.outOfSquare > SEEN_MM && (
        <>
          {' '}
          Its diagonals end <Figure q={gap(dried.outOfSquare)} /> apart.
        </>
      )}
    </>
  )
}

export function Key({ tasks }: { readonly tasks: readonly LogTask[] }) {
  const reach = reachOf(tasks)
  return (
    <ol class="tasks plain">
      {tasks.map((task) => (
        <li key={task.number}>
          <b class="task-number">{task.number}</b>
          <LogSheet
            id={`key-${task.number}`}
            says={`Log end ${task.number}: dashed as sawn, filled as dry.`}
            piece={task.piece}
            dried={task.dried}
            reach={reach}
          />
          <p class="under">
            <Answer task={task} />
          </p>
        </li>
      ))}
    </ol>
  )
}
