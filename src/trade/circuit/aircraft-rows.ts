import type { SourceId } from '../../formula/source.ts'

/** Gauge number (00 is -1), greatest resistance at 20 °C in ohm per 1000 ft, conductor area in circular mils, and where the area was seen. */
export type AircraftRow = readonly [gaugeCount: number, ohmPerThousandFt: number, circularMils: number, areaFrom: SourceId]

/** Tin-plated stranded copper wire of aircraft, FAA AC 43.13-1B table 11-9. Its areas are not those of solid wire. */
export const AIRCRAFT = [
  [24, 28.4, 475, 'ac-43.13-1b-11-9'],
  [22, 16.2, 755, 'aircraft-areas-unseen'],
  [20, 9.88, 1216, 'ac-43.13-1b-11-9'],
  [18, 6.23, 1900, 'ac-43.13-1b-11-9'],
  [16, 4.81, 2426, 'aircraft-areas-unseen'],
  [14, 3.06, 3831, 'ac-43.13-1b-11-9'],
  [12, 2.02, 5874, 'ac-43.13-1b-11-9'],
  [10, 1.26, 9354, 'aircraft-areas-unseen'],
  [8, 0.7, 16983, 'ac-43.13-1b-11-9'],
  [6, 0.44, 26818, 'ac-43.13-1b-11-9'],
  [4, 0.28, 42615, 'aircraft-areas-unseen'],
  [2, 0.18, 66500, 'ac-43.13-1b-11-9'],
  [1, 0.15, 81700, 'ac-43.13-1b-11-9'],
  [0, 0.12, 104500, 'aircraft-areas-unseen'],
  [-1, 0.09, 133000, 'ac-43.13-1b-11-9'],
  [-2, 0.07, 166500, 'ac-43.13-1b-11-9'],
  [-3, 0.06, 210900, 'aircraft-areas-unseen']
] as const satisfies readonly AircraftRow[]
