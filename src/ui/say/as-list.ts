/** A list without marks stays a list to one screen reader only where the role says so; spread onto `ul.plain`. */
export const asList = { role: 'list' } as const
