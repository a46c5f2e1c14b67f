/**
 * The colour of wood under a finish. A transparent layer takes light away and a pigment hides; both in linear light,
 * red, green and blue apart. Colours are CIELAB under D65.
 */
import {
  convertLab65ToXyz65,
  convertLrgbToRgb,
  convertRgbToLrgb,
  convertRgbToXyz65,
  convertXyz65ToLab65,
  convertXyz65ToRgb
} from 'culori/fn'

export interface Lab {
  readonly L: number
  readonly a: number
  readonly b: number
}
/** Red, green, blue. */
export type Channels = readonly [number, number, number]

export interface Finish {
  /** KX of the coat itself, as it wets the wood. */
  readonly coat: Channels
  /** KX that one part of stain adds; null where it holds none. */
  readonly stain: Channels | null
  /** Share of the wood that pigment hides, 0 to 1, and its colour. */
  readonly hides: number
  readonly pigment: Lab | null
}

/** Stain of more parts than this is a film of its own, which the model does not know. */
const MOST_STAIN = 4

const each = (f: (channel: 0 | 1 | 2) => number): Channels => [f(0), f(1), f(2)]

/** Reflectance in linear light; outside 0 to 1 where sRGB cannot show the colour. */
export function reflectance({ L, a, b }: Lab): Channels {
  const { r, g, b: blue } = convertRgbToLrgb(convertXyz65ToRgb(convertLab65ToXyz65({ l: L, a, b })))
  return [r, g, blue]
}

/** Colour of light reflected, red, green and blue in linear light from 0 to 1. */
export function labOf([r, g, b]: Channels): Lab {
  const lab = convertXyz65ToLab65(convertRgbToXyz65(convertLrgbToRgb({ r, g, b })))
  return { L: lab.l, a: lab.a ?? 0, b: lab.b ?? 0 }
}

/**
 * Light through a layer that only absorbs, to the wood and back: R = Rwood exp(-2KX), channel by channel.
 * @throws RangeError where KX is negative: a layer gives no light.
 * Source: kubelka-munk, absorption only
 */
export function throughLayer(under: Channels, kx: Channels): Channels {
  if (kx.some((k) => !(k >= 0))) throw new RangeError('KX of a layer below 0')
  return each((i) => under[i] * Math.exp(-2 * kx[i]))
}

/** Part of one colour over another, by area. */
const over = (part: number, top: Channels, under: Channels): Channels =>
  each((i) => part * top[i] + (1 - part) * under[i])

const layerOf = ({ coat, stain }: Finish, parts: number): Channels => each((i) => coat[i] + parts * (stain?.[i] ?? 0))

/** Wood under a finish with so many parts of stain. @param parts 0 or more */
export function finishedColour(wood: Lab, finish: Finish, parts = 0): Lab {
  const { hides, pigment } = finish
  const seen = throughLayer(reflectance(wood), layerOf(finish, parts))
  return labOf(pigment === null ? seen : over(hides, reflectance(pigment), seen))
}

/** Parts of stain that bring this wood down to a lightness; 0 where it is as dark already or the finish holds no stain. */
export function partsFor(wood: Lab, finish: Finish, targetL: number): number {
  if (finish.stain === null) return 0
  let [low, high] = [0, MOST_STAIN]
  if (finishedColour(wood, finish).L <= targetL) return 0
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2
    if (finishedColour(wood, finish, middle).L > targetL) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** How far this finish, with no stain in it, stays below the lightness wanted; 0 where it can be reached. CIELAB L. */
export const shortOf = (wood: Lab, finish: Finish, targetL: number): number =>
  Math.max(0, targetL - finishedColour(wood, finish).L)

/** Whether a finish can be as light as wanted on this wood, within `near` of lightness. A stain only takes light away. */
export const reachable = (wood: Lab, finish: Finish, targetL: number, near = 0): boolean =>
  shortOf(wood, finish, targetL) <= near

/** Share of the light that ages wood which gets down to it: what blue light is left after the coat, once through. */
export const lightBelow = (finish: Finish, parts = 0): number =>
  (1 - finish.hides) * Math.exp(-layerOf(finish, parts)[2])

/** A colour on its way to another, as bare wood to grey: 0 as sawn, 1 all the way. By straight line in CIELAB. */
export function towards(wood: Lab, grey: Lab, share: number): Lab {
  const s = Math.min(1, Math.max(0, share))
  const at = (from: number, to: number) => from + s * (to - from)
  return { L: at(wood.L, grey.L), a: at(wood.a, grey.a), b: at(wood.b, grey.b) }
}

/** A finish of which part has worn away: 1 whole, 0 gone. */
export const worn = (finish: Finish, left: number): Finish => ({
  ...finish,
  coat: each((i) => finish.coat[i] * left),
  stain: finish.stain && each((i) => (finish.stain?.[i] ?? 0) * left),
  hides: finish.hides * left
})

/** As a screen shows it; `true` to its colour only where sRGB reaches. */
export function screenColour(lab: Lab): { readonly hex: string; readonly true: boolean } {
  const { r, g, b } = convertXyz65ToRgb(convertLab65ToXyz65({ l: lab.L, a: lab.a, b: lab.b }))
  const channels = [r, g, b]
  const byte = (x: number) => Math.round(255 * Math.min(1, Math.max(0, x)))
  return {
    hex: `#${channels.map((x) => byte(x).toString(16).padStart(2, '0')).join('')}`,
    true: channels.every((x) => x >= -1e-3 && x <= 1 + 1e-3)
  }
}
