// Types of packages that bring none: only what is used here.

declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      targetFormat: 'woff2'
      noHinting?: boolean
      variationAxes?: Record<string, number | { min: number; max: number }>
    }
  ): Promise<Buffer>
}

/** Temperatures in degrees C, pressures in Pa, shares 0 to 1, after `SetUnitSystem(psychrolib.SI)`. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly IP: number
    readonly SI: number
    SetUnitSystem(system: number): void
    GetSatVapPres(dryBulb: number): number
    GetVapPresFromRelHum(dryBulb: number, relHum: number): number
    GetRelHumFromVapPres(dryBulb: number, vapPres: number): number
    GetVapPresFromHumRatio(humRatio: number, pressure: number): number
    GetHumRatioFromVapPres(vapPres: number, pressure: number): number
    GetHumRatioFromRelHum(dryBulb: number, relHum: number, pressure: number): number
    GetRelHumFromHumRatio(dryBulb: number, humRatio: number, pressure: number): number
    GetTDewPointFromVapPres(dryBulb: number, vapPres: number): number
    GetTDewPointFromRelHum(dryBulb: number, relHum: number): number
    GetTWetBulbFromRelHum(dryBulb: number, relHum: number, pressure: number): number
    GetRelHumFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number
    GetStandardAtmPressure(altitude: number): number
  }
  export default psychrolib
}
