/** Sentences put together from others, their figures kept. */
import type { Quantity, Sentence } from '../../data/quantity'
import { sentence } from '../say'

/** One sentence from words and sentences in turn. Names of figures that come twice are told apart. */
export function joined(parts: readonly (string | Sentence)[]): Sentence {
  const values: Record<string, Quantity> = {}
  let text = ''
  for (const [i, part] of parts.entries()) {
    if (typeof part === 'string') {
      text += part
      continue
    }
    text += part.text.replace(/\{(\w+)\}/g, (_, name: string) => `{${name}${i}}`)
    for (const [name, value] of Object.entries(part.values ?? {})) values[`${name}${i}`] = value
  }
  return Object.keys(values).length > 0 ? sentence(text, values) : sentence(text)
}
