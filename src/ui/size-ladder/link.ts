/**
 * A setting of the size ladder as the fragment of an address, short enough to read:
 * `#king/24x10ft/8in12/roof/40psf/heated/green/no1/full-sawn/douglas-fir`, with `/h9ft` for a post and `/p2000lb@7ft` for
 * each load at a point, as far from one end; without a place it is at mid-span.
 */
import type { LadderAsked } from '../../choice/ladder/types'
import { SLOTS } from '../../choice/ladder/types'
import { slotsOf, usesField } from '../../choice/ladder/uses'
import { MM_PER_FOOT } from '../format/length'
import { settleLoads } from './points'

const PSF = 47.880_258_98
const POUND_FORCE = 4.448_221_615

const few = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)))

/** Feet where they are whole inches; else millimetres. */
function lengths(list: readonly number[]): string {
  const neat = list.every((mm) => Math.abs(mm / 25.4 - Math.round(mm / 25.4)) < 0.01)
  return neat
    ? `${list.map((mm) => few(mm / MM_PER_FOOT, 4)).join('x')}ft`
    : `${list.map((mm) => few(mm, 1)).join('x')}mm`
}

function pointsOf(asked: LadderAsked): string[] {
  return slotsOf(usesField('loads', asked) ? asked.loads : '').map((slot) => {
    const at = asked[`at${slot}`]
    const place = Math.abs(at - asked.span / 2) < 0.5 ? '' : `@${lengths([at])}`
    return `p${few(asked[`point${slot}`] / POUND_FORCE, 1)}lb${place}`
  })
}

export function linkOf(asked: LadderAsked): string {
  return [
    asked.kind,
    lengths([asked.span, asked.width]),
    `${few(asked.slope * 12, 4)}in12`,
    asked.bears,
    `${few(asked.snow / PSF, 3)}psf`,
    asked.lives,
    asked.dryness,
    asked.grade,
    asked.surface,
    asked.wood,
    ...(usesField('height', asked) ? [`h${lengths([asked.height])}`] : []),
    ...pointsOf(asked)
  ].join('/')
}

const ID = /^[a-z][a-z0-9-]{1,60}$/
const PAIR = /^(\d{1,6}(?:\.\d{1,4})?)x(\d{1,6}(?:\.\d{1,4})?)(ft|mm)$/
const SLOPE = /^(\d{1,3}(?:\.\d{1,4})?)in12$/
const SNOW = /^(\d{1,4}(?:\.\d{1,3})?)psf$/
const HEIGHT = /^h(\d{1,6}(?:\.\d{1,4})?)(ft|mm)$/
const POINT = /^p(\d{1,6}(?:\.\d)?)lb(?:@(\d{1,5}(?:\.\d{1,4})?)(ft|mm))?$/

export type ReadLink =
  | { readonly ok: true; readonly asked: LadderAsked }
  /** The first part that does not fit. */
  | { readonly ok: false; readonly part: string }

/** Read a fragment, without its `#`. What it leaves out is as in `usual`. Whether the names are known, the engine says. */
export function readLink(text: string, usual: LadderAsked): ReadLink {
  const parts = text.slice(0, 300).split('/')
  const [kind = '', sizes = '', rise = '', bears = '', load = '', lives = '', dryness = '', grade = '', surface = ''] =
    parts
  const [wood = '', ...more] = parts.slice(9)
  const bad = (part: string): ReadLink => ({ ok: false, part: part.slice(0, 40) })
  const [pair, slope, snow] = [PAIR.exec(sizes), SLOPE.exec(rise), SNOW.exec(load)]
  if (!ID.test(kind)) return bad(kind)
  if (pair === null) return bad(sizes)
  if (slope === null) return bad(rise)
  if (!ID.test(bears)) return bad(bears)
  if (snow === null) return bad(load)
  for (const id of [lives, dryness, grade, surface, wood]) if (!ID.test(id)) return bad(id)
  const by = (unit: string | undefined) => (unit === 'ft' ? MM_PER_FOOT : 1)
  let { height } = usual
  const span = Number(pair[1]) * by(pair[3])
  const points: { load: number; at: number }[] = []
  for (const part of more) {
    const [high, heavy] = [HEIGHT.exec(part), POINT.exec(part)]
    if (high) height = Number(high[1]) * by(high[2])
    else if (heavy && points.length < SLOTS.length)
      points.push({ load: Number(heavy[1]) * POUND_FORCE, at: heavy[2] ? Number(heavy[2]) * by(heavy[3]) : span / 2 })
    else return bad(part)
  }
  const asked: LadderAsked = {
    ...usual,
    kind,
    span,
    width: Number(pair[2]) * by(pair[3]),
    slope: Number(slope[1]) / 12,
    height,
    bears,
    snow: Number(snow[1]) * PSF,
    lives,
    dryness,
    grade,
    surface,
    wood,
    loads: SLOTS.slice(0, points.length).join('')
  }
  const placed = points.flatMap(({ load, at }, i) => [
    [`point${i + 1}`, load],
    [`at${i + 1}`, at]
  ])
  return { ok: true, asked: settleLoads({ ...asked, ...Object.fromEntries(placed) }) }
}
