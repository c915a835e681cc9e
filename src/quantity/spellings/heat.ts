import type { UnitTable } from '../unit-row.ts'

export const SPECIFIC_HEATS = {
  'J/(kg·K)': { is: 'J/(kg K)', as: ['J/kgK', 'J/kg/K'] },
  'kJ/(kg·K)': { is: 'kJ/(kg K)', as: ['kJ/kgK', 'kJ/kg/K'] },
  'J/(g·K)': { is: 'J/(g K)', as: ['J/gK', 'J/g/K'] },
  'BTU/(lb·°F)': { is: 'BTU/(lbm degR)', words: ['BTU/lb°F', 'BTU/lb·°F', 'BTU/lb/°F', 'BTU/lb·F'] }
} as const satisfies UnitTable

export const CONDUCTANCES = {
  'W/K': { is: 'W/K' },
  'mW/K': { is: 'mW/K' },
  'BTU/(h·°F)': { is: 'BTU/(hour degR)', words: ['BTU/h°F', 'BTU/h·°F', 'BTU/hr·°F', 'BTU/h/°F'] }
} as const satisfies UnitTable

export const FILMS = {
  'W/(m²·K)': { is: 'W/(m^2 K)', as: ['W/m²K', 'W/m²/K'] },
  'W/(cm²·K)': { is: 'W/(cm^2 K)', as: ['W/cm²K', 'W/cm²/K'] },
  'BTU/(h·ft²·°F)': { is: 'BTU/(hour foot^2 degR)', words: ['BTU/hft²°F', 'BTU/hr·ft²·°F', 'BTU/hr·ft²·F', 'BTU/h·ft²·F', 'BTU/h/ft²/°F'] }
} as const satisfies UnitTable
