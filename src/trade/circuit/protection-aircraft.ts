/** FAA AC 43.13-1B table 11-3: largest breaker and fuse of a copper wire. The table prints no breaker for the two thickest. */
export const AIRCRAFT_PROTECTION = [
  { awg: 22, breakerA: 5, fuseA: 5 },
  { awg: 20, breakerA: 7.5, fuseA: 5 },
  { awg: 18, breakerA: 10, fuseA: 10 },
  { awg: 16, breakerA: 15, fuseA: 10 },
  { awg: 14, breakerA: 20, fuseA: 15 },
  { awg: 12, breakerA: 30, fuseA: 20 },
  { awg: 10, breakerA: 40, fuseA: 30 },
  { awg: 8, breakerA: 50, fuseA: 50 },
  { awg: 6, breakerA: 80, fuseA: 70 },
  { awg: 4, breakerA: 100, fuseA: 70 },
  { awg: 2, breakerA: 125, fuseA: 100 },
  { awg: 1, breakerA: null, fuseA: 150 },
  { awg: 0, breakerA: null, fuseA: 150 }
] as const

/** Beyond these the table says nothing. A smaller bundle lies better than the one it names. */
const WARMEST_C = 57
const HIGHEST_M = 9144 // 30 000 ft
/** The least that aircraft wire is made for (memory). */
const LEAST_INSULATION_C = 105

/** How many of its conditions a wire is outside of. */
export function aircraftOutsideCount({ ambientC, altitudeM, insulationC }: Lies): number {
  return [ambientC > WARMEST_C, altitudeM > HIGHEST_M, insulationC < LEAST_INSULATION_C].filter(Boolean).length
}

interface Lies {
  readonly ambientC: number
  readonly altitudeM: number
  readonly insulationC: number
}

/** What the table rests on; remembered, not seen. */
export const AIRCRAFT_PROTECTION_HOLDS =
  'wire of 105 °C or more in bundles of 15 or more with at most 20 % of their capacity in use, 57 °C, up to 30 000 ft, the protector at 24 to 29 °C (basis from memory)'
