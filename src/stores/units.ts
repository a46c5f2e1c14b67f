/** The unit system that the page shows. The switch in the page's head owns it; this store only follows. */
import { atom, onMount } from 'nanostores'

type System = 'us' | 'si'

export const $units = atom<System>('us')

function shown(): System {
  const metric = document.querySelector<HTMLInputElement>('#units-si')
  return (metric?.checked ?? document.documentElement.dataset.units === 'si') ? 'si' : 'us'
}

onMount($units, () => {
  if (typeof document === 'undefined') return
  const follow = () => $units.set(shown())
  $units.set(shown())
  document.addEventListener('change', follow)
  return () => document.removeEventListener('change', follow)
})
