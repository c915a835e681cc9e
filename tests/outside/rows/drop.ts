// Copied from published examples and charts. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const T7: Cited = { source: 'FAA AC 43.13-1B ch. 11 Table 11-7', label: 'read-secondary' }
const T8: Cited = { source: 'FAA AC 43.13-1B ch. 11 Table 11-8', label: 'read-secondary' }
const CHART: Cited = { source: "a marine dealer's printed ABYC chart", label: 'read-secondary' }

/** Drop along one wire, volts. Two of them are misprinted in the source and corrected here by its own numbers. */
export const RUNS = [
  { id: 'drop-011', size: 'AWG 6', lengthFt: 107, currentA: 20, printed: '0.942', ...T7 },
  { id: 'drop-013', size: 'AWG 12', lengthFt: 88, currentA: 20, printed: '3.56', note: 'printed as 3.60', ...T7 },
  { id: 'drop-015', size: 'AWG 10', lengthFt: 39, currentA: 20, printed: '0.98', ...T8 },
  { id: 'drop-016', size: 'AWG 10', lengthFt: 19.5, currentA: 20, printed: '0.491', note: 'printed as 0.366', ...T8 },
  { id: 'drop-017', size: 'AWG 10', lengthFt: 156, currentA: 20, printed: '3.93', ...T8 }
] as const

/** Least gauge at 12 V. The chart is not consistent with itself: 10 ft at 20 A gives 12, 20 ft at 10 A gives 10. */
export const LEAST_GAUGES = [
  { id: 'drop-028', currentA: 10, bothWaysFt: 21, percent: 10, gauge: 16, ...CHART },
  { id: 'drop-030', currentA: 5, bothWaysFt: 10, percent: 3, gauge: 18, ...CHART },
  { id: 'drop-031', currentA: 10, bothWaysFt: 10, percent: 3, gauge: 14, ...CHART },
  { id: 'drop-032', currentA: 15, bothWaysFt: 10, percent: 3, gauge: 12, ...CHART },
  { id: 'drop-033', currentA: 20, bothWaysFt: 10, percent: 3, gauge: 12, ...CHART },
  { id: 'drop-034', currentA: 25, bothWaysFt: 10, percent: 3, gauge: 10, ...CHART },
  { id: 'drop-035', currentA: 30, bothWaysFt: 10, percent: 3, gauge: 10, ...CHART },
  { id: 'drop-036', currentA: 40, bothWaysFt: 10, percent: 3, gauge: 8, ...CHART },
  { id: 'drop-037', currentA: 50, bothWaysFt: 10, percent: 3, gauge: 8, ...CHART },
  { id: 'drop-046', currentA: 5, bothWaysFt: 40, percent: 3, gauge: 10, ...CHART },
  { id: 'drop-047', currentA: 10, bothWaysFt: 40, percent: 3, gauge: 8, ...CHART },
  { id: 'drop-048', currentA: 15, bothWaysFt: 40, percent: 3, gauge: 6, ...CHART },
  { id: 'drop-049', currentA: 20, bothWaysFt: 40, percent: 3, gauge: 6, ...CHART },
  { id: 'drop-050', currentA: 25, bothWaysFt: 40, percent: 3, gauge: 4, ...CHART },
  { id: 'drop-051', currentA: 30, bothWaysFt: 40, percent: 3, gauge: 4, ...CHART },
  { id: 'drop-052', currentA: 40, bothWaysFt: 40, percent: 3, gauge: 2, ...CHART },
  { id: 'drop-053', currentA: 50, bothWaysFt: 40, percent: 3, gauge: 2, ...CHART }
] as const

/** Of a wire at another temperature the same drop comes at L2 = 254.5·L1/(234.5 + t2). */
export const HOT_RUN: Cited & { readonly id: string } = {
  id: 'drop-019',
  source: 'FAA AC 43.13-1B ch. 11 par. 11-66d(4)',
  label: 'read-secondary'
}

/** Circular mils = 10.75·I·L/E; annealed copper at 20 °C needs about 3.5 % less. */
export const CIRCULAR_MILS: Cited & { readonly id: string; readonly printed: string } = {
  id: 'drop-026',
  printed: '10.75',
  source: 'ABYC E-11 / ISO 10133 annex practice',
  label: 'memory'
}
