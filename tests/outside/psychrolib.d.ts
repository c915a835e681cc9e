/** The part of the reference program that the checks call; it ships no declarations. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number
    SetUnitSystem(system: number): void
    GetSatVapPres(dryC: number): number
    GetTDewPointFromRelHum(dryC: number, humidity: number): number
    GetTWetBulbFromRelHum(dryC: number, humidity: number, pressurePa: number): number
    GetHumRatioFromVapPres(vapourPa: number, pressurePa: number): number
    GetStandardAtmPressure(altitudeM: number): number
  }
  // biome-ignore lint/style/noDefaultExport: the package exports it so
  export default psychrolib
}
