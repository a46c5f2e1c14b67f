/** When a question matters: predicates over the answers so far. */
import type { Answers } from '../types'

export const always = () => true
export const loaded = (a: Answers) => a['role'] !== 'looks'
export const trussed = (a: Answers) =>
  loaded(a) && (a['carries'] === 'truss' || a['carries'] === 'unsure' || a['carries'] === undefined)
export const roof = (a: Answers) => loaded(a) && a['carries'] !== 'floor'
/** Snow lies on a roof, and on a deck in the open. */
export const snowed = (a: Answers) =>
  loaded(a) && (a['carries'] !== 'floor' || ['roofed', 'weather', 'ground'].includes(String(a['exposure'])))
export const outside = (a: Answers) =>
  ['roofed', 'weather', 'ground', 'unsure', undefined].includes(a['exposure'] as string | undefined)
export const rained = (a: Answers) => a['exposure'] === 'roofed' || a['exposure'] === 'weather'
export const heated = (a: Answers) =>
  a['project'] !== 'beams' && ['heated', 'unsure', undefined].includes(a['exposure'] as string | undefined)
