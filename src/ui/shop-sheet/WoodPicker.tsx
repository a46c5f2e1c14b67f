/** All woods that there is data on, to be ticked: found by name, by where they grow, or the usual ones of a region at once. */
import { useState } from 'preact/hooks'
import { carriedIn, ON, withField } from '../../shop/sheet/draft'
import { asList } from '../say/as-list'
import { Tick } from './Fields'
import type { FormWood } from './given'
import { idOf, useSheet } from './use-sheet'

const SIDES = [
  ['east', 'The East'],
  ['west', 'The West']
] as const

const plainly = (text: string): string => text.toLowerCase().replace(/[^a-z]+/g, ' ')

export function WoodPicker() {
  const { given, draft, put } = useSheet()
  const [typed, type] = useState('')
  const [where, look] = useState('')
  const carried = new Set(carriedIn(draft))
  const inSide = new Set(given.regions.filter((region) => region.side === where).map((region) => region.id))
  const grows = (wood: FormWood) =>
    where === '' || wood.regions.some((region) => region === where || inSide.has(region))
  const found = given.woods.filter((wood) => grows(wood) && plainly(wood.name).includes(plainly(typed).trim()))
  const usual = given.woods.filter((wood) => wood.usual && where !== '' && grows(wood))
  const here = [...SIDES, ...given.regions.map(({ id, name }) => [id, name] as const)].find(([id]) => id === where)?.[1]
  const more = usual.filter((wood) => !carried.has(wood.id))
  return (
    <div class="stack" id={idOf('woods')} tabIndex={-1}>
      <div class="shop-find">
        <div class="field">
          <label for="shop-find">Find a wood</label>
          <input
            id="shop-find"
            type="search"
            autocomplete="off"
            value={typed}
            onInput={(e) => type(e.currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="shop-where">Growing in</label>
          <select id="shop-where" value={where} onChange={(e) => look(e.currentTarget.value)}>
            <option value="">anywhere</option>
            {SIDES.map(([id, name]) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
            {given.regions.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
      </div>
      {more.length > 0 && (
        <p>
          <button
            type="button"
            class="btn btn--quiet btn--small"
            onClick={() =>
              put(
                more.reduce((next, wood) => withField(next, `wood.${wood.id}`, ON), draft),
                `${more.length} ${more.length === 1 ? 'wood' : 'woods'} ticked. Now their prices.`
              )
            }
          >
            Tick the {more.length} usual {more.length === 1 ? 'one' : 'ones'} of {here?.replace('The ', 'the ')}
          </button>
        </p>
      )}
      <ul class="shop-ticks plain" {...asList} aria-label="Woods">
        {found.map((wood) => (
          <li key={wood.id}>
            <Tick field={`wood.${wood.id}`} label={wood.name} />
          </li>
        ))}
      </ul>
      <p class="note" role="status">
        {found.length === 0 && 'None of this name grows there. '}
        {carried.size === 0 ? 'None ticked yet.' : `${carried.size} ticked, shown or not.`}
      </p>
    </div>
  )
}
