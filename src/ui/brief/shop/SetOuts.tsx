/** How each joint is set out: pegs, distances, steps and seats, named. */
import type { SetOut } from '../../../choice/detail-types'
import { Say } from '../../say/Say'
import { useShelf } from '../../say/shelf'
import { Figures } from '../Figures'

/** A page without script leaves out the sentences: the brief's part on sizes has them. */
export function SetOuts({ of }: { readonly of: readonly SetOut[] }) {
  const still = useShelf() !== null
  return (
    <>
      {of.map(({ name, sizes, says }) => (
        <div key={name} class="set-out">
          <h4>{name}</h4>
          <Figures of={sizes.map(({ label, value }) => [label, value] as const)} />
          {!still && (
            <p class="soft">
              <Say s={says} bare />
            </p>
          )}
        </div>
      ))}
    </>
  )
}
