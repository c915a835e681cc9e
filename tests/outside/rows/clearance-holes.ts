// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = { source: 'ISO 273 as tabulated in two open-source libraries', label: 'read-secondary' }

/** Clearance holes, mm. */
export const CLEARANCE_HOLES = [
  { screw: 'M1.6', fineMm: 1.7, mediumMm: 1.8, coarseMm: 2, ...S1 },
  { screw: 'M2', fineMm: 2.2, mediumMm: 2.4, coarseMm: 2.6, ...S1 },
  { screw: 'M3', fineMm: 3.2, mediumMm: 3.4, coarseMm: 3.6, ...S1 },
  { screw: 'M3.5', fineMm: 3.7, mediumMm: 3.9, coarseMm: 4.2, ...S1 },
  { screw: 'M4.5', fineMm: 4.8, mediumMm: 5, coarseMm: 5.3, ...S1 },
  { screw: 'M5', fineMm: 5.3, mediumMm: 5.5, coarseMm: 5.8, ...S1 },
  { screw: 'M7', fineMm: 7.4, mediumMm: 7.6, coarseMm: 8, ...S1 },
  { screw: 'M8', fineMm: 8.4, mediumMm: 9, coarseMm: 10, ...S1 },
  {
    screw: 'M12',
    fineMm: 13,
    mediumMm: 13.5,
    coarseMm: 14.5,
    note: 'one part library prints medium 14 / coarse 15 here; ISO 273:1979 is as shown',
    ...S1
  },
  {
    screw: 'M14',
    fineMm: 15,
    mediumMm: 15.5,
    coarseMm: 16.5,
    note: 'one part library prints medium 16 / coarse 17 here; ISO 273:1979 is as shown',
    ...S1
  },
  {
    screw: 'M16',
    fineMm: 17,
    mediumMm: 17.5,
    coarseMm: 18.5,
    note: 'one part library prints medium 18 / coarse 19 here; ISO 273:1979 is as shown',
    ...S1
  },
  { screw: 'M18', fineMm: 19, mediumMm: 20, coarseMm: 21, ...S1 },
  { screw: 'M20', fineMm: 21, mediumMm: 22, coarseMm: 24, ...S1 },
  { screw: 'M24', fineMm: 25, mediumMm: 26, coarseMm: 28, ...S1 },
  { screw: 'M27', fineMm: 28, mediumMm: 30, coarseMm: 32, ...S1 },
  { screw: 'M33', fineMm: 34, mediumMm: 36, coarseMm: 38, ...S1 },
  { screw: 'M36', fineMm: 37, mediumMm: 39, coarseMm: 42, ...S1 }
] as const
