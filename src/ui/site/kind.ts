/** What kind of page an address is, so that the search can group what it finds and the list of pages has headings. */
const KINDS: readonly (readonly [RegExp, string])[] = [
  [/^\/woods\//, 'Woods'],
  [/^\/notes\//, 'Field notes'],
  [/^\/glossary\//, 'Glossary'],
  [/^\/examples\//, 'Examples'],
  [/^\/(handouts|start\/paper)\//, 'Handouts'],
  [/^\/(framers|shop|invite|compare)\//, 'For framers'],
  [/^\/(benches|log-end|drying-clock|size-ladder|places)\//, 'Benches']
]

/** @param path under the base, with a slash at both ends */
export const kindOf = (path: string): string => KINDS.find(([pattern]) => pattern.test(path))?.[1] ?? 'The site'
