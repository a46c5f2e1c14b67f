/** Where a picture is wanted before anything is known: worked by the engine from plain figures, never drawn by hand. */
import type { LogEnd } from '../../choice/types'
import { sectionShape } from '../../wood/log-end'
import type { SwatchRow } from './faces'

/** Drawn this many times larger than it moves, so that it can be seen. */
export const SAMPLE_EXAGGERATION = 2.5

/** Rings evenly apart: how many a real log has is not known. */
export function ringsOf(logRadius: number, count = 14): number[] {
  return Array.from({ length: count }, (_, i) => (logRadius * (i + 1)) / (count + 1))
}

/** `radial`, `tangential`: shrinkage from green to service, fractions. */
export function sampleLogEnd(
  heart: LogEnd['heart'],
  size: number,
  radial: number,
  tangential: number,
  exaggeration = SAMPLE_EXAGGERATION
): LogEnd {
  const shape = sectionShape({ heart, breadth: size, depth: size, radial, tangential, exaggeration })
  return { ...shape, ringRadii: ringsOf(shape.logRadius), exaggeration, says: { text: '' } }
}

/** Finishes over a pale, a middling and a dark wood, roughly: for the questions, where no wood is settled yet. */
export const FINISH_IDS = ['grey', 'clear', 'pale', 'mid', 'dark', 'painted'] as const
export const FINISH_NAMES = ['bare', 'clear', 'pale', 'mid', 'dark', 'paint'] as const
export const ROUGH_SWATCHES: readonly SwatchRow[] = [
  { label: 'pale wood', colours: ['#b3b1a9', '#d9b27c', '#ecdfc8', '#a97b4b', '#60432b', '#dfe1dc'] },
  { label: 'red-brown', colours: ['#a5a39c', '#b97f50', '#d9bf9f', '#93633b', '#553722', '#dfe1dc'] },
  { label: 'dark wood', colours: ['#93918b', '#855b3a', '#ab8b6b', '#754c2f', '#46301f', '#dfe1dc'] }
]
