import type { UnitTable } from '../unit-row.ts'

/** No `K` here: it is a difference, and a slip from one to the other is a slip of 273. */
export const TEMPERATURES = {
  '°C': { is: 'degC', as: ['C', 'degC', 'deg C', 'degreeC'], words: ['celsius', 'deg celsius', 'degrees celsius', 'degrees C'] },
  '°F': { is: 'degF', as: ['F', 'degF', 'deg F', 'degreeF'], words: ['fahrenheit', 'deg fahrenheit', 'degrees fahrenheit', 'degrees F'] }
} as const satisfies UnitTable

export const DIFFERENCES = {
  K: { is: 'K', as: ['Δ°C', 'ΔC', 'C°', 'delta°C', 'delta C', 'delta K', 'ΔK'], words: ['kelvin', 'kelvins'] },
  'Δ°F': { is: 'degR', as: ['ΔF', 'F°', 'delta°F', 'delta F', '°R'] },
  mK: { is: 'mK' }
} as const satisfies UnitTable
