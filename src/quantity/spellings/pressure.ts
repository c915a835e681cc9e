import type { UnitTable } from '../unit-row.ts'

/** Pressure of air and stress in metal are two kinds, but share their units. Only the order of the rows differs: it is the order a fault names them in. */
export const STRESSES = {
  MPa: { is: 'MPa', as: ['N/mm²'], words: ['megapascal', 'megapascals'] },
  GPa: { is: 'GPa', as: ['kN/mm²'] },
  kPa: { is: 'kPa', words: ['kilopascal', 'kilopascals'] },
  Pa: { is: 'Pa', as: ['N/m²'], words: ['pascal', 'pascals'] },
  psi: { is: 'lbf/inch^2', words: ['psi', 'lbf/in²', 'lb/in²'] },
  ksi: { is: 'lbf/inch^2', times: '1000', words: ['ksi', 'kpsi'] },
  'kgf/mm²': { is: 'kgf/mm^2', words: ['kgf/mm²'] },
  bar: { is: 'bar', words: ['bar', 'bars'] }
} as const satisfies UnitTable

// Mercury of 13 595.1 kg/m³ and water of 1000 kg/m³ under standard gravity, the conventional columns (memory).
export const PRESSURES = {
  Pa: STRESSES.Pa,
  hPa: { is: 'hPa', words: ['hectopascal', 'hectopascals'] },
  kPa: STRESSES.kPa,
  mbar: { is: 'mbar', words: ['millibar', 'millibars'] },
  bar: STRESSES.bar,
  psi: STRESSES.psi,
  inHg: { is: 'Pa', times: '3386.388640341', words: ['inHg', 'in Hg'] },
  mmHg: { is: 'Pa', times: '133.322387415', words: ['mmHg', 'mm Hg'] },
  inH2O: { is: 'Pa', times: '249.08891', words: ['inH2O', 'in H2O'] },
  atm: { is: 'atm', words: ['atm'] },
  MPa: STRESSES.MPa
} as const satisfies UnitTable
