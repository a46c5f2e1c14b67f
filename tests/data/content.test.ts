import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import * as v from 'valibot'
import { describe, expect, it } from 'vitest'
import {
  decaySchema,
  designValuesSchema,
  finishesSchema,
  placesSchema,
  regionsSchema,
  type SpeciesContent,
  sourcesSchema,
  speciesSchema
} from '../../src/data/schema'

const content = fileURLToPath(new URL('../../content/', import.meta.url))
const read = (file: string): unknown => JSON.parse(readFileSync(join(content, file), 'utf8'))
const jsonFiles = readdirSync(content, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.replaceAll('\\', '/'))
  .sort()
const speciesFiles = jsonFiles.filter((file) => file.startsWith('species/'))

// Typed by hand here: the first tests below check that each is of its shape.
const sources = read('sources.json') as v.InferOutput<typeof sourcesSchema>
const designValues = read('design-values.json') as v.InferOutput<typeof designValuesSchema>
const regions = read('regions.json') as v.InferOutput<typeof regionsSchema>
const places = read('places.json') as v.InferOutput<typeof placesSchema>
const woods = speciesFiles.map((file) => read(file) as SpeciesContent)
const wood = (id: string): SpeciesContent => {
  const found = woods.find((one) => one.id === id)
  if (!found) throw new Error(`no wood ${id}`)
  return found
}

/** Every value held under `key`, at any depth. */
function valuesUnder(key: string, node: unknown): unknown[] {
  if (Array.isArray(node)) return node.flatMap((one) => valuesUnder(key, one))
  if (node === null || typeof node !== 'object') return []
  return Object.entries(node).flatMap(([name, value]) => [...(name === key ? [value] : []), ...valuesUnder(key, value)])
}

const repeated = (names: string[]): string[] => names.filter((name, at) => names.indexOf(name) !== at)

describe('content keeps its contract', () => {
  it.each([
    ['sources.json', sourcesSchema],
    ['design-values.json', designValuesSchema],
    ['places.json', placesSchema],
    ['regions.json', regionsSchema],
    ['decay.json', decaySchema],
    ['finishes.json', finishesSchema]
  ] as const)('%s is of its published shape', (file, schema) => {
    const result = v.safeParse(schema as v.GenericSchema, read(file))
    expect(result.issues?.map((issue) => `${v.getDotPath(issue)}: ${issue.message}`) ?? []).toEqual([])
  })

  it.each(speciesFiles)('%s is of its published shape and named after its wood', (file) => {
    const result = v.safeParse(speciesSchema, read(file))
    expect(result.issues?.map((issue) => `${v.getDotPath(issue)}: ${issue.message}`) ?? []).toEqual([])
    expect(`species/${(result.output as SpeciesContent).id}.json`).toBe(file)
  })

  it('holds enough woods and places to choose from', () => {
    expect(woods.length).toBeGreaterThanOrEqual(28)
    expect(places.places.length).toBeGreaterThanOrEqual(200)
  })

  it('gives every id and every name once', () => {
    expect(repeated(woods.map((one) => one.id))).toEqual([])
    expect(repeated(woods.map((one) => one.name))).toEqual([])
    expect(repeated(woods.map((one) => one.short))).toEqual([])
    expect(repeated(places.places.map((one) => one.id))).toEqual([])
    expect(repeated(places.places.map((one) => one.name))).toEqual([])
    expect(repeated(regions.regions.map((one) => one.id))).toEqual([])
    expect(repeated(designValues.map((row) => `${row.group} ${row.sizeClass} ${row.grade}`))).toEqual([])
  })
})

describe('what one file names, another holds', () => {
  it('finds every source key in the bibliography', () => {
    const missing = jsonFiles
      .filter((file) => file !== 'sources.json')
      .flatMap((file) => valuesUnder('source', read(file)).map((key) => ({ file, key })))
      .filter(({ key }) => typeof key !== 'string' || !Object.hasOwn(sources, key))
    expect(missing).toEqual([])
  })

  it('finds every region a wood grows in', () => {
    const known = new Set(regions.regions.map((one) => one.id))
    expect(woods.flatMap((one) => one.grows.regions).filter((id) => !known.has(id))).toEqual([])
    for (const one of woods) expect(one.grows.regions.length, one.id).toBeGreaterThan(0)
  })

  it('finds every design group a wood is graded in', () => {
    const known = new Set(designValues.map((row) => row.group))
    expect(
      woods.filter((one) => one.design.group !== null && !known.has(one.design.group)).map((one) => one.id)
    ).toEqual([])
  })

  it('offers no wood without a design group or a green rupture modulus, unless it says so', () => {
    const bare = woods.filter((one) => one.design.group === null && one.strengthGreen?.ruptureKPa === undefined)
    for (const one of bare) expect(one.design.note, one.id).toContain('not offered where it carries load')
  })

  it('puts every state and every place in a region, and neighbours both ways', () => {
    const states = new Set(regions.regions.flatMap((one) => one.states))
    expect(states.size).toBe(51)
    expect(places.places.filter((one) => !states.has(one.state)).map((one) => one.name)).toEqual([])
    for (const one of regions.regions)
      for (const id of one.near)
        expect(regions.regions.find((other) => other.id === id)?.near, `${one.id} and ${id}`).toContain(one.id)
  })
})

describe('numbers as printed', () => {
  it.each([
    // wood, radial, tangential: Wood Handbook FPL-GTR-190, Table 4-3
    ['douglas-fir', 4.8, 7.6],
    ['white-oak', 5.6, 10.5],
    ['western-redcedar', 2.4, 5.0],
    ['american-beech', 5.5, 11.9],
    ['grand-fir', 3.4, 7.5],
    // the same table in the edition of 2021, FPL-GTR-282
    ['western-hemlock', 4.2, 7.8],
    ['red-oak', 4.0, 8.6]
  ])('shrinkage of %s is %d radial and %d tangential', (id, radial, tangential) => {
    const { shrinkage } = wood(id)
    expect(shrinkage).toMatchObject({
      radialPercent: radial,
      tangentialPercent: tangential,
      where: 'Table 4-3',
      mark: 'seen'
    })
  })

  it.each([
    // wood, heartwood, sapwood: Wood Handbook, Table 4-1
    ['douglas-fir', 37, 115],
    ['western-redcedar', 58, 249],
    ['white-oak', 64, 78],
    ['southern-pine', 33, 110]
  ])('green moisture of %s is %d in the heart and %d in the sap', (id, heart, sap) => {
    expect(wood(id).greenMoisture).toMatchObject({ heartwoodPercent: heart, sapwoodPercent: sap })
  })

  it('Douglas-fir at 12 % is the row of Table 5-3a', () => {
    expect(wood('douglas-fir').strengthAt12).toMatchObject({
      ruptureKPa: 85000,
      elasticityMPa: 13400,
      shearParallelKPa: 7800,
      mark: 'seen'
    })
  })

  it('Douglas Fir-Larch No.1 is the row of Table 4D', () => {
    const row = (sizeClass: string) =>
      designValues.find(
        (one) => one.group === 'Douglas Fir-Larch' && one.grade === 'No.1' && one.sizeClass === sizeClass
      )
    expect(row('BS')).toMatchObject({
      bendingPsi: 1350,
      tensionPsi: 675,
      shearPsi: 170,
      compressionPsi: 925,
      mark: 'seen'
    })
    expect(row('PT')).toMatchObject({
      bendingPsi: 1200,
      tensionPsi: 825,
      shearPsi: 170,
      compressionPsi: 1000,
      mark: 'seen'
    })
  })

  it('the drier wood is the stronger along the grain', () => {
    for (const one of woods) {
      const green = one.strengthGreen?.ruptureKPa
      const dry = one.strengthAt12?.ruptureKPa
      if (green !== undefined && dry !== undefined) expect(dry, one.id).toBeGreaterThan(green)
    }
  })

  it('whatever was only recalled in a source nobody read is not called seen', () => {
    const called = jsonFiles
      .filter((file) => file !== 'sources.json')
      .flatMap((file) => seenRows(read(file)).map((source) => ({ file, source })))
      .filter(({ source }) => ['memory', 'placeholder'].includes(sources[source]?.mark ?? ''))
    expect(called).toEqual([])
  })
})

/** Sources of every group that claims to have been read. */
function seenRows(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(seenRows)
  if (node === null || typeof node !== 'object') return []
  const own = node as { mark?: unknown; source?: unknown }
  return [
    ...(own.mark === 'seen' && typeof own.source === 'string' ? [own.source] : []),
    ...Object.values(node).flatMap(seenRows)
  ]
}

describe('the door refuses what is wrong', () => {
  const refuses = (schema: v.GenericSchema, file: string, spoil: (value: never) => void): string[] => {
    const value = read(file)
    expect(v.safeParse(schema, value).success, `${file} before`).toBe(true)
    spoil(value as never)
    const result = v.safeParse(schema, value)
    return result.issues?.map((issue) => issue.message) ?? []
  }
  // biome-ignore lint/suspicious/noExplicitAny: a spoilt file has no type
  type Spoilt = any
  const doors: [string, v.GenericSchema, (value: Spoilt) => Spoilt][] = [
    ['species/douglas-fir.json', speciesSchema, (value) => value],
    ['design-values.json', designValuesSchema, (value) => value[0]],
    ['places.json', placesSchema, (value) => value.places[0]],
    ['regions.json', regionsSchema, (value) => value.regions[0]],
    ['decay.json', decaySchema, (value) => value.useClasses[0]],
    ['finishes.json', finishesSchema, (value) => value[0]],
    ['sources.json', sourcesSchema, (value) => value['common-practice']]
  ]

  it.each(doors)('%s: a key nobody knows', (file, schema, part) => {
    expect(refuses(schema, file, (value) => Object.assign(part(value), { surprise: 1 }))).not.toEqual([])
  })

  it.each([
    ['species/douglas-fir.json', speciesSchema, (value: Spoilt) => value.shrinkage],
    ['species/white-oak.json', speciesSchema, (value: Spoilt) => value.cautions[0]],
    ['species/redwood.json', speciesSchema, (value: Spoilt) => value.traits.pitch],
    ['design-values.json', designValuesSchema, (value: Spoilt) => value[3]],
    ['places.json', placesSchema, (value: Spoilt) => value],
    ['regions.json', regionsSchema, (value: Spoilt) => value],
    ['decay.json', decaySchema, (value: Spoilt) => value.hazard],
    ['finishes.json', finishesSchema, (value: Spoilt) => value[5]]
  ] as const)('%s: numbers without a source, or with a mark of their own', (file, schema, part) => {
    const door = schema as v.GenericSchema
    expect(refuses(door, file, (value) => Reflect.deleteProperty(part(value), 'source'))).not.toEqual([])
    expect(refuses(door, file, (value) => Object.assign(part(value), { mark: 'certain' }))).not.toEqual([])
  })

  it('a wood that shrinks more across the rings than along them', () => {
    const issues = refuses(speciesSchema, 'species/white-oak.json', (value: Spoilt) =>
      Object.assign(value.shrinkage, { radialPercent: 10.6 })
    )
    expect(issues).toEqual(['radial shrinkage above tangential'])
  })

  it('a wood that is denser green than dry', () => {
    const issues = refuses(speciesSchema, 'species/white-oak.json', (value: Spoilt) =>
      Object.assign(value.specificGravity, { green: 0.69 })
    )
    expect(issues).toEqual(['green specific gravity above dry'])
  })

  it('a wood with neither a design group nor green strength', () => {
    const issues = refuses(speciesSchema, 'species/black-locust.json', (value: Spoilt) =>
      Reflect.deleteProperty(value, 'strengthGreen')
    )
    expect(issues).toEqual(['no design group and no green strength'])
  })

  it('durability or drying times the wrong way round', () => {
    expect(
      refuses(speciesSchema, 'species/white-oak.json', (value: Spoilt) =>
        Object.assign(value.durability, { classBest: 4 })
      )
    ).toEqual(['best durability class above worst'])
    expect(
      refuses(speciesSchema, 'species/white-oak.json', (value: Spoilt) =>
        Object.assign(value.airDrying, { daysMin: 251 })
      )
    ).toEqual(['shortest drying time above longest'])
  })

  it('an impossible design row', () => {
    expect(
      refuses(designValuesSchema, 'design-values.json', (value: Spoilt) =>
        Object.assign(value[0], { elasticityMinPsi: 1600000 })
      )
    ).toEqual(['Emin not below E'])
    expect(
      refuses(designValuesSchema, 'design-values.json', (value: Spoilt) =>
        Object.assign(value[0], { tensionPsi: 1601 })
      )
    ).toEqual(['tension above bending'])
  })

  it('a month of 32 wet days, air wetter than wet, a year of eleven months', () => {
    const place = (value: Spoilt) => value.places[7]
    expect(refuses(placesSchema, 'places.json', (value) => place(value).wetDays.splice(0, 1, 32))).not.toEqual([])
    expect(
      refuses(placesSchema, 'places.json', (value) => place(value).humidityMorningPercent.splice(0, 1, 101))
    ).not.toEqual([])
    expect(refuses(placesSchema, 'places.json', (value) => place(value).tempF.pop())).not.toEqual([])
  })
})
