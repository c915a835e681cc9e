// Copied from published tables. Each row names its source; the label says how the source was seen.

import type { Kind } from '../../../src/quantity/kinds.ts'
import type { Cited } from './cited.ts'

const BY_DEFINITION: Cited = { source: 'exact by definition: 0.45359237 kg × 9.80665 m/s² × the inch or foot', label: 'read-secondary' }
const SP_811: Cited = { source: 'NIST SP 811, appendix B', label: 'read-secondary' }
const METRIC: Cited = { source: 'exact by definition', label: 'memory' }

interface Row extends Cited {
  readonly kind: Kind
  readonly unit: string
  /** In the house unit of the kind. */
  readonly times: string
  /** The last digit is rounded. */
  readonly rounded?: true
}

/** Factors with all their digits. */
export const EXACT_FACTORS: readonly Row[] = [
  { kind: 'force', unit: 'lbf', times: '4.4482216152605', ...BY_DEFINITION },
  { kind: 'torque', unit: 'lbf.in', times: '0.1129848290276167', ...BY_DEFINITION },
  // The last digit is corrected: 4.4482216152605 × 0.3048 = 1.3558179483314004.
  { kind: 'torque', unit: 'lbf.ft', times: '1.3558179483314004', ...BY_DEFINITION },
  { kind: 'torque', unit: 'ozf.in', times: '0.00706155181422604', rounded: true, ...BY_DEFINITION },
  { kind: 'torque', unit: 'kgf.m', times: '9.80665', ...SP_811 },
  { kind: 'torque', unit: 'kgf.cm', times: '0.0980665', ...SP_811 },
  { kind: 'torque', unit: 'gf.cm', times: '0.0000980665', ...METRIC },
  { kind: 'torque', unit: 'dyn.cm', times: '1e-7', ...METRIC },
  { kind: 'torque', unit: 'N.cm', times: '0.01', ...METRIC },
  { kind: 'torque', unit: 'cN.m', times: '0.01', ...METRIC },
  { kind: 'force', unit: 'kip', times: '4448.2216152605', ...BY_DEFINITION },
  { kind: 'pressure', unit: 'psi', times: '6894.757293168', rounded: true, source: 'exact ratio lbf/in², shown rounded', label: 'memory' },
  { kind: 'length', unit: 'in', times: '25.4', ...SP_811 }
]

/** The same as printed: the tolerance is half of the last digit. */
export const PRINTED_FACTORS: readonly (Cited & { readonly unit: string; readonly printed: string })[] = [
  { unit: 'lbf·in', printed: '1.129848E-01', ...SP_811 },
  { unit: 'lbf·ft', printed: '1.355818E+00', ...SP_811 },
  { unit: 'ozf·in', printed: '7.061552E-03', ...SP_811 },
  { unit: 'kgf·m', printed: '9.80665E+00', ...SP_811 },
  { unit: 'lbf·in', printed: '0.112985', source: 'a naval facilities manual', label: 'read-secondary' }
]
