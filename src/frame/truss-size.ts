/** A whole truss sized part by part, each with its own weight and that of the others. N, mm, MPa. */
import { GRAVITY } from '../data/units'
import { type Sized, sizedBy } from './sizing'
import { PARTS, type PartId, type TrussForm, type TrussShape, trussParts } from './truss-forces'
import { checkPart, loadStates, type OwnLoads, partLength, partRatio, type TrussJob } from './truss-parts'
import type { DesignValues, Section } from './values'

export interface TrussTimbers extends TrussJob {
  /** Timber with its water, kg/m3. */
  readonly density: number
  /** Least depth of a tie, mm. */
  readonly tieLeastDepth: number
}

export interface SizedPart {
  readonly id: PartId
  readonly sized: Sized
  /** The checks of any section in this part's place, all others as sized. */
  readonly checksFor: (section: Section, values: DesignValues) => ReturnType<typeof checkPart>
  /** Sections that the joints of this part allow. */
  readonly series: readonly Section[]
  /** Greatest push (above zero) and greatest pull (below zero) along it, N; 0 where there is none. */
  readonly push: number
  readonly pull: number
}

const lineWeight = (s: Section | null, density: number): number => (s ? (density * GRAVITY * s[0] * s[1]) / 1e9 : 0)

/** How many of a part there are in a truss. */
export const piecesOf = (id: PartId): number => (id === 'tie' || id === 'king-post' || id === 'straining-beam' ? 1 : 2)

/** What a truss adds to its lines: an eave, and what a stick needs beyond its clear length for both ends, mm. */
interface Ends extends TrussShape {
  readonly eave: number
  readonly ends: number
}

/** Length of a part's stick, mm: half the ends' allowance for joints, the tie all of it. Source: derived (geometry). */
export function stickLength(id: PartId, form: TrussForm, shape: Ends): number {
  const along = Math.hypot(1, shape.pitch)
  if (id === 'tie') return shape.span + shape.ends
  if (id === 'rafter')
    return ((form === 'queen' ? shape.queenAt * shape.span : shape.span / 2) + shape.eave) * along + shape.ends / 2
  return partLength(id, form, shape) + shape.ends / 2
}

const LYING: ReadonlySet<PartId> = new Set(['rafter', 'upper-rafter', 'tie'])

/**
 * Own weights of a truss as even loads, N/mm. Posts, struts and straining beam hang on the joints above: as an even load of
 * twice their weight all of it gets there. Source: derived (statics).
 * @param id a part that is weighed with the section `instead`
 */
export function ownLoads(
  job: Pick<TrussTimbers, 'form' | 'shape' | 'density'>,
  sections: ReadonlyMap<PartId, Section>,
  id?: PartId,
  instead?: Section
): OwnLoads {
  const line = (part: PartId) => lineWeight((part === id ? instead : sections.get(part)) ?? null, job.density)
  const along = Math.hypot(1, job.shape.pitch)
  let hanging = 0
  for (const part of PARTS[job.form])
    if (!LYING.has(part)) hanging += piecesOf(part) * line(part) * partLength(part, job.form, job.shape)
  return {
    roof: Math.max(line('rafter'), line('upper-rafter')) * along + (2 * hanging) / job.shape.span,
    tie: line('tie'),
    straining: line('straining-beam')
  }
}

/**
 * Size each part with its own weight and the others’, again and again until no section changes: weights only grow, so it
 * ends. A tie and the posts are no thinner than the rafter that steps into them; a tie is no shallower than its joints need.
 * Source: nds, 3.5 to 3.9; derived (statics).
 */
export function sizeTruss(
  job: TrussTimbers,
  series: readonly Section[],
  valuesFor: (section: Section) => DesignValues | null
): SizedPart[] {
  const sections = new Map<PartId, Section>()
  let least = 0
  const seriesOf = (id: PartId) => {
    if (id !== 'tie' && id !== 'king-post' && id !== 'queen-post') return series
    // The broadest rafter met on the way: were the bound to fall again, rafter and tie could chase each other for ever.
    least = Math.max(least, sections.get('rafter')?.[0] ?? 0)
    return series.filter((s) => s[0] >= least - 0.1 && (id !== 'tie' || s[1] >= job.tieLeastDepth - 0.1))
  }
  const ownWith = (id: PartId, section: Section) => ownLoads(job, sections, id, section)
  const bears = (id: PartId, section: Section): boolean => {
    const values = valuesFor(section)
    return values !== null && partRatio(job, id, ownWith(id, section), section, values, 1) <= 1
  }
  const passing = new Map<PartId, Section | null>()
  for (let changed = true; changed; ) {
    changed = false
    for (const id of PARTS[job.form]) {
      const allowed = seriesOf(id)
      const last = sections.get(id)
      // What was too slight under less weight still is: the search goes on from the section found before.
      const from = last ? Math.max(0, allowed.indexOf(last)) : 0
      const found = allowed.find((section, i) => i >= from && bears(id, section)) ?? null
      passing.set(id, found)
      // Where none passes the others bear the largest.
      const section = found ?? allowed.at(-1) ?? series.at(-1)
      if (!section || last === section) continue
      sections.set(id, section)
      changed = true
    }
  }
  const parts = loadStates(job, ownLoads(job, sections)).flatMap((s) => trussParts(job.form, job.shape, s))
  return PARTS[job.form].map((id) => {
    const tried = passing.get(id) ?? seriesOf(id).findLast((section) => valuesFor(section))
    const own = parts.filter((p) => p.id === id).map((p) => p.push)
    const ratioFor = (section: Section, v: DesignValues) => partRatio(job, id, ownWith(id, section), section, v)
    const checksFor = (section: Section, v: DesignValues) => checkPart(job, id, ownWith(id, section), section, v)
    return {
      id,
      sized: sizedBy(tried, tried ? valuesFor(tried) : null, ratioFor, checksFor),
      checksFor,
      series: seriesOf(id),
      push: Math.max(0, ...own),
      pull: Math.min(0, ...own)
    }
  })
}
