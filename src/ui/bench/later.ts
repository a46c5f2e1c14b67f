/**
 * A picture stands without script; what moves it is fetched once the first view is there, or at the first touch. That
 * is why a bench is no island of the framework's: its runtime would be part of the first view.
 */
interface Waker {
  readonly wake: (root: HTMLElement) => Promise<void>
}

/** Wake the bench of that id; `id-waits` says how it stands, `id-again` tries again. */
export function wakeLater(id: string, load: () => Promise<Waker>): void {
  const root = document.getElementById(id)
  const waiting = document.getElementById(`${id}-waits`)
  const again = document.getElementById(`${id}-again`)

  let touched = false
  let failed = false
  function tell(): void {
    if (waiting === null || root === null) return
    const live = root.dataset['live'] !== undefined
    waiting.hidden = live || !touched
    const says = waiting.querySelector('p')
    if (says)
      says.textContent = failed ? 'The controls did not load. What you typed is kept.' : 'Loading the controls …'
    if (again) again.hidden = !failed
  }

  let asking = false
  function fetchIt(): void {
    if (asking || root === null) return
    asking = true
    failed = false
    tell()
    load()
      .then(({ wake }) => wake(root))
      .catch(() => {
        failed = true
        asking = false
      })
      .finally(tell)
  }

  root?.addEventListener('input', () => {
    touched = true
    fetchIt()
  })
  root?.addEventListener('focusin', fetchIt, { once: true })
  again?.addEventListener('click', fetchIt)

  if ('requestIdleCallback' in window) requestIdleCallback(fetchIt, { timeout: 1000 })
  else setTimeout(fetchIt, 200)
}
