// @ts-nocheck: the types of pages and of workers exclude each other, and this is the one worker.
// The service worker, without its list of files: worker.mjs writes BASE, NAME, FIRST and LATER before this.
// One version of everything is kept together: code never meets the data of another. A new version waits until no page of
// the old one is open, so nobody is switched over between two questions.
/* global BASE, NAME, FIRST, LATER */

const request = (path) =>
  // Names under _astro/ change with their content; anything else is asked for anew.
  new Request(BASE + path, { cache: path.startsWith('_astro/') ? 'default' : 'no-cache' })

addEventListener('install', (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(FIRST.map(request))))
})

addEventListener('activate', (event) => {
  event.waitUntil(dropOld().then(() => fill().catch(() => {})))
})

async function dropOld() {
  const old = (await caches.keys()).filter((name) => name.startsWith(`bentwise ${BASE} `) && name !== NAME)
  await Promise.all(old.map((name) => caches.delete(name)))
}

let filling

/** The pages to read, one by one once the job can be done; not where the reader asked to save data. */
async function fill() {
  if (navigator.connection?.saveData) return
  const cache = await caches.open(NAME)
  const have = new Set((await cache.keys()).map(({ url }) => new URL(url).pathname))
  for (const path of LATER) if (!have.has(BASE + path)) await cache.add(request(path))
}

addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request
  const { origin, pathname, search } = new URL(url)
  if (method !== 'GET' || origin !== location.origin || !pathname.startsWith(BASE)) return
  if (mode === 'navigate') {
    filling ??= fill().catch(() => {
      filling = undefined
    })
    event.waitUntil(filling)
  }
  event.respondWith(answer(event.request, pathname, search))
})

async function answer(asked, pathname, search) {
  const cache = await caches.open(NAME)
  // By path alone: the index of the search is asked for with the time behind a question mark.
  const kept = await cache.match(pathname)
  if (kept) return kept
  try {
    return await fetch(asked)
  } catch {
    if (asked.mode !== 'navigate') return Response.error()
    if (await cache.match(`${pathname}/`)) return Response.redirect(`${pathname}/${search}`)
    return (await cache.match(`${BASE}offline/`)) ?? Response.error()
  }
}
