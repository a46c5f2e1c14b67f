/** Arguments of a call, read strictly: a missing, unknown or misspelt one is refused, and so is one that nobody asked for. */
import { limit } from '../choice/facts'
import { quantity } from '../choice/say'
import type { Origin, Quantity } from '../data/quantity'
import type { Place, Reference, Wood } from '../data/reference'
import { FOOT, INCH, percent } from '../data/units'
import type { Section } from '../frame/values'
import { type Exposure, serviceMoisture } from '../wood/service'
import type { Call } from './parse'

/** What a note takes as an example; nothing to open but the number itself. */
export const EXAMPLE: Origin = { mark: 'derived', sources: [] }
const EXPOSURES: readonly Exposure[] = ['heated', 'unheated', 'roofed', 'weather']

export class Args {
  private readonly left: Set<string>
  constructor(
    private readonly call: Call,
    readonly reference: Reference
  ) {
    this.left = new Set(Object.keys(call.args))
  }

  private refuse(why: string): never {
    throw new Error(`{{${this.call.name}}}: ${why}`)
  }

  text(name: string): string {
    return this.maybe(name) ?? this.refuse(`no "${name}"`)
  }
  maybe(name: string): string | null {
    this.left.delete(name)
    return this.call.args[name] ?? null
  }
  word<T extends string>(name: string, known: readonly T[], usual?: T): T {
    const given = this.maybe(name)
    if (given === null && usual !== undefined) return usual
    return known.find((k) => k === given) ?? this.refuse(`"${name}" must be one of ${known.join(', ')}, not "${given}"`)
  }
  number(name: string, usual?: number): number {
    const given = this.maybe(name)
    if (given === null && usual !== undefined) return usual
    const value = given === null || given === '' ? Number.NaN : Number(given)
    return Number.isFinite(value) ? value : this.refuse(`"${name}" is not a number: "${given}"`)
  }
  wood(name = 'wood'): Wood {
    return this.woodOf(this.text(name))
  }
  woods(name = 'woods'): readonly Wood[] {
    return this.text(name)
      .split(',')
      .map((id) => this.woodOf(id))
  }
  private woodOf(id: string): Wood {
    return this.reference.woods.get(id) ?? this.refuse(`no wood "${id}"`)
  }
  places(name = 'places'): readonly Place[] {
    return this.text(name)
      .split(',')
      .map((id) => this.placeOf(id))
  }
  place(name = 'place'): Place {
    return this.placeOf(this.text(name))
  }
  placeId(usual = 'portland-or'): string {
    return this.placeOf(this.maybe('place') ?? usual).id
  }
  private placeOf(id: string): Place {
    return this.reference.places.get(id) ?? this.refuse(`no place "${id}"`)
  }
  /** "8x10", inches, the shorter side first. */
  section(name = 'size', usual?: string): Section {
    const [b, d] = (this.maybe(name) ?? usual ?? this.refuse(`no "${name}"`)).split('x').map(Number)
    if (!(b && d && b > 0 && d >= b)) this.refuse(`"${name}" is not a section`)
    return [b * INCH, d * INCH]
  }
  inches(name: string, usual?: number): number {
    return this.number(name, usual) * INCH
  }
  feet(name = 'ft', usual?: number): number {
    return this.number(name, usual) * FOOT
  }
  /** "9" percent, "green", or "portland-or/heated", where the mean of the year is taken. */
  moisture(name: string, wood: Wood, usual?: string): Quantity {
    const given = this.maybe(name) ?? usual ?? this.refuse(`no "${name}"`)
    if (given === 'green') return quantity('moisture', wood.fibreSaturation, wood.fibreSaturationOrigin)
    const [id, lives] = given.split('/')
    if (lives === undefined) {
      const value = Number(given)
      if (!(value > 0 && value < 200)) this.refuse(`"${name}" is not a moisture: "${given}"`)
      return quantity('moisture', percent(value), EXAMPLE)
    }
    const exposure = EXPOSURES.find((e) => e === lives) ?? this.refuse(`no exposure "${lives}"`)
    return quantity('moisture', serviceAt(this.placeOf(id ?? ''), exposure, this.reference).mean, EXAMPLE)
  }
  exposure(name = 'lives', usual?: Exposure): Exposure {
    return this.word(name, EXPOSURES, usual)
  }
  /** To be called last. @throws Error where an argument was given that means nothing here. */
  done(): void {
    if (this.left.size > 0) this.refuse(`does not know ${[...this.left].join(', ')}`)
  }
}

/** Moisture in service at a place, as a brief takes it. */
export const serviceAt = (place: Place, exposure: Exposure, reference: Reference) =>
  serviceMoisture(place, exposure, reference.room, {
    weatherAdds: percent(limit(reference, 'weather-adds')),
    weatherWettest: percent(limit(reference, 'weather-wettest'))
  })
