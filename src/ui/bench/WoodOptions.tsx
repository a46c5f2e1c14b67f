/** The woods of a list, those of the shop's sheet first where one is in use here. */
import type { BenchShop } from './in-force'

interface Props {
  readonly woods: readonly { readonly id: string; readonly name: string }[]
  readonly chosen: string
  readonly shop: BenchShop | null
}

export function WoodOptions({ woods, chosen, shop }: Props) {
  const list = (of: Props['woods']) =>
    of.map(({ id, name }) => (
      <option key={id} value={id} selected={id === chosen}>
        {name}
      </option>
    ))
  if (shop === null) return <>{list(woods)}</>
  const [carried, rest] = [woods.filter((w) => shop.woods.has(w.id)), woods.filter((w) => !shop.woods.has(w.id))]
  return (
    <>
      {carried.length > 0 && <optgroup label={shop.name}>{list(carried)}</optgroup>}
      {rest.length > 0 && <optgroup label="Not on its sheet">{list(rest)}</optgroup>}
    </>
  )
}
