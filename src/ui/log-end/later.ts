/**
 * The picture stands without script; what moves it is fetched once the first view is there. That is why this is no
 * island of the framework's: its runtime would be part of the first view.
 */
const root = document.getElementById('log-ends')

/** A lost connection: picture and text stay, and the next visit tries again. */
const fetchIt = () =>
  void import('./wake').then(
    ({ wake }) => root && wake(root),
    () => {}
  )

if ('requestIdleCallback' in window) requestIdleCallback(fetchIt, { timeout: 1000 })
else setTimeout(fetchIt, 200)
