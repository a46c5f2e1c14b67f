/** The words of the size ladder's fields, and a setting in one line. */
import type { LadderAsked } from '../../choice/ladder/types'
import { isFloor, isSnowed, slotsOf, usesField } from '../../choice/ladder/uses'
import { fieldWords } from '../format/field'
import type { System } from '../format/quantity'
import { pointWords } from './read'

export interface WoodName {
  readonly id: string
  readonly name: string
  /** Within a sentence. */
  readonly said: string
}
type Options = readonly (readonly [id: string, words: string])[]

export const WHAT: Options = [
  ['king', 'King-post truss'],
  ['king-struts', 'King-post truss with struts'],
  ['queen', 'Queen-post truss'],
  ['rafter', 'Rafter on a ridge beam'],
  ['ridge', 'Ridge beam'],
  ['purlin', 'Purlin'],
  ['beam', 'Beam or girt'],
  ['joist', 'Floor joist'],
  ['post', 'Post']
]
export const BEARS: Options = [
  ['roof', 'Roof: plank, panel, metal or shingles'],
  ['roof-open', 'Roof: boards, no insulation'],
  ['roof-slate', 'Roof: plank, panel, slate'],
  ['roof-tile', 'Roof: plank, panel, clay tile'],
  ['rooms', 'Floor of rooms'],
  ['deck', 'Deck in the open'],
  ['storage', 'Floor for light storage']
]
export const WHERE: Options = [
  ['heated', 'In a heated room'],
  ['unheated', 'Under a roof, not heated'],
  ['weather', 'In the weather: wet']
]
export const BOUGHT: Options = [
  ['green', 'Green'],
  ['dry', 'Dried']
]
export const GRADES: Options = [
  ['select', 'Select Structural'],
  ['no1', 'No. 1'],
  ['no2', 'No. 2']
]
export const SAWN: Options = [
  ['full-sawn', 'Inches, full-sawn'],
  ['planed', 'Inches, planed 1/2 in under'],
  ['metric', 'Metric, full-sawn 25 mm steps']
]

const SERIES_WORDS: Readonly<Record<string, string>> = {
  planed: 'planed',
  'full-sawn': 'full-sawn',
  metric: 'full-sawn to metric sizes'
}

export const spanLabel = (kind: string): string =>
  kind === 'rafter' ? 'Run, on plan' : kind === 'post' ? 'Length of beam it carries' : 'Clear span'
export const widthLabel = (kind: string): string =>
  kind === 'beam' || kind === 'ridge' || kind === 'post' ? 'Width it carries' : 'Spacing'

const labelOf = (list: Options, id: string): string => list.find(([key]) => key === id)?.[1] ?? id

/** "King-post truss, 24 ft span, 10 ft spacing, 8 in 12; roof: ..., 40 psf of snow on the ground; in a heated room; green, No. 1, full-sawn." */
export function settingWords(asked: LadderAsked, system: System): string {
  const length = (mm: number) => fieldWords(mm, 'span', system)
  const { kind, bears } = asked
  const size =
    kind === 'post'
      ? `${length(asked.height)} high, for ${length(asked.span)} of beam and ${length(asked.width)} of width`
      : `${length(asked.span)} ${kind === 'rafter' ? 'run' : 'span'}, ${length(asked.width)} ${widthLabel(kind) === 'Spacing' ? 'spacing' : 'carried'}`
  const slope = isFloor(bears) ? '' : `, ${fieldWords(asked.slope, 'pitch', system)}`
  const snow = isSnowed(bears) ? `, ${fieldWords(asked.snow, 'areaLoad', system)} of snow on the ground` : ''
  const points = slotsOf(usesField('loads', asked) ? asked.loads : '').map((slot) => {
    const at = asked[`at${slot}`]
    const place = Math.abs(at - asked.span / 2) < 1 ? 'mid-span' : fieldWords(at, 'span', system)
    return `, ${pointWords(asked[`point${slot}`], system)} at ${place}`
  })
  const bought = [
    labelOf(BOUGHT, asked.dryness).toLowerCase(),
    labelOf(GRADES, asked.grade),
    SERIES_WORDS[asked.surface] ?? asked.surface
  ].join(', ')
  return `${labelOf(WHAT, kind)}, ${size}${slope}; ${labelOf(BEARS, bears).toLowerCase()}${snow}${points.join('')}; ${labelOf(WHERE, asked.lives).toLowerCase()}; ${bought}.`
}
