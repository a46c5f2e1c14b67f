/** Everyone may read everything. The map of the site is named where the site knows its own address. */
import type { APIRoute } from 'astro'
import { href } from '../ui/site/href'

export const GET: APIRoute = ({ site }) => {
  const map = site ? `\nSitemap: ${new URL(href('/sitemap-index.xml'), site).href}\n` : ''
  return new Response(`User-agent: *\nAllow: /\n${map}`, { headers: { 'Content-Type': 'text/plain; charset=utf-8' } })
}
