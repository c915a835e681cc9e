// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source: 'ISO 724 basic dimensions as reproduced in a tap maker catalogue and a machining firm thread chart',
  label: 'read-secondary'
}
const S2: Cited = {
  source: 'computed from the ISO 68-1 formulas (formulas seen reproduced in a tap maker catalogue)',
  label: 'read-secondary'
}

type Row = readonly [
  thread: string,
  majorMm: number,
  pitchMm: number,
  triangleHeightMm: number,
  pitchDiameterMm: number,
  minorDiameterMm: number,
  rootDiameterMm: number,
  kind: string,
  cited: Cited
]

const ROWS: readonly Row[] = [
  ['M1.6x0.35', 1.6, 0.35, 0.303109, 1.373, 1.221, 1.171, 'published', S1],
  ['M1.6x0.2', 1.6, 0.2, 0.173205, 1.47, 1.383, 1.355, 'computed', S2],
  ['M1.8x0.2', 1.8, 0.2, 0.173205, 1.67, 1.583, 1.555, 'computed', S2],
  ['M2x0.4', 2, 0.4, 0.34641, 1.74, 1.567, 1.509, 'published', S1],
  ['M2.2x0.45', 2.2, 0.45, 0.389711, 1.908, 1.713, 1.648, 'published', S1],
  ['M2.2x0.25', 2.2, 0.25, 0.216506, 2.038, 1.929, 1.893, 'computed', S2],
  ['M2.5x0.35', 2.5, 0.35, 0.303109, 2.273, 2.121, 2.071, 'computed', S2],
  ['M3x0.5', 3, 0.5, 0.433013, 2.675, 2.459, 2.387, 'published', S1],
  ['M3.5x0.6', 3.5, 0.6, 0.519615, 3.11, 2.85, 2.764, 'published', S1],
  ['M3.5x0.35', 3.5, 0.35, 0.303109, 3.273, 3.121, 3.071, 'computed', S2],
  ['M4x0.5', 4, 0.5, 0.433013, 3.675, 3.459, 3.387, 'computed', S2],
  ['M4.5x0.75', 4.5, 0.75, 0.649519, 4.013, 3.688, 3.58, 'published', S1],
  ['M5x0.8', 5, 0.8, 0.69282, 4.48, 4.134, 4.019, 'published', S1],
  ['M5x0.5', 5, 0.5, 0.433013, 4.675, 4.459, 4.387, 'computed', S2],
  ['M6x1', 6, 1, 0.866025, 5.35, 4.917, 4.773, 'published', S1],
  ['M6x0.75', 6, 0.75, 0.649519, 5.513, 5.188, 5.08, 'computed', S2],
  ['M7x0.75', 7, 0.75, 0.649519, 6.513, 6.188, 6.08, 'computed', S2],
  ['M8x1.25', 8, 1.25, 1.082532, 7.188, 6.647, 6.466, 'published', S1],
  ['M8x0.75', 8, 0.75, 0.649519, 7.513, 7.188, 7.08, 'computed', S2],
  ['M9x1.25', 9, 1.25, 1.082532, 8.188, 7.647, 7.466, 'published', S1],
  ['M9x0.75', 9, 0.75, 0.649519, 8.513, 8.188, 8.08, 'computed', S2],
  ['M10x1.5', 10, 1.5, 1.299038, 9.026, 8.376, 8.16, 'published', S1],
  ['M10x1', 10, 1, 0.866025, 9.35, 8.917, 8.773, 'computed', S2],
  ['M10x0.75', 10, 0.75, 0.649519, 9.513, 9.188, 9.08, 'computed', S2],
  ['M11x1', 11, 1, 0.866025, 10.35, 9.917, 9.773, 'computed', S2],
  ['M11x0.75', 11, 0.75, 0.649519, 10.513, 10.188, 10.08, 'computed', S2],
  ['M12x1.5', 12, 1.5, 1.299038, 11.026, 10.376, 10.16, 'computed', S2],
  ['M12x1.25', 12, 1.25, 1.082532, 11.188, 10.647, 10.466, 'computed', S2],
  ['M14x2', 14, 2, 1.732051, 12.701, 11.835, 11.546, 'published', S1],
  ['M14x1.5', 14, 1.5, 1.299038, 13.026, 12.376, 12.16, 'computed', S2],
  ['M14x1', 14, 1, 0.866025, 13.35, 12.917, 12.773, 'computed', S2],
  ['M15x1.5', 15, 1.5, 1.299038, 14.026, 13.376, 13.16, 'computed', S2],
  ['M16x2', 16, 2, 1.732051, 14.701, 13.835, 13.546, 'published', S1],
  ['M16x1.5', 16, 1.5, 1.299038, 15.026, 14.376, 14.16, 'computed', S2],
  ['M17x1.5', 17, 1.5, 1.299038, 16.026, 15.376, 15.16, 'computed', S2],
  ['M17x1', 17, 1, 0.866025, 16.35, 15.917, 15.773, 'computed', S2],
  // one machining firm chart prints D1 of M18 as 15.394; the formula and the tap maker give 15.294
  ['M18x2.5', 18, 2.5, 2.165064, 16.376, 15.294, 14.933, 'published', S1],
  ['M18x1.5', 18, 1.5, 1.299038, 17.026, 16.376, 16.16, 'computed', S2],
  ['M18x1', 18, 1, 0.866025, 17.35, 16.917, 16.773, 'computed', S2],
  ['M20x2', 20, 2, 1.732051, 18.701, 17.835, 17.546, 'computed', S2],
  ['M20x1.5', 20, 1.5, 1.299038, 19.026, 18.376, 18.16, 'computed', S2],
  ['M22x2.5', 22, 2.5, 2.165064, 20.376, 19.294, 18.933, 'published', S1],
  ['M22x2', 22, 2, 1.732051, 20.701, 19.835, 19.546, 'computed', S2],
  ['M22x1', 22, 1, 0.866025, 21.35, 20.917, 20.773, 'computed', S2],
  ['M24x3', 24, 3, 2.598076, 22.051, 20.752, 20.319, 'computed', S2],
  ['M24x1.5', 24, 1.5, 1.299038, 23.026, 22.376, 22.16, 'computed', S2],
  ['M24x1', 24, 1, 0.866025, 23.35, 22.917, 22.773, 'computed', S2],
  ['M25x1.5', 25, 1.5, 1.299038, 24.026, 23.376, 23.16, 'computed', S2],
  ['M25x1', 25, 1, 0.866025, 24.35, 23.917, 23.773, 'computed', S2],
  ['M27x3', 27, 3, 2.598076, 25.051, 23.752, 23.319, 'computed', S2],
  ['M27x2', 27, 2, 1.732051, 25.701, 24.835, 24.546, 'computed', S2],
  ['M27x1', 27, 1, 0.866025, 26.35, 25.917, 25.773, 'computed', S2],
  ['M28x2', 28, 2, 1.732051, 26.701, 25.835, 25.546, 'computed', S2],
  ['M28x1', 28, 1, 0.866025, 27.35, 26.917, 26.773, 'computed', S2],
  ['M30x3.5', 30, 3.5, 3.031089, 27.727, 26.211, 25.706, 'computed', S2],
  ['M30x2', 30, 2, 1.732051, 28.701, 27.835, 27.546, 'computed', S2],
  ['M30x1.5', 30, 1.5, 1.299038, 29.026, 28.376, 28.16, 'computed', S2],
  ['M32x2', 32, 2, 1.732051, 30.701, 29.835, 29.546, 'computed', S2],
  ['M32x1.5', 32, 1.5, 1.299038, 31.026, 30.376, 30.16, 'computed', S2],
  ['M33x3', 33, 3, 2.598076, 31.051, 29.752, 29.319, 'computed', S2],
  ['M33x2', 33, 2, 1.732051, 31.701, 30.835, 30.546, 'computed', S2],
  ['M35x1.5', 35, 1.5, 1.299038, 34.026, 33.376, 33.16, 'computed', S2],
  ['M36x4', 36, 4, 3.464102, 33.402, 31.67, 31.093, 'computed', S2],
  ['M36x2', 36, 2, 1.732051, 34.701, 33.835, 33.546, 'computed', S2],
  ['M36x1.5', 36, 1.5, 1.299038, 35.026, 34.376, 34.16, 'computed', S2]
]

/** ISO 724 and ISO 68-1: height of the triangle to six decimals, diameters to three, mm. */
export const ISO_BASIC = ROWS.map(
  ([thread, majorMm, pitchMm, triangleHeightMm, pitchDiameterMm, minorDiameterMm, rootDiameterMm, kind, cited]) => ({
    thread,
    majorMm,
    pitchMm,
    triangleHeightMm,
    pitchDiameterMm,
    minorDiameterMm,
    rootDiameterMm,
    kind,
    ...cited
  })
)
