// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = { source: "ISO 898-1 nominal stress area (fastener suppliers' tables)", label: 'read-secondary' }
const S2: Cited = { source: 'computed with pi/4*((d2+d3)/2)^2', label: 'read-secondary' }
const S3: Cited = { source: 'ISO 898-1 fine-pitch table', label: 'memory' }
const S4: Cited = { source: 'GB/T 16823.1 table as reproduced by a fastener vendor', label: 'read-secondary' }

/** Stress areas as printed, mm² (text, for its digits); `computed` where no table was seen. */
export const ISO_STRESS_AREAS = [
  { thread: 'M3x0.5', printed: '5.03', kind: 'published', ...S1 },
  { thread: 'M3.5x0.6', printed: '6.78', kind: 'published', ...S1 },
  { thread: 'M4x0.7', printed: '8.78', kind: 'published', ...S1 },
  { thread: 'M5x0.5', printed: '16.124', kind: 'computed', ...S2 },
  { thread: 'M6x0.75', printed: '22.031', kind: 'computed', ...S2 },
  { thread: 'M6x1', printed: '20.1', kind: 'published', ...S1 },
  { thread: 'M8x0.75', printed: '41.812', kind: 'computed', ...S2 },
  { thread: 'M8x1', printed: '39.2', kind: 'published', ...S3 },
  { thread: 'M10x0.75', printed: '67.876', kind: 'computed', ...S2 },
  { thread: 'M10x1', printed: '64.5', kind: 'published', ...S3 },
  { thread: 'M10x1.5', printed: '58', kind: 'published', ...S1 },
  { thread: 'M12x1', printed: '96.10', kind: 'published', ...S4 },
  { thread: 'M12x1.5', printed: '88.13', kind: 'published', ...S4 },
  { thread: 'M12x1.75', printed: '84.3', kind: 'published', ...S1 },
  { thread: 'M14x1.5', printed: '124.55', kind: 'published', ...S4 },
  { thread: 'M14x2', printed: '115', kind: 'published', ...S1 },
  { thread: 'M16x1.5', printed: '167.25', kind: 'published', ...S4 },
  { thread: 'M16x2', printed: '157', kind: 'published', ...S1 },
  { thread: 'M18x2', printed: '204.18', kind: 'published', ...S4 },
  { thread: 'M18x2.5', printed: '192', kind: 'published', ...S1 },
  { thread: 'M20x2', printed: '258', kind: 'published', ...S3 },
  { thread: 'M20x2.5', printed: '245', kind: 'published', ...S1 },
  { thread: 'M22x2.5', printed: '303', kind: 'published', ...S1 },
  { thread: 'M24x2', printed: '384', kind: 'published', ...S3 },
  { thread: 'M27x3', printed: '459', kind: 'published', ...S1 },
  { thread: 'M30x3.5', printed: '561', kind: 'published', ...S1 },
  { thread: 'M36x4', printed: '817', kind: 'published', ...S1 }
] as const
