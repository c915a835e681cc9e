// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const S1: Cited = { source: 'unified tensile stress area, fastener-supplier tables (0.7854(D-0.9743/n)^2)', label: 'read-secondary' }

/** Stress areas, square inches as printed: `computed` is the formula worked out elsewhere. */
export const UNIFIED_STRESS_AREA_ROWS = [
  { thread: '#0-80', computed: '0.00180', published: '0.0018', ...S1 },
  { thread: '#2-64', computed: '0.00393', published: '0.00394', ...S1 },
  { thread: '#3-56', computed: '0.00523', published: '0.00523', ...S1 },
  { thread: '#5-44', computed: '0.00831', published: '0.0083', ...S1 },
  { thread: '#6-40', computed: '0.01014', published: '0.01015', ...S1 },
  { thread: '#10-32', computed: '0.01999', published: '0.02', ...S1 },
  { thread: '#12-28', computed: '0.02579', published: '0.0258', ...S1 },
  { thread: '5/16-24', computed: '0.05807', published: '0.058', ...S1 },
  { thread: '3/8-24', computed: '0.08783', published: '0.0878', ...S1 },
  { thread: '1/2-20', computed: '0.15995', published: '0.1599', ...S1 },
  { thread: '9/16-18', computed: '0.20298', published: '0.203', ...S1 },
  { thread: '3/4-16', computed: '0.37296', published: '0.373', ...S1 },
  { thread: '7/8-14', computed: '0.50947', published: '0.509', ...S1 },
  { thread: '#1-64', computed: '0.00262', published: '0.00263', ...S1 },
  { thread: '#2-56', computed: '0.00370', published: '0.0037', ...S1 },
  { thread: '#4-40', computed: '0.00603', published: '0.00604', ...S1 },
  { thread: '#5-40', computed: '0.00796', published: '0.00796', ...S1 },
  { thread: '#8-32', computed: '0.01401', published: '0.014', ...S1 },
  { thread: '#10-24', computed: '0.01753', published: '0.0175', ...S1 },
  { thread: '1/4-20', computed: '0.03182', published: '0.0318', ...S1 },
  { thread: '5/16-18', computed: '0.05243', published: '0.0524', ...S1 },
  { thread: '7/16-14', computed: '0.10631', published: '0.1063', ...S1 },
  { thread: '1/2-13', computed: '0.14190', published: '0.1419', ...S1 },
  { thread: '5/8-11', computed: '0.22600', published: '0.226', ...S1 },
  { thread: '3/4-10', computed: '0.33446', published: '0.334', ...S1 },
  { thread: '1-8', computed: '0.60575', published: '0.606', ...S1 },
  { thread: '1-1/8-7', computed: '0.76328', published: '0.763', ...S1 }
]
