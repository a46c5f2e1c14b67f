/** A colour in two or three plain words, so that a swatch does not speak by colour alone. */
import type { Lab } from '../wood/colour'

/** Greys have less chroma than this, CIELAB; whitish above, and so on down. */
const GREY_BELOW = 9
const TONES: readonly (readonly [number, string])[] = [
  [78, 'very pale'],
  [66, 'pale'],
  [52, 'medium'],
  [38, 'dark'],
  [0, 'very dark']
]

/** "pale yellow-brown", "medium grey" */
export function colourWords({ L, a, b }: Lab): string {
  const chroma = Math.hypot(a, b)
  const tone = TONES.find(([from]) => L >= from)?.[1] ?? 'very dark'
  if (chroma < GREY_BELOW) return L >= 85 ? 'off-white' : `${tone} grey`
  // From red over orange to yellow, degrees.
  const hue = (Math.atan2(b, a) * 180) / Math.PI
  const name = hue < 58 ? 'red-brown' : hue < 70 ? 'brown' : hue < 78 ? 'yellow-brown' : L >= 66 ? 'straw' : 'olive'
  return `${tone} ${name}`
}
