import type { UnitTable } from '../unit-row.ts'

/** No `lb` and no `kg`: those are masses, and the fault names `lbf` and `kgf`. */
export const FORCES = {
  N: { is: 'N', words: ['newton', 'newtons'] },
  kN: { is: 'kN', words: ['kilonewton', 'kilonewtons'] },
  lbf: { is: 'lbf', words: ['lbf', 'lbsf', 'pound-force', 'pounds-force'] },
  kgf: { is: 'kgf', as: ['kp'], words: ['kgf', 'kilogram-force'] },
  daN: { is: 'daN' },
  mN: { is: 'mN' },
  ozf: { is: 'lbf', times: '0.0625', words: ['ozf', 'ounce-force'] },
  kip: { is: 'lbf', times: '1000', words: ['kip', 'kips'] }
} as const satisfies UnitTable
