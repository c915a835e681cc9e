import type { UnitTable } from '../unit-row.ts'

export const LENGTHS = {
  mm: { is: 'mm', words: ['millimetre', 'millimetres', 'millimeter', 'millimeters'] },
  cm: { is: 'cm', words: ['centimetre', 'centimetres', 'centimeter', 'centimeters'] },
  m: { is: 'm', words: ['metre', 'metres', 'meter', 'meters'] },
  in: { is: 'inch', as: ['"'], words: ['in', 'inch', 'inches'] },
  ft: { is: 'foot', as: ["'"], words: ['ft', 'foot', 'feet'] },
  µm: { is: 'um', words: ['micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'] },
  thou: { is: 'inch', times: '0.001', words: ['thou', 'mil', 'mils'] },
  yd: { is: 'yard', words: ['yd', 'yds', 'yard', 'yards'] },
  km: { is: 'km', words: ['kilometre', 'kilometres', 'kilometer', 'kilometers'] }
} as const satisfies UnitTable
