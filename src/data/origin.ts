/** Where a group of numbers in a content file comes from. */
import type { Origin } from './quantity'
import type { Mark } from './schema'

export interface Sourced {
  readonly source: string
  readonly where?: string | undefined
  readonly mark: Mark
}

/** The origin of a group of numbers. */
export function originOf(group: Sourced): Origin {
  return {
    mark: group.mark,
    sources: [group.where ? { key: group.source, where: group.where } : { key: group.source }]
  }
}
