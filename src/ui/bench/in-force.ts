/** Whose sheet a bench rests on: that in use on this device, which comes with the engine. */
import type { Engine } from '../engine'
import { sheetInForce } from '../invite/in-force'

export interface BenchShop {
  readonly name: string
  readonly woods: ReadonlySet<string>
}

/** @param told hears of a sheet other than the sample's, once. @throws Error where the engine cannot be loaded */
export async function engineInForce(told: (shop: BenchShop) => void): Promise<Engine> {
  const { from, engine } = await sheetInForce()
  const { name, woods } = engine.sheet
  if (from !== 'sample') told({ name, woods: new Set(woods.map((wood) => wood.species)) })
  return engine
}
