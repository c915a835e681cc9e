import type { UnitTable } from '../unit-row.ts'

/** `in-lb` and `ft-lb` are what wrenches are marked with: the pound in them is a force. `kg·m` is a moment of mass, and the fault names `kgf·m`. */
export const TORQUES = {
  N·m: { is: 'N m', as: ['Nm', 'm·N'], words: ['newton metre', 'newton metres', 'newton meter', 'newton meters'] },
  lbf·in: {
    is: 'lbf inch',
    words: [
      ...['lbf·in', 'in·lbf', 'lb·in', 'in·lb', 'lbs·in', 'in·lbs', 'lbfin', 'inlbf', 'lbin', 'inlb', 'inlbs'],
      ...['inch·pound', 'inch·pounds', 'pound·inch', 'pound·inches', 'inch·lb', 'inch·lbs', 'inch·lbf', 'lbf·inch', 'lb·inch']
    ]
  },
  lbf·ft: {
    is: 'lbf foot',
    words: [
      ...['lbf·ft', 'ft·lbf', 'lb·ft', 'ft·lb', 'lbs·ft', 'ft·lbs', 'lbfft', 'ftlbf', 'lbft', 'ftlb', 'ftlbs'],
      ...['foot·pound', 'foot·pounds', 'pound·foot', 'pound·feet', 'foot·lb', 'foot·lbs', 'foot·lbf', 'lbf·foot', 'lb·foot']
    ]
  },
  kgf·cm: { is: 'kgf cm', words: ['kgf·cm', 'cm·kgf', 'kgfcm'] },
  kgf·m: { is: 'kgf m', as: ['kp·m', 'kpm'], words: ['kgf·m', 'm·kgf', 'kgfm'] },
  ozf·in: {
    is: 'lbf inch',
    times: '0.0625',
    words: [
      'ozf·in',
      'in·ozf',
      'oz·in',
      'in·oz',
      'ozfin',
      'inozf',
      'ozin',
      'inoz',
      'inch·ounce',
      'inch·ounces',
      'ounce·inch',
      'ounce·inches'
    ]
  },
  N·cm: { is: 'N cm', as: ['Ncm'] },
  N·mm: { is: 'N mm', as: ['Nmm'] },
  cN·m: { is: 'cN m', as: ['cNm'] },
  mN·m: { is: 'mN m', as: ['mNm'] },
  daN·m: { is: 'daN m', as: ['daNm'] },
  kN·m: { is: 'kN m', as: ['kNm'] },
  gf·cm: { is: 'kgf cm', times: '0.001', words: ['gf·cm', 'gfcm'] },
  dyn·cm: { is: 'N m', times: '1e-7', words: ['dyn·cm', 'dyne·cm'] }
} as const satisfies UnitTable
