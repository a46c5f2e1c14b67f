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

/** Finishes over white pine, redcedar and walnut by the engine's own model: for the questions, before it has come. A test compares. */
export const FINISH_IDS = ['grey', 'clear', 'pale', 'mid', 'dark', 'painted'] as const
export const FINISH_NAMES = ['bare', 'clear', 'pale', 'mid', 'dark', 'paint'] as const
export const ROUGH_SWATCHES: readonly SwatchRow[] = [
  { label: 'pale wood', colours: ['#817b75', '#d5ae84', '#d7b591', '#a97a53', '#704a2f', '#dfe0dc'] },
  { label: 'red-brown', colours: ['#817b75', '#a07656', '#aa876f', '#a07656', '#714931', '#dfe0dc'] },
  { label: 'dark wood', colours: ['#817b75', '#725945', '#857264', '#725945', '#674d3a', '#dfe0dc'] }
]
