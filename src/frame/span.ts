/** One span under an even load, point loads and a moment at its right end, by superposition. N, mm, MPa. */

export interface PointLoad {
  /** From the left support, mm. */
  readonly at: number
  /** N, downwards. */
  readonly load: number
}

export interface SpanLoad {
  readonly span: number
  /** Even load, N/mm. */
  readonly even: number
  readonly points: readonly PointLoad[]
  /** Hogging moment at the right support, N mm: 0 for a simple span. */
  readonly held: number
}

/** Upward reactions at the left and the right support, N. Source: derived (statics). */
export function reactions({ span, even, points, held }: SpanLoad): readonly [number, number] {
  const right = points.reduce((sum, p) => sum + (p.load * p.at) / span, (even * span) / 2 + held / span)
  const total = points.reduce((sum, p) => sum + p.load, even * span)
  return [total - right, right]
}

/** Moment at a distance from the left support, N mm, sagging above zero. Source: derived (statics). */
export function momentAt(load: SpanLoad, x: number): number {
  const [left] = reactions(load)
  return load.points.reduce((m, p) => m - p.load * Math.max(0, x - p.at), left * x - (load.even * x * x) / 2)
}

/**
 * Largest moment by amount, sagging or hogging, N mm. It stands at a point load, at the right support or where the shear
 * is nought. Source: derived (statics).
 */
export function largestMoment(load: SpanLoad): number {
  const [left] = reactions(load)
  const stops = [0, ...load.points.map((p) => p.at).sort((p, q) => p - q), load.span]
  const turning = stops.slice(1).map((to, i) => {
    const from = stops[i] as number
    const before = load.points.reduce((sum, p) => sum + (p.at <= from ? p.load : 0), 0)
    const zero = load.even > 0 ? (left - before) / load.even : from
    return Math.min(to, Math.max(from, zero))
  })
  return Math.max(...[...stops, ...turning].map((x) => Math.abs(momentAt(load, x))))
}

/** Largest shear, N: at a support, where all loads press downwards. Source: derived (statics). */
export function largestShear(load: SpanLoad): number {
  return Math.max(...reactions(load).map(Math.abs))
}

/** Deflection times E I at a distance from the left support, N mm3. Source: derived (elastic line, superposition). */
function bent({ span: l, even, points, held }: SpanLoad, x: number): number {
  const own = (even * x * (l ** 3 - 2 * l * x * x + x ** 3)) / 24
  const end = (held * x * (l * l - x * x)) / (6 * l)
  return points.reduce((sum, { at, load }) => {
    const b = l - at
    const before = (load * b * x * (l * l - b * b - x * x)) / (6 * l)
    return sum + before + (x > at ? (load * (x - at) ** 3) / 6 : 0)
  }, own - end)
}

/**
 * Largest deflection, mm. The elastic line of a span that is pressed downwards falls, then rises: a search by thirds finds
 * its foot to a millionth of the span. Source: derived (elastic line).
 */
export function largestDeflection(load: SpanLoad, elasticity: number, inertia: number): number {
  let from = 0
  let to = load.span
  while (to - from > load.span * 1e-6) {
    const third = (to - from) / 3
    if (bent(load, from + third) < bent(load, to - third)) from += third
    else to -= third
  }
  return bent(load, (from + to) / 2) / (elasticity * inertia)
}
