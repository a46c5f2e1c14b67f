/** Whether a wood is enough by nature where it stands, and how long it is expected to last, in words with their source. */
import type { Origin } from '../data/quantity'
import { originOf, type Reference, type Sourced, type Wood } from '../data/reference'
import { sufficiencyOf, type Verdict } from '../wood/decay'
import { expectedLife, type Years } from '../wood/lasting'
import type { Facts } from './facts'

/** The verdict of the matrix at the better and the worse end of the wood's class range. Source: en-460-1994, Table 1. */
export function verdictsOf(wood: Wood, facts: Facts, reference: Reference): readonly [best: Verdict, worst: Verdict] {
  const { byUseClass } = reference.decay.sufficiency
  const at = (durabilityClass: number) => sufficiencyOf(byUseClass, facts.useClass, durabilityClass)
  return [at(wood.durability.best), at(wood.durability.worst)]
}

/** "usually enough", or both ends of a range that straddles two verdicts. */
export function verdictWords(wood: Wood, facts: Facts, reference: Reference): string {
  const { words } = reference.decay.sufficiency
  const [best, worst] = verdictsOf(wood, facts, reference)
  return best === worst ? words[best] : `${words[best]} at the better end of its range, ${words[worst]} at the worse`
}

/** What sapwood is worth there: always of the lowest class, whatever the heartwood. */
export function sapwoodWords(facts: Facts, reference: Reference): string {
  const { sufficiency, sapwood } = reference.decay
  const { durabilityClass: lowest } = sapwood
  const verdict = sufficiency.words[sufficiencyOf(sufficiency.byUseClass, facts.useClass, lowest)]
  return `${verdict}; it lasts ${life({ best: lowest, worst: lowest }, facts, reference).says}`
}

export interface Life {
  /** From the worse end of the class range to the better. */
  readonly spread: readonly [Years, Years]
  readonly says: string
  readonly origin: Origin
}

/** Expected life of the heartwood there. */
export const lifeOf = (wood: Wood, facts: Facts, reference: Reference): Life => life(wood.durability, facts, reference)

function life({ best, worst }: Pick<Wood['durability'], 'best' | 'worst'>, facts: Facts, reference: Reference): Life {
  const { dry, aboveGround, groundYears, stakes } = reference.decay
  const spread = expectedLife({ dry, aboveGround, ground: groundYears }, facts.useClass, facts.hazard, best, worst)
  const [low, high] = spread
  const inGround = facts.useClass === '4'
  const range = inGround
    ? `${low.says} at the worse end of its class range, ${high.says} at the better`
    : `from ${low.says} to ${high.says}`
  // The years of the classes are from a cool climate; stakes in a warm wet one lasted less.
  const faster = inGround ? stakes.find((s) => s.qualifies && s.hazards.includes(facts.hazard)) : undefined
  const from = originOf((inGround ? groundYears[0] : facts.useClass.startsWith('3') ? aboveGround : dry) as Sourced)
  return {
    spread,
    says: `${low.says === high.says ? low.says : range}${faster ? `, ${faster.qualifies}` : ''}`,
    origin: faster ? { ...from, sources: [...from.sources, ...originOf(faster).sources] } : from
  }
}
