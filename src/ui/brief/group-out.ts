/** Woods that went out for the same reasons, told once: twenty lines that say the same thing are read by nobody. */
import type { Reason, WoodLine } from '../../choice/types'
import type { Quantity, Sentence } from '../../data/quantity'

export interface OutWood {
  readonly line: WoodLine
  /** The figures in which this wood differs from the others of its group. */
  readonly own: readonly Quantity[]
}
export interface OutGroup {
  readonly key: string
  readonly sentences: readonly Sentence[]
  readonly woods: readonly OutWood[]
}

const outOf = (line: WoodLine): readonly Sentence[] => {
  const reasons = line.report.reasons.filter((reason: Reason) => reason.effect === 'out').map((reason) => reason.says)
  return reasons.length > 0 ? reasons : [line.says]
}

const same = (a: Quantity | undefined, b: Quantity | undefined): boolean =>
  JSON.stringify([a?.value, a?.low, a?.high]) === JSON.stringify([b?.value, b?.low, b?.high])

/** The wood's own name in a sentence would keep it from any group; "this wood" says the same beside the name. */
function nameless(s: Sentence, line: WoodLine): Sentence {
  const text = s.text
    .replaceAll(line.wood, 'It')
    .replaceAll(line.wood.charAt(0).toLowerCase() + line.wood.slice(1), 'it')
  return { ...s, text }
}

/** A figure over all woods of a group: one where they agree, else from the least to the greatest. */
function hull(all: readonly (Quantity | undefined)[]): Quantity | undefined {
  const known = all.filter((q) => q !== undefined)
  const [first] = known
  if (first === undefined || typeof first.value !== 'number' || known.every((q) => same(q, first))) return first
  const values = known
    .flatMap((q) => [q.low, q.high, typeof q.value === 'number' ? q.value : undefined])
    .filter((n) => n !== undefined)
  return { ...first, low: Math.min(...values), high: Math.max(...values) }
}

export function groupOut(lines: readonly WoodLine[]): readonly OutGroup[] {
  const groups = new Map<string, { line: WoodLine; says: readonly Sentence[] }[]>()
  for (const line of lines) {
    const says = outOf(line).map((s) => nameless(s, line))
    const key = says.map((s) => s.text).join(' ')
    groups.set(key, [...(groups.get(key) ?? []), { line, says }])
  }
  return [...groups].map(([key, members]) => {
    const [first] = members
    const sentences = (first?.says ?? []).map((s, i): Sentence => {
      const names = Object.keys(s.values ?? {})
      const values = names.map((name) => [name, hull(members.map((m) => m.says[i]?.values?.[name]))] as const)
      return {
        ...s,
        values: Object.fromEntries(values.filter((pair): pair is readonly [string, Quantity] => pair[1] !== undefined))
      }
    })
    const woods = members.map(({ line, says }): OutWood => {
      const own = says.flatMap((s, i) =>
        Object.entries(s.values ?? {}).filter(([name, q]) => members.some((m) => !same(m.says[i]?.values?.[name], q)))
      )
      return { line, own: own.map(([, q]) => q) }
    })
    return { key, sentences, woods }
  })
}
