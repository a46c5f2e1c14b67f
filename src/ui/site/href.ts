/** The address of a page of this site, under whatever folder the site is published in. `href('/start/')` */
export function href(path: string): string {
  const base = import.meta.env.BASE_URL.replace(/\/$/, '')
  return `${base}/${path.replace(/^\//, '')}`
}
