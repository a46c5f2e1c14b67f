/** The clock's store, for whatever part of the page follows it. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { useSaved } from '../../stores/use-saved'
import type { BenchShop } from '../bench/in-force'
import type { ClockStore, View } from './bench'
import type { Names, WoodName } from './words'

export interface Here {
  readonly store: ClockStore
  readonly woods: readonly WoodName[]
  /** The sheet in use on this device, once the engine is there; null for the sample's. */
  readonly shop: BenchShop | null
}
const Context = createContext<Here | null>(null)
export const ClockProvider = Context.Provider

export function useHere(): Here {
  const here = useContext(Context)
  if (here === null) throw new Error('no clock')
  return here
}

export const useView = (): View => useSaved(useHere().store.$view)
export const useNames = (): Names => ({ woods: useHere().woods, places: useView().places })
