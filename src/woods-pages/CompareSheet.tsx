/** Woods beside each other: a column of pictures for each, the truss in all of them, and one table of their numbers. */
import { LogEndPicture } from '../ui/pictures/LogEndPicture'
import { SizeLadder } from '../ui/pictures/SizeLadder'
import { asList } from '../ui/say/as-list'
import { Figure } from '../ui/say/Figure'
import { href } from '../ui/site/href'
import { SizeCaution } from '../ui/site/SizeCaution'
import { Late, LateSay } from '../ui/size-ladder/Late'
import type { CompareWood } from './compare-data'
import { Looks } from './Parts'
import { SIZES } from './sizes'

interface Props {
  readonly of: readonly CompareWood[]
}

export function CompareSheet({ of }: Props) {
  return (
    <>
      <Pictures of={of} />
      <Table of={of} />
      <SizeCaution />
    </>
  )
}

function Pictures({ of }: Props) {
  const reach = Math.max(...of.flatMap((w) => w.logEnds.map((end) => end.logRadius))) * 1.03
  const rungs = of.flatMap((w) => w.rung ?? [])
  return (
    <>
      <ul class="wood-columns plain" {...asList}>
        {of.map((wood) => (
          <li key={wood.id} class="stack">
            <h2>
              <a href={href(`/woods/${wood.id}/`)}>{wood.name}</a>
            </h2>
            <div class="wood-ends">
              {wood.logEnds.map((end) => (
                <LogEndPicture key={end.heart} logEnd={end} reach={reach} letters={20} />
              ))}
            </div>
            {wood.logEnds.map((end) => (
              <p key={end.heart} class="note">
                <LateSay s={end.says} />
              </p>
            ))}
            <Looks of={wood.looks} />
            {wood.cautions.map((s) => (
              <p key={s.text} class="note">
                {s.text}
              </p>
            ))}
          </li>
        ))}
      </ul>
      {rungs.length > 0 && (
        <figure class="figure figure--plain wood-rungs">
          <SizeLadder items={rungs} narrow={2} />
          <figcaption>
            The stoutest timber of the same truss in each
            {rungs.length < of.length && '; what is missing has no section that carries it, or no published strength'}.
          </figcaption>
        </figure>
      )}
    </>
  )
}

function Table({ of }: Props) {
  const [model] = of
  if (!model) return null
  return (
    <table class="data data--stack wood-compare">
      <caption>
        The same measure for each: a stick of <Figure q={SIZES.square} />, <Figure q={SIZES.stick} /> long, one truss,
        one yard, one room.
      </caption>
      <thead>
        <tr>
          <td />
          {of.map((w) => (
            <th key={w.id} scope="col" class="num">
              {w.short}
            </th>
          ))}
        </tr>
      </thead>
      {model.groups.map((group, g) => (
        <tbody key={group.title}>
          <tr class="wood-group">
            <th scope="rowgroup" colSpan={of.length + 1}>
              {group.title}
            </th>
          </tr>
          {group.rows.map((row, r) => (
            <tr key={row.label}>
              <th scope="row">{row.label}</th>
              {of.map((w) => {
                const value = w.groups[g]?.rows[r]?.value ?? ''
                return (
                  <td key={w.id} class="num" data-label={w.short}>
                    {typeof value === 'string' ? <span class="soft">{value}</span> : <Late q={value} />}
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  )
}
