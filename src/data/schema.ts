/**
 * The shapes of everything in `content/`, as published: units are in the key, every group of numbers
 * names its source. Unknown keys, missing sources and impossible values are refused here, at the door.
 */
import * as v from 'valibot'

/** How far a number can be trusted: read in a copy of its source, recalled, trade custom, worked out here, or invented. */
export const markSchema = v.picklist(['seen', 'memory', 'mixed', 'practice', 'derived', 'placeholder'])
export type Mark = v.InferOutput<typeof markSchema>

const key = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9.-]*$/, 'lower-case key expected'))
const text = v.pipe(v.string(), v.trim(), v.nonEmpty())
const positive = v.pipe(v.number(), v.finite(), v.gtValue(0))
const nonNegative = v.pipe(v.number(), v.finite(), v.minValue(0))
const monthly = v.pipe(v.array(v.pipe(v.number(), v.finite())), v.length(12))

/** Where a group of numbers comes from. `source` resolves in `content/sources.json`; `where` is the table, clause or page. */
const origin = {
  source: key,
  where: v.optional(text),
  mark: markSchema,
  note: v.optional(text)
}

export const sourceSchema = v.strictObject({
  title: text,
  by: v.optional(text),
  year: v.optional(v.pipe(v.number(), v.integer())),
  edition: v.optional(text),
  mark: markSchema,
  usedFor: text,
  note: v.optional(text)
})
export const sourcesSchema = v.record(key, sourceSchema)

const strengthSchema = v.strictObject({
  ruptureKPa: v.optional(positive),
  elasticityMPa: v.optional(positive),
  compressionParallelKPa: v.optional(positive),
  compressionPerpendicularKPa: v.optional(positive),
  shearParallelKPa: v.optional(positive),
  tensionPerpendicularKPa: v.optional(positive),
  sideHardnessN: v.optional(positive),
  ...origin
})

/** CIELAB, D65. */
const lab = { L: v.pipe(v.number(), v.minValue(0), v.maxValue(100)), a: v.number(), b: v.number() }

/** A tendency on the trade's own scale: 0 little, 1 some, 2 much. */
const traitSchema = v.strictObject({
  level: v.picklist([0, 1, 2]),
  says: v.optional(text),
  ...origin
})

export const speciesSchema = v.pipe(
  v.strictObject({
    id: key,
    name: text,
    /** The name inside a sentence: "white oak", "Douglas-fir". */
    said: text,
    /** Short form for tables and pictures, at most 18 characters. */
    short: v.pipe(text, v.maxLength(18)),
    botanical: text,
    kind: v.picklist(['softwood', 'hardwood']),
    /** One or two sentences of our own: what a framer uses it for. */
    summary: text,
    shrinkage: v.strictObject({
      radialPercent: positive,
      tangentialPercent: positive,
      volumetricPercent: v.optional(positive),
      ...origin
    }),
    fibreSaturation: v.strictObject({ percent: positive, ...origin }),
    greenMoisture: v.strictObject({
      heartwoodPercent: v.optional(positive),
      sapwoodPercent: v.optional(positive),
      wholePercent: v.optional(positive),
      ...origin
    }),
    specificGravity: v.strictObject({ green: positive, at12: v.optional(positive), ...origin }),
    strengthGreen: v.optional(strengthSchema),
    strengthAt12: v.optional(strengthSchema),
    /** Heartwood only; the sapwood of every species is not resistant. EN 350 classes 1 (very durable) to 5 (not durable). */
    durability: v.strictObject({
      usGroup: v.picklist(['exceptional', 'resistant', 'moderate', 'slight-or-none']),
      classBest: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(5)),
      classWorst: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(5)),
      /** What field trials found; `finds` says where they disagree with the class, and which way. */
      fieldTests: v.optional(
        v.array(
          v.strictObject({
            says: text,
            setting: v.picklist(['above-ground', 'ground']),
            finds: v.optional(v.picklist(['better', 'worse'])),
            ...origin
          })
        )
      ),
      ...origin
    }),
    /** The row group of `design-values.json`, or null where values are derived from clear-wood strength. */
    design: v.strictObject({ group: v.nullable(text), ...origin }),
    /** Published time for green 1 in boards to reach 20 % in the yard, days. */
    airDrying: v.strictObject({ daysMin: positive, daysMax: positive, ...origin }),
    /** Heartwood, freshly planed, CIELAB. */
    colour: v.strictObject({ ...lab, ...origin }),
    /** After years of light indoors, where that is not what light does to most woods. */
    agedColour: v.optional(v.strictObject({ ...lab, ...origin })),
    /** How well paint stays on it: printed group of three, 1 easiest, or an older one of five where it has none. */
    paint: v.optional(
      v.strictObject({
        group: v.nullable(v.picklist([1, 2, 3])),
        older: v.nullable(v.picklist([1, 2, 3, 4, 5])),
        ...origin
      })
    ),
    /** There where its oils creep out under a film. */
    oils: v.optional(v.strictObject(origin)),
    supply: v.strictObject({
      longestFt: positive,
      /** Largest square or rectangle usually sawn, in, shorter side then longer side. */
      largestIn: v.pipe(v.array(positive), v.length(2)),
      /** Largest small-end log diameter usually had, under bark, in. */
      largestLogIn: positive,
      /** Whether framing timbers of this wood are sold free of heart centre. */
      freeOfHeart: v.picklist(['usual', 'rare', 'hardly']),
      ...origin
    }),
    /** Forest regions (ids of `regions.json`) where the tree is felled for timber. */
    grows: v.strictObject({ regions: v.array(key), ...origin }),
    traits: v.strictObject({
      pitch: traitSchema,
      tannin: traitSchema,
      twist: traitSchema,
      checking: traitSchema,
      splitting: traitSchema,
      lengthwise: traitSchema,
      knots: traitSchema,
      /** How hard a large section is to dry without damage. */
      hardToDry: traitSchema
    }),
    cautions: v.array(v.strictObject({ says: text, ...origin }))
  }),
  v.check((s) => s.shrinkage.radialPercent <= s.shrinkage.tangentialPercent, 'radial shrinkage above tangential'),
  v.check(
    (s) => s.specificGravity.at12 === undefined || s.specificGravity.green <= s.specificGravity.at12,
    'green specific gravity above dry'
  ),
  v.check((s) => s.durability.classBest <= s.durability.classWorst, 'best durability class above worst'),
  v.check((s) => s.airDrying.daysMin <= s.airDrying.daysMax, 'shortest drying time above longest'),
  v.check(
    (s) => s.greenMoisture.heartwoodPercent !== undefined || s.greenMoisture.wholePercent !== undefined,
    'green moisture of heartwood or of the whole stem needed'
  ),
  v.check(
    (s) => s.design.group !== null || s.strengthGreen?.ruptureKPa !== undefined || s.design.mark === 'memory',
    'no design group and no green strength'
  )
)
export type SpeciesContent = v.InferOutput<typeof speciesSchema>

export const designValueSchema = v.pipe(
  v.strictObject({
    group: text,
    /** BS beams and stringers, PT posts and timbers, any: one class for 5 x 5 in and larger. */
    sizeClass: v.picklist(['BS', 'PT', 'any']),
    grade: v.picklist(['Select Structural', 'No.1', 'No.2']),
    bendingPsi: positive,
    tensionPsi: positive,
    shearPsi: positive,
    compressionPerpPsi: positive,
    compressionPsi: positive,
    elasticityPsi: positive,
    elasticityMinPsi: positive,
    specificGravity: v.nullable(positive),
    /** True where the printed values already hold for wet service, so that the wet factor is 1. */
    wetIncluded: v.boolean(),
    confidence: v.picklist(['high', 'medium', 'low']),
    ...origin
  }),
  v.check((d) => d.elasticityMinPsi < d.elasticityPsi, 'Emin not below E'),
  v.check((d) => d.tensionPsi <= d.bendingPsi, 'tension above bending')
)
export const designValuesSchema = v.array(designValueSchema)
export type DesignValueContent = v.InferOutput<typeof designValueSchema>

export const placeSchema = v.pipe(
  v.strictObject({
    id: key,
    name: text,
    state: v.pipe(v.string(), v.regex(/^[A-Z]{2}$/)),
    lat: v.pipe(v.number(), v.minValue(-90), v.maxValue(90)),
    lon: v.pipe(v.number(), v.minValue(-180), v.maxValue(180)),
    tempF: monthly,
    wetDays: monthly,
    precipIn: monthly,
    humidityMorningPercent: monthly,
    humidityAfternoonPercent: monthly
  }),
  v.check((p) => p.humidityMorningPercent.every((h) => h > 0 && h <= 100), 'humidity out of 0 to 100'),
  v.check((p) => p.humidityAfternoonPercent.every((h) => h > 0 && h <= 100), 'humidity out of 0 to 100'),
  v.check((p) => p.wetDays.every((d) => d >= 0 && d <= 31), 'more wet days than the month has')
)
export const placesSchema = v.strictObject({ ...origin, places: v.array(placeSchema) })
export type PlaceContent = v.InferOutput<typeof placeSchema>

/** Forest regions: which states they hold, and which regions lie next to them. */
export const regionsSchema = v.strictObject({
  ...origin,
  regions: v.array(
    v.strictObject({
      id: key,
      name: text,
      /** Which half of the continent’s woods grow there; left out where both or neither do. */
      side: v.optional(v.picklist(['east', 'west'])),
      states: v.array(v.pipe(v.string(), v.length(2))),
      near: v.array(key)
    })
  )
})

/** A single number that a rule or a scale uses. */
export const limitSchema = v.strictObject({
  about: text,
  value: v.pipe(v.number(), v.finite()),
  unit: text,
  ...origin
})
export const limitsSchema = v.record(key, limitSchema)

/** Coefficients of variation: how far single pieces lie from the mean of their wood, one standard deviation of that mean. */
const scattered = v.strictObject({ about: text, percent: v.pipe(v.number(), v.gtValue(0), v.ltValue(60)), ...origin })
export const scatterSchema = v.strictObject({
  bending: scattered,
  elasticity: scattered,
  'compression-parallel': scattered,
  'compression-perpendicular': scattered,
  shear: scattered,
  gravity: scattered,
  shrinkage: scattered
})

/** A series of sections to choose from: the shop's own, less what planing takes, or plain steps. */
const seriesEntry = { id: key, about: text, ...origin }
export const seriesSchema = v.array(
  v.variant('of', [
    v.strictObject({ ...seriesEntry, of: v.literal('shop'), lessIn: nonNegative }),
    v.strictObject({
      ...seriesEntry,
      of: v.literal('steps'),
      leastMm: positive,
      mostMm: positive,
      stepMm: positive,
      /** Greatest depth over breadth. */
      deepest: positive
    })
  ])
)
export type SeriesContent = v.InferOutput<typeof seriesSchema>[number]

const VERDICTS = ['enough', 'usually', 'depends', 'treat-advised', 'treat'] as const
const step = v.pipe(v.number(), v.integer())
/** A span of years; the upper null where the trial ended first, both null where none sets an end. */
const years = { says: text, lowYears: v.nullable(nonNegative), highYears: v.nullable(positive) }

export const decaySchema = v.strictObject({
  hazard: v.strictObject({ moderateFrom: positive, highFrom: positive, ...origin }),
  useClasses: v.array(v.strictObject({ id: v.picklist(['1', '2', '3.1', '3.2', '4']), says: text, ...origin })),
  /** EN 460:1994 matrix, rows by use class (3 covers 3.1 and 3.2), columns durability class 1 to 5. */
  sufficiency: v.strictObject({
    byUseClass: v.strictObject(
      v.entriesFromList(['1', '2', '3', '4'], v.pipe(v.array(v.picklist(VERDICTS)), v.length(5)))
    ),
    /** Each verdict as a sentence says it. */
    words: v.strictObject(v.entriesFromList(VERDICTS, text)),
    ...origin
  }),
  /** What the details of the building do to the use class, under a roof and in the weather. */
  details: v.array(
    v.strictObject({ id: v.picklist(['sheltered', 'usual', 'holding']), roofed: text, weather: text, ...origin })
  ),
  sapwood: v.strictObject({ durabilityClass: v.picklist([1, 2, 3, 4, 5]), says: text, ...origin }),
  /** Expected life while it stays dry, above ground by steps, and in ground contact by durability class. */
  dry: v.strictObject({ ...years, ...origin }),
  aboveGround: v.strictObject({
    steps: v.pipe(v.array(v.strictObject(years)), v.minLength(1)),
    startByClass: v.pipe(v.array(v.tuple([step, step])), v.length(5)),
    byHazard: v.strictObject({ low: step, moderate: step, high: step }),
    byUseClass: v.strictObject({ '3.1': step, '3.2': step }),
    ...origin
  }),
  groundYears: v.pipe(
    v.array(v.strictObject({ durabilityClass: v.picklist([1, 2, 3, 4, 5]), ...years, ...origin })),
    v.length(5),
    v.check((rows) => rows.every((row, i) => row.durabilityClass === i + 1), 'classes 1 to 5 in order')
  ),
  /** Stakes in the ground where rot works fast, and where it does not; `qualifies` is put to the years of the classes. */
  stakes: v.array(
    v.strictObject({
      hazards: v.array(v.picklist(['low', 'moderate', 'high'])),
      says: text,
      qualifies: v.optional(text),
      ...origin
    })
  )
})

export const seasoningSchema = v.strictObject({
  id: v.picklist(['green', 'air', 'kiln', 'rfv']),
  name: text,
  short: text,
  says: text,
  /** Mean moisture on delivery, percent; null where it is computed (green from the wood, air from the time in the yard). */
  deliveredPercent: v.nullable(positive),
  /** Half-width of the band about that mean, percent. */
  bandPercent: nonNegative,
  /** Thickest section that the trade dries this way, in; by how hard the wood is to dry (0, 1, 2). */
  thickestIn: v.nullable(v.pipe(v.array(nonNegative), v.length(3))),
  /** Days to dry a piece 1 in thick, and how days grow with thickness (power); null where not by this route. */
  daysAtOneInch: v.nullable(positive),
  thicknessPower: v.nullable(positive),
  /** Half-width of the band about those days, percent; left out where none is known. */
  daysBandPercent: v.optional(nonNegative),
  setsPitch: v.boolean(),
  ...origin
})
export const seasoningsSchema = v.pipe(v.array(seasoningSchema), v.length(4))
export type SeasoningContent = v.InferOutput<typeof seasoningSchema>

const month = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12))
const kilnStepSchema = v.strictObject({
  /** Holds while the mean is above this. */
  aboveMoisturePercent: nonNegative,
  temperatureC: positive,
  equilibriumPercent: positive
})
/** How timbers dry: air at their faces, the yards that the published times are fitted in, a kiln's schedule, the stages of a job. */
export const dryingSchema = v.strictObject({
  surface: v.strictObject({ pileMmADay: positive, openMmADay: positive, ...origin }),
  /** Place by forest region. */
  yards: v.strictObject({ by: v.record(key, key), ...origin }),
  /** A schedule for woods that are easy, middling and hard to dry. */
  kiln: v.strictObject({
    steps: v.pipe(v.array(v.pipe(v.array(kilnStepSchema), v.nonEmpty())), v.length(3)),
    ...origin
  }),
  stages: v.strictObject({
    /** Month of felling, by the answer. */
    felledMonths: v.strictObject({ winter: month, spring: month, summer: month, autumn: month }),
    /** How long cut timbers lie, by the answer. */
    waitsWeeks: v.strictObject({ weeks: nonNegative, months: nonNegative, year: nonNegative }),
    enclosedWeeks: nonNegative,
    heatingMonth: month,
    /** First month without heating. */
    heatingEndsMonth: month,
    shownYears: positive,
    ...origin
  }),
  /** Fitted by `src/wood/drying-fit.ts`; `tests/published/drying-fit.test.ts` makes them anew and compares. */
  factors: v.record(key, v.strictObject({ factor: positive, slowest: positive, quickest: positive }))
})

export const loadsSchema = v.strictObject({
  /** `layers` sum to the total; `roundedUpPsf` is what a stated rounding adds. */
  dead: v.array(
    v.strictObject({
      id: key,
      about: text,
      psf: positive,
      layers: v.pipe(v.array(key), v.nonEmpty()),
      roundedUpPsf: v.optional(positive),
      ...origin
    })
  ),
  /** What a roof or floor is built of; `slippery` roofing lets snow slide where nothing stops it. */
  layers: v.array(
    v.strictObject({ id: key, about: text, psf: positive, slippery: v.optional(v.boolean()), ...origin })
  ),
  live: v.array(v.strictObject({ id: key, about: text, psf: positive, ...origin })),
  snow: v.strictObject({
    flatRoofFactor: positive,
    exposureFactor: positive,
    thermalHeated: positive,
    thermalUnheated: positive,
    slope: v.strictObject({
      noneLeftDegrees: positive,
      rows: v.pipe(
        v.array(v.strictObject({ thermalUpTo: positive, slipperyDegrees: positive, otherDegrees: positive })),
        v.nonEmpty()
      ),
      ...origin
    }),
    oneSided: v.strictObject({
      fromInTwelve: positive,
      toInTwelve: positive,
      narrowFt: positive,
      windwardShare: nonNegative,
      driftFactor: positive,
      driftAddsPsf: positive,
      driftLessFt: positive,
      densityFactor: positive,
      densityBasePcf: positive,
      densityMostPcf: positive,
      ...origin
    }),
    ...origin
  }),
  deflection: v.array(v.strictObject({ id: key, liveRatio: positive, totalRatio: positive, ...origin }))
})

const share = v.pipe(v.number(), v.gtValue(0), v.maxValue(1))
/** Strength of a peg: psi, times its specific gravity to a power, times the timber's to a power. */
const pegStrength = v.strictObject({ psi: positive, pegPower: nonNegative, timberPower: nonNegative })
/** What a joint follows: pegs and their distances in diameters, housings, the rafter's step. */
export const jointsSchema = v.strictObject({
  peg: v.pipe(
    v.strictObject({
      usualIn: positive,
      diametersIn: v.pipe(v.array(positive), v.nonEmpty()),
      gravityLeast: positive,
      ...origin
    }),
    v.check((p) => p.diametersIn.includes(p.usualIn), 'the usual peg is one of those offered')
  ),
  pegWoods: v.pipe(v.array(v.strictObject({ wood: key, gravity: positive, ...origin })), v.nonEmpty()),
  strength: v.strictObject({
    bearingAlong: pegStrength,
    bearingAcross: pegStrength,
    bending: pegStrength,
    shear: pegStrength,
    shearDivisor: positive,
    ...origin
  }),
  service: v.strictObject({ wet: share, ...origin }),
  distances: v.pipe(
    v.array(
      v.strictObject({
        id: key,
        kind: v.picklist(['softwood', 'hardwood']),
        woods: v.pipe(v.array(key), v.nonEmpty()),
        edge: positive,
        end: positive,
        spacing: positive,
        ...origin
      })
    ),
    v.check((rows) => new Set(rows.map((r) => r.kind)).size === 2, 'a row for softwoods and one for hardwoods needed'),
    v.check((rows) => {
      const woods = rows.flatMap((r) => r.woods)
      return new Set(woods).size === woods.length
    }, 'a wood in two rows')
  ),
  tenonSide: v.strictObject({ diameters: positive, ...origin }),
  drawBore: v.strictObject({
    pegIn: positive,
    softwoodIn: positive,
    hardwoodIn: positive,
    endDiameters: positive,
    ...origin
  }),
  tenon: v.strictObject({ leastPegs: v.pipe(v.number(), v.integer(), v.minValue(1)), ...origin }),
  housing: v.strictObject({ leastIn: positive, mostIn: positive, mostShare: share, ...origin }),
  endGrain: v.strictObject({ share, ...origin }),
  step: v.pipe(
    v.strictObject({
      leastIn: positive,
      gentleDegrees: positive,
      gentleShare: share,
      steepDegrees: positive,
      steepShare: share,
      planeSteps: positive,
      ...origin
    }),
    v.check((s) => s.gentleDegrees < s.steepDegrees && s.steepShare <= s.gentleShare, 'steeper takes a shallower step')
  ),
  plane: v.strictObject({ share, ...origin }),
  notch: v.strictObject({ endShare: share, ...origin })
})
export type JointsContent = v.InferOutput<typeof jointsSchema>

export const finishesSchema = v.array(
  v.strictObject({
    id: v.picklist(['grey', 'clear', 'pale', 'mid', 'dark', 'painted']),
    name: text,
    says: text,
    /** Years between coats in the weather, from and to; null where nothing is renewed. */
    weatherYears: v.nullable(v.pipe(v.array(positive), v.length(2))),
    /** Target lightness on the wood, CIELAB L; null where the wood's own colour stands or is hidden. */
    targetL: v.nullable(positive),
    /** What it leaves on the wood: nothing, what has soaked in, or a film. */
    build: v.picklist(['none', 'penetrating', 'film']),
    /** Red, green and blue in linear light: KX of the coat as it wets, and of its stain for each part of it. */
    optics: v.strictObject({
      coatKX: v.pipe(v.array(nonNegative), v.length(3)),
      stainKX: v.nullable(v.pipe(v.array(nonNegative), v.length(3))),
      /** Share of the wood that pigment hides. */
      hides: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
      pigment: v.nullable(v.strictObject(lab)),
      ...origin
    }),
    ...origin
  })
)
export type FinishContent = v.InferOutput<typeof finishesSchema>[number]

export const indoorSchema = v.strictObject({
  heatedRoomC: positive,
  cooledRoomC: positive,
  coolAboveC: positive,
  moistureGainPaAtZeroC: nonNegative,
  noGainAboveC: positive,
  cooledHumidityCapPercent: positive,
  heatedHumidityCapPercent: positive,
  ...origin
})

/** A formula that the page can open beside a figure it computed. */
export const formulaSchema = v.strictObject({
  name: text,
  /** The formula as a reader would write it; letters as in the inputs of the quantity. */
  text: text,
  valid: v.optional(text),
  ...origin
})
export const formulasSchema = v.record(key, formulaSchema)

export const scenarioSchema = v.strictObject({
  id: key,
  title: text,
  paragraph: text,
  answers: v.record(v.string(), v.unknown())
})

/** What a person who is not sure may mean: plausible answers with weights; the first is what the brief assumes. */
export const unsureSchema = v.record(
  v.string(),
  v.strictObject({
    unit: v.picklist(['id', 'ft', 'in', 'psf', 'ratio', 'count']),
    values: v.pipe(
      v.array(v.strictObject({ value: v.union([v.string(), v.number()]), weight: positive })),
      v.nonEmpty()
    ),
    ...origin
  })
)
