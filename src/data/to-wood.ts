/** A wood and its rows of strength, from content to SI. */
import { originOf } from './origin'
import type { DesignRow, Wood } from './reference-types'
import type { DesignValueContent, SpeciesContent } from './schema'
import { FOOT, INCH, PSI, percent } from './units'

export function toWood(s: SpeciesContent, drying: Wood['drying'] | undefined): Wood {
  if (!drying) throw new Error(`no fitted drying of "${s.id}" in content/drying.json`)
  const clear = s.strengthGreen
  const heart = s.greenMoisture.heartwoodPercent ?? s.greenMoisture.wholePercent ?? 0
  // Some inventories print a whole-stem figure below both heartwood and sapwood, which cannot be: the drier part then stands.
  const least = Math.min(heart, s.greenMoisture.sapwoodPercent ?? heart)
  const whole = Math.max(s.greenMoisture.wholePercent ?? heart, least)
  const kPa = (n: number | undefined) => (n === undefined ? undefined : n / 1000)
  const traits = Object.fromEntries(
    Object.entries(s.traits).map(([id, t]) => [id, { level: t.level, says: t.says ?? null, origin: originOf(t) }])
  ) as Wood['traits']
  return {
    id: s.id,
    name: s.name,
    said: s.said,
    short: s.short,
    botanical: s.botanical,
    kind: s.kind,
    summary: s.summary,
    radial: percent(s.shrinkage.radialPercent),
    tangential: percent(s.shrinkage.tangentialPercent),
    shrinkageOrigin: originOf(s.shrinkage),
    fibreSaturation: percent(s.fibreSaturation.percent),
    fibreSaturationOrigin: originOf(s.fibreSaturation),
    greenHeartwood: percent(heart),
    greenWhole: percent(whole),
    greenOrigin: originOf(s.greenMoisture),
    gravityGreen: s.specificGravity.green,
    gravityOrigin: originOf(s.specificGravity),
    strengthGreen: clear
      ? {
          rupture: kPa(clear.ruptureKPa),
          elasticity: clear.elasticityMPa,
          compression: kPa(clear.compressionParallelKPa),
          compressionPerp: kPa(clear.compressionPerpendicularKPa),
          shear: kPa(clear.shearParallelKPa),
          tensionPerp: kPa(clear.tensionPerpendicularKPa),
          origin: originOf(clear)
        }
      : null,
    durability: {
      group: s.durability.usGroup,
      best: s.durability.classBest,
      worst: s.durability.classWorst,
      fieldTests: (s.durability.fieldTests ?? []).map((t) => ({
        says: t.says,
        setting: t.setting,
        finds: t.finds ?? null,
        origin: originOf(t)
      })),
      origin: originOf(s.durability)
    },
    designGroup: s.design.group,
    designOrigin: originOf(s.design),
    airDays: { min: s.airDrying.daysMin, max: s.airDrying.daysMax, origin: originOf(s.airDrying) },
    drying,
    colour: { L: s.colour.L, a: s.colour.a, b: s.colour.b, origin: originOf(s.colour) },
    aged: s.agedColour ? { L: s.agedColour.L, a: s.agedColour.a, b: s.agedColour.b } : null,
    paint: s.paint ? { group: s.paint.group, older: s.paint.older, origin: originOf(s.paint) } : null,
    oils: s.oils ? originOf(s.oils) : null,
    supply: {
      longest: s.supply.longestFt * FOOT,
      largest: [(s.supply.largestIn[0] ?? 0) * INCH, (s.supply.largestIn[1] ?? 0) * INCH],
      log: s.supply.largestLogIn * INCH,
      freeOfHeart: s.supply.freeOfHeart,
      origin: originOf(s.supply)
    },
    regions: s.grows.regions,
    regionsOrigin: originOf(s.grows),
    traits,
    cautions: s.cautions.map((c) => ({ says: c.says, origin: originOf(c) }))
  }
}

export function toDesignRow(d: DesignValueContent): DesignRow {
  return {
    group: d.group,
    sizeClass: d.sizeClass,
    grade: d.grade,
    bending: d.bendingPsi * PSI,
    tension: d.tensionPsi * PSI,
    shear: d.shearPsi * PSI,
    compressionPerp: d.compressionPerpPsi * PSI,
    compression: d.compressionPsi * PSI,
    elasticity: d.elasticityPsi * PSI,
    elasticityMin: d.elasticityMinPsi * PSI,
    gravity: d.specificGravity,
    wetIncluded: d.wetIncluded,
    origin: originOf(d)
  }
}
