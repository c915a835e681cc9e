import type { UnitTable } from '../unit-row.ts'

export const MASSES = {
  kg: { is: 'kg', words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'] },
  g: { is: 'g', as: ['gm'], words: ['gram', 'grams', 'gramme', 'grammes'] },
  lb: { is: 'lbm', words: ['lb', 'lbs', 'lbm', 'pound', 'pounds'] },
  oz: { is: 'ounce', words: ['oz', 'ounce', 'ounces'] },
  mg: { is: 'mg', words: ['milligram', 'milligrams'] },
  t: { is: 'kg', times: '1000', words: ['tonne', 'tonnes'] }
} as const satisfies UnitTable
