/** Codes and addresses made at build name the site that it was built for; served from elsewhere, they are made anew. */
import { qrOf, qrPath, qrSide } from '../../shop/qr'

/** An address as one would read it out. */
const spoken = (url: URL): string => url.host + url.pathname

function mend(code: Element, here: URL): void {
  const qr = qrOf(here.href, 'M')
  const svg = code.querySelector('svg')
  if (qr === null || svg === null) return
  const side = String(qrSide(qr))
  svg.setAttribute('viewBox', `0 0 ${side} ${side}`)
  svg.querySelector('rect')?.setAttribute('width', side)
  svg.querySelector('rect')?.setAttribute('height', side)
  svg.querySelector('path')?.setAttribute('d', qrPath(qr))
  const words = code.querySelector('[data-address-words]')
  if (words) words.textContent = spoken(here)
}

export function mendCodes(): void {
  for (const code of document.querySelectorAll<HTMLElement>('[data-address]')) {
    const built = new URL(code.dataset['address'] ?? '', location.href)
    const here = new URL(built.pathname, location.origin)
    if (!/^https?:$/.test(here.protocol)) continue
    if (here.href !== built.href) mend(code, here)
    for (const part of code.querySelectorAll('[data-code]')) part.removeAttribute('hidden')
  }
}
