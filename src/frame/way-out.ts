/** What would make an impossible member possible, each found by sizing it again, none asserted. */
import { memberParts, type Values } from './member-parts'
import { isTruss, type MemberKind, type MemberRanges, type MemberSpec, type Range } from './member-spec'
import type { TrussForm } from './truss-forces'
import type { Section } from './values'

export interface WayOut {
  /** Longest span that passes, all else alike, mm; null for a post, and where not even the shortest permitted one passes. */
  readonly span: number | null
  /** Greatest height of a post that passes, mm. */
  readonly height: number | null
  /** Greatest width carried (spacing) that passes, mm. */
  readonly width: number | null
  /** Greatest share of its loads at points that passes, and the largest of them then, N; null without such loads, or where none passes. */
  readonly points: { readonly share: number; readonly largest: number } | null
  /** Trusses that pass in its place: same walls, spacing and loads. */
  readonly trusses: readonly TrussForm[]
}

/** How near a length is searched, mm. */
const NEAR = 10
const FORMS: readonly TrussForm[] = ['king', 'king-struts', 'queen']

/** The greatest length at which it passes, or null; `tooLong` is known to fail. */
function longest(range: Range, tooLong: number, passes: (length: number) => boolean): number | null {
  let good = range.least
  let bad = tooLong
  if (!passes(good)) return null
  while (bad - good > NEAR) {
    const middle = (good + bad) / 2
    if (passes(middle)) good = middle
    else bad = middle
  }
  return good
}

/** Parts of a load that are tried: nearer is nobody's to say. */
const SHARES = 100

const lightened = (spec: MemberSpec, share: number): MemberSpec => ({
  ...spec,
  points: spec.points.map((p) => ({ ...p, dead: p.dead * share, roof: p.roof * share, floor: p.floor * share }))
})

function lighter(spec: MemberSpec, passes: (spec: MemberSpec) => boolean): WayOut['points'] {
  if (spec.points.length === 0) return null
  let [good, bad] = [0, SHARES]
  if (!passes(lightened(spec, 0))) return null
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2)
    if (passes(lightened(spec, middle / SHARES))) good = middle
    else bad = middle
  }
  const share = good / SHARES
  return { share, largest: Math.max(...spec.points.map((p) => (p.dead + p.roof + p.floor) * share)) }
}

/** A shorter or longer beam, its loads at points in the same proportion. */
const stretched = (spec: MemberSpec, span: number): MemberSpec => ({
  ...spec,
  span,
  unsupported: (spec.unsupported * span) / spec.span,
  points: spec.points.map((p) => ({ ...p, at: (p.at * span) / spec.span }))
})

/**
 * Longest span, greatest height, greatest spacing, lighter loads at points, and trusses that pass where the member as asked does not. Snow on one
 * side is kept as given. Source: derived (search over nds checks).
 */
export function wayOut(
  kind: MemberKind,
  spec: MemberSpec,
  series: readonly Section[],
  valuesFor: Values,
  ranges: MemberRanges
): WayOut {
  const passes = (k: MemberKind, s: MemberSpec) =>
    memberParts(k, s, series, valuesFor).every((m) => m.sized.section !== null)
  const post = kind === 'post'
  // A truss in place of a beam bears the roof alone, between the same walls; a rafter's twin is the other half of it.
  const instead: MemberSpec = { ...spec, span: kind === 'rafter' ? 2 * spec.span : spec.span }
  const bearsRoof =
    isTruss(kind) || kind === 'rafter' || ((kind === 'beam' || kind === 'ridge') && spec.roof.length > 0)
  const plain = isTruss(kind) || (spec.floor.length === 0 && spec.points.length === 0 && spec.spans === 1)
  const sloped = spec.slope >= ranges.slope.least && instead.span <= ranges.span.most
  return {
    span: post ? null : longest(ranges.span, spec.span, (span) => passes(kind, stretched(spec, span))),
    height: post ? longest(ranges.height, spec.height, (height) => passes(kind, { ...spec, height })) : null,
    width: longest(ranges.width, spec.width, (width) => passes(kind, { ...spec, width })),
    points: lighter(spec, (lighter) => passes(kind, lighter)),
    trusses: bearsRoof && plain && sloped ? FORMS.filter((form) => form !== kind && passes(form, instead)) : []
  }
}
