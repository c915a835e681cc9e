// Copied from makers' pages. Each row names its source; the label says how the source was seen.

import type { Cited } from './cited.ts'

const ALLOYS: Cited = { source: "a resistance-alloy maker's table", label: 'read' }

/** R(T)/R20 of resistance alloys. */
export const RESISTANCE_FACTORS = [
  { id: 'heater-033', alloy: 'Cr20Ni80', hotC: 100, printed: '1.006', ...ALLOYS },
  { id: 'heater-035', alloy: 'Cr20Ni80', hotC: 300, printed: '1.018', ...ALLOYS },
  { id: 'heater-037', alloy: 'Cr20Ni80', hotC: 500, printed: '1.026', ...ALLOYS },
  { id: 'heater-040', alloy: 'Cr15Ni60', hotC: 100, printed: '1.011', ...ALLOYS },
  { id: 'heater-042', alloy: 'Cr15Ni60', hotC: 300, printed: '1.038', ...ALLOYS },
  { id: 'heater-044', alloy: 'Cr15Ni60', hotC: 500, printed: '1.064', ...ALLOYS },
  { id: 'heater-047', alloy: '0Cr25Al5', hotC: 100, printed: '1.002', ...ALLOYS },
  { id: 'heater-049', alloy: '0Cr25Al5', hotC: 300, printed: '1.008', ...ALLOYS },
  { id: 'heater-051', alloy: '0Cr25Al5', hotC: 500, printed: '1.021', ...ALLOYS }
] as const

/** Wattage hot, at rated voltage, may be 5 % above and 10 % below what is stamped: resistance then about 5 % below and 11 % above. */
export const WATTAGE_TOLERANCE: Cited & { readonly id: string } = {
  id: 'heater-002',
  source: "two heater makers' pages",
  label: 'read-secondary'
}

/** A nickel-chromium element takes about 2 % more power at 20 °C than at 300 °C. */
export const COLD_TO_HOT: Cited & { readonly id: string; readonly percent: number } = {
  id: 'heater-053',
  percent: 2,
  source: 'from the resistance factors above',
  label: 'read-secondary'
}

/** A ceramic element takes 2 to 3 times its steady current for seconds. */
export const CERAMIC: Cited & { readonly id: string } = { id: 'heater-054', source: 'trade rule', label: 'common practice' }
