// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = {
  source:
    'DIN 76-1 run-out of internal thread, regular e1 (drilled depth beyond usable thread); seen in a general-purpose open-source CAD library',
  label: 'read-secondary'
}

/** Regular run-out of blind holes, mm. */
export const RUN_OUT_ROWS = [
  { pitchMm: 0.2, runOutMm: 1.3, ...S1 },
  { pitchMm: 0.25, runOutMm: 1.5, ...S1 },
  { pitchMm: 0.3, runOutMm: 1.8, ...S1 },
  { pitchMm: 0.35, runOutMm: 2.1, ...S1 },
  { pitchMm: 0.4, runOutMm: 2.3, ...S1 },
  { pitchMm: 0.45, runOutMm: 2.6, ...S1 },
  { pitchMm: 0.5, runOutMm: 2.8, ...S1 },
  { pitchMm: 0.6, runOutMm: 3.4, ...S1 },
  { pitchMm: 0.7, runOutMm: 3.8, ...S1 },
  { pitchMm: 0.75, runOutMm: 4, ...S1 },
  { pitchMm: 0.8, runOutMm: 4.2, ...S1 },
  { pitchMm: 1, runOutMm: 5.1, ...S1 },
  { pitchMm: 1.25, runOutMm: 6.2, ...S1 },
  { pitchMm: 1.5, runOutMm: 7.3, ...S1 },
  { pitchMm: 1.75, runOutMm: 8.3, ...S1 },
  { pitchMm: 2, runOutMm: 9.3, ...S1 },
  { pitchMm: 2.5, runOutMm: 11.2, ...S1 },
  { pitchMm: 3, runOutMm: 13.1, ...S1 },
  { pitchMm: 3.5, runOutMm: 15.2, ...S1 },
  { pitchMm: 4, runOutMm: 16.8, ...S1 },
  { pitchMm: 4.5, runOutMm: 18.4, ...S1 },
  { pitchMm: 5, runOutMm: 20.8, ...S1 },
  { pitchMm: 5.5, runOutMm: 22.4, ...S1 },
  { pitchMm: 6, runOutMm: 24, ...S1 }
]
