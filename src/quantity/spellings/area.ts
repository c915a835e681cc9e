import type { UnitTable } from '../unit-row.ts'

export const AREAS = {
  'mm²': { is: 'mm^2', words: ['sq mm', 'sqmm', 'square millimetres', 'square millimeters'] },
  'cm²': { is: 'cm^2', words: ['sq cm', 'sqcm', 'square centimetres', 'square centimeters'] },
  'dm²': { is: 'dm^2', words: ['sq dm'] },
  'm²': { is: 'm^2', words: ['sq m', 'sqm', 'square metres', 'square meters'] },
  'in²': { is: 'inch^2', words: ['in2', 'sq in', 'sqin', 'square inch', 'square inches'] },
  'ft²': { is: 'foot^2', words: ['ft2', 'sq ft', 'sqft', 'square foot', 'square feet'] }
} as const satisfies UnitTable
