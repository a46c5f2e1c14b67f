/**
 * Figures in prose. `{{gapOf side=8}}` in the text of a wood's page becomes what the engine gives for that wood; `wood=` asks
 * for another's. So no number is typed in prose that the data could give. Sizes in inches.
 */
import { computed, quantity, sentence } from '../choice/say'
import type { Quantity, Sentence } from '../data/quantity'
import type { Wood } from '../data/reference'
import { INCH } from '../data/units'
import type { Section } from '../frame/values'
import type { Heart } from '../wood/section'
import { type Measure, woodOf } from './measure'
import { checkOf, faceOf, gapOf, logOf } from './movement'
import {
  boardsOf,
  clearOf,
  densityOf,
  designOf,
  durabilityOf,
  isClear,
  lineOf,
  supplyOf,
  weightOf,
  yardOf
} from './numbers'
import { SIZES } from './sizes'

type Args = Readonly<Record<string, string>>
interface Make {
  /** Names of what it may be asked with, besides `wood`. */
  readonly takes: readonly string[]
  readonly make: (wood: Wood, args: Args, measure: Measure) => Quantity | null
}

/** "8x10": inches, shorter side first. */
function section({ section: text = '8x8' }: Args): Section {
  const [a = Number.NaN, b = Number.NaN] = text.split('x').map((n) => Number(n) * INCH)
  if (!(a > 0 && b > 0)) throw new RangeError(`not a section: "${text}"`)
  return [Math.min(a, b), Math.max(a, b)]
}

function side({ side: text = '8' }: Args): number {
  const inches = Number(text)
  if (!(inches > 0)) throw new RangeError(`not a side: "${text}"`)
  return inches * INCH
}

function heart({ heart: text = 'boxed' }: Args): Heart {
  if (text !== 'boxed' && text !== 'free') throw new RangeError(`neither boxed nor free: "${text}"`)
  return text
}

/** What can be set over the same of another wood. */
const ONE_NUMBER: Readonly<Record<string, (wood: Wood, measure: Measure) => Quantity | null>> = {
  rupture: (wood) => clearOf(wood, 'rupture'),
  elasticity: (wood) => clearOf(wood, 'elasticity'),
  compressionPerp: (wood) => clearOf(wood, 'compressionPerp'),
  shear: (wood) => clearOf(wood, 'shear'),
  density: densityOf,
  radial: (wood) => quantity('percent', wood.radial, wood.shrinkageOrigin),
  tangential: (wood) => quantity('percent', wood.tangential, wood.shrinkageOrigin),
  green: (wood, measure) => weightOf(wood, [INCH, INCH], false, measure)
}

/** A figure of the wood as a share of the same figure of another: 0.85 is read as "85 %". */
function shareOf(wood: Wood, { of = '', what = '' }: Args, measure: Measure): Quantity | null {
  const one = Object.hasOwn(ONE_NUMBER, what) ? ONE_NUMBER[what] : undefined
  if (!one) throw new RangeError(`no such figure to compare: "${what}"`)
  const other = woodOf(of, measure)
  const [a, b] = [one(wood, measure), one(other, measure)]
  if (!a || !b) return null
  const origin = computed(measure.reference, 'times', { [wood.said]: a, [other.said]: b })
  return quantity('percent', Number(a.value) / Number(b.value), origin)
}

const FIGURES: Readonly<Record<string, Make>> = {
  gapOf: { takes: ['side'], make: (wood, args, m) => gapOf(wood, side(args), m) },
  // The side itself, so that it follows the reader's units.
  sideOf: { takes: ['side'], make: (_, args) => ({ ...SIZES.side, value: side(args) }) },
  faceOf: { takes: ['section', 'heart'], make: (wood, args, m) => faceOf(wood, section(args), heart(args), m) },
  checkOf: { takes: ['section'], make: (wood, args, m) => checkOf(wood, section(args), m) },
  logOf: { takes: ['section', 'heart'], make: (_, args, m) => logOf(section(args), heart(args), m) },
  radialOf: { takes: [], make: (wood) => quantity('percent', wood.radial, wood.shrinkageOrigin) },
  tangentialOf: { takes: [], make: (wood) => quantity('percent', wood.tangential, wood.shrinkageOrigin) },
  greenOf: { takes: [], make: (wood) => quantity('moisture', wood.greenWhole, wood.greenOrigin) },
  heartOf: { takes: [], make: (wood) => quantity('moisture', wood.greenHeartwood, wood.greenOrigin) },
  weightOf: {
    takes: ['section', 'dry'],
    make: (wood, args, m) => weightOf(wood, section(args), args['dry'] === 'yes', m)
  },
  densityOf: { takes: [], make: (wood, _, m) => densityOf(wood, m) },
  clearOf: {
    takes: ['what'],
    make: (wood, { what = '' }) => {
      if (!isClear(what)) throw new RangeError(`no strength of that name: "${what}"`)
      return clearOf(wood, what)
    }
  },
  bendingOf: { takes: [], make: (wood, _, m) => stress(wood, 'bending', m) },
  stiffnessOf: { takes: [], make: (wood, _, m) => stress(wood, 'elasticity', m) },
  crushingOf: { takes: [], make: (wood, _, m) => stress(wood, 'compressionPerp', m) },
  shareOf: { takes: ['what', 'of'], make: shareOf },
  classOf: { takes: [], make: (wood, _, m) => durabilityOf(wood, m) },
  boardsOf: { takes: [], make: (wood) => boardsOf(wood) },
  yardOf: { takes: ['section'], make: (wood, args, m) => yardOf(wood, section(args), m) },
  longestOf: { takes: [], make: (wood) => supplyOf(wood).longest },
  largestOf: { takes: [], make: (wood) => supplyOf(wood).largest },
  biggestLogOf: { takes: [], make: (wood) => supplyOf(wood).log },
  sizeOf: { takes: [], make: (wood, _, m) => lineOf(wood, m)?.section ?? null },
  heaviestOf: { takes: [], make: (wood, _, m) => lineOf(wood, m)?.heaviest?.weight ?? null }
}

function stress(wood: Wood, id: 'bending' | 'elasticity' | 'compressionPerp', measure: Measure): Quantity | null {
  const values = designOf(wood, measure)
  return values && quantity('stress', values[id], values.origin)
}

const DIRECTIVE = /\{\{\s*([A-Za-z]+)((?:\s+[a-z]+=[^\s}=]+)*)\s*\}\}/g

/** The figure that a directive asks for. @throws RangeError where it asks for what there is not, or the wood has no such figure. */
export function figure(name: string, given: string, wood: Wood, measure: Measure): Quantity {
  const found = Object.hasOwn(FIGURES, name) ? FIGURES[name] : undefined
  if (!found) throw new RangeError(`no figure "${name}"`)
  const args: Record<string, string> = {}
  for (const pair of given.trim().split(/\s+/).filter(Boolean)) {
    const [key = '', value = ''] = pair.split('=')
    if (key !== 'wood' && !found.takes.includes(key)) throw new RangeError(`"${name}" takes no "${key}"`)
    args[key] = value
  }
  const asked = args['wood'] === undefined ? wood : woodOf(args['wood'], measure)
  const value = found.make(asked, args, measure)
  if (!value) throw new RangeError(`${asked.said} has no "${name}"`)
  return value
}

/** Text with directives as a sentence whose figures open. @throws RangeError as `figure`, or where braces are left over. */
export function told(text: string, wood: Wood, measure: Measure): Sentence {
  const values: Record<string, Quantity> = {}
  const plain = text.replace(DIRECTIVE, (_, name: string, given: string) => {
    const key = `f${Object.keys(values).length + 1}`
    values[key] = figure(name, given, wood, measure)
    return `{${key}}`
  })
  if (/\{\{|\}\}/.test(plain)) throw new RangeError(`a directive that cannot be read: "${text.slice(0, 80)}"`)
  return sentence(plain, values)
}
