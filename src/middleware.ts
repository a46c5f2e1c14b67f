/** Words of the trade open their meaning in place, on every page: marked in the page as it is built. */
import { defineMiddleware } from 'astro:middleware'
import { h } from 'preact'
import { render } from 'preact-render-to-string'
import { glossary } from './notes/words'
import { href } from './ui/site/href'
import { Meanings } from './ui/words/Meanings'
import { type Drawn, markWords } from './ui/words/mark'

const drawn: Drawn = {
  button: (id, said) => `<button type="button" class="term" popovertarget="term-${id}">${said}</button>`,
  link: (id, said) => `<a class="term" href="${href(`/glossary/#${id}`)}">${said}</a>`,
  meanings: (ids) => render(h(Meanings, { ids, glossary }))
}

export const onRequest = defineMiddleware(async ({ url }, next) => {
  const response = await next()
  const isPage = response.headers.get('content-type')?.startsWith('text/html')
  // The glossary itself defines the words.
  if (!isPage || url.pathname === href('/glossary/')) return response
  const html = markWords(await response.text(), glossary, drawn)
  return new Response(html, { status: response.status, headers: response.headers })
})
