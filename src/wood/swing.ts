/**
 * How far a whole timber follows the seasons. The air's moisture swings once a year; the swing runs into the wood as a
 * damped wave, so the mean of a big section moves by a fraction of it. Lengths in mm, diffusivity in mm2 a day.
 */

const YEAR = 365.25

/**
 * Depth at which a periodic swing of the surface has fallen to 1/e of itself, mm: sqrt(D P / pi).
 * Source: crank-1975, plane sheet and semi-infinite solid with a periodic surface.
 * @throws RangeError where the diffusivity or the period is not above zero.
 */
export function swingDepth(diffusivity: number, period = YEAR): number {
  if (!(diffusivity > 0 && period > 0)) throw new RangeError('diffusivity and period must be above zero')
  return Math.sqrt((diffusivity * period) / Math.PI)
}

/** tanh(z)/z for z = x + iy with x >= 0, as [real, imaginary]. */
function tanhOver(x: number, y: number): readonly [number, number] {
  const size = x * x + y * y
  // Deep inside tanh is 1 to within 1e-8, and most terms of the series are.
  if (x > 10) return [x / size, -y / size]
  const fall = Math.exp(-2 * x)
  const below = 1 + 2 * fall * Math.cos(2 * y) + fall * fall
  const re = (1 - fall * fall) / below
  const im = (2 * fall * Math.sin(2 * y)) / below
  return [(re * x + im * y) / size, (im * x - re * y) / size]
}

const TERMS = 10

/**
 * Share of the surface's yearly swing that the mean moisture of a rectangle follows, 0 to 1. The section's ends and any
 * resistance of the surface are left out, so it errs to the large side.
 * Source: derived. With w what the wood lags behind its surface, D lap w = i omega (w - 1), w = 0 on the surface; sines
 * across the breadth, the exact slab solution across the depth, and the mean of the sum.
 * @param breadth mm
 * @param depth mm
 * @param diffusivity mm2 a day, about 2 to 5 for softwood in a dry room
 * @param period days
 * @throws RangeError where a number is not above zero.
 */
export function swingShare(breadth: number, depth: number, diffusivity: number, period = YEAR): number {
  if (!(breadth > 0 && depth > 0)) throw new RangeError('section sizes must be above zero')
  const fall = swingDepth(diffusivity, period)
  // omega / D
  const q = 2 / (fall * fall)
  // Fewer sines are needed across the shorter side.
  const [side, other] = breadth < depth ? [breadth, depth] : [depth, breadth]
  let re = 1
  let im = 0
  for (let i = 0; i < TERMS; i++) {
    const m = 2 * i + 1
    const a = (m * Math.PI) / side
    const a2 = a * a
    // kappa = sqrt(a2 + iq), its real and imaginary parts
    const size = Math.hypot(a2, q)
    const kx = Math.sqrt((size + a2) / 2)
    const ky = q / (2 * kx)
    const [tr, ti] = tanhOver((kx * other) / 2, (ky * other) / 2)
    // iq / (a2 + iq)
    const fr = (q * q) / (size * size)
    const fi = (q * a2) / (size * size)
    const weight = 8 / (Math.PI * Math.PI * m * m)
    re -= weight * (fr * (1 - tr) + fi * ti)
    im -= weight * (fi * (1 - tr) - fr * ti)
  }
  return Math.hypot(re, im)
}
