import type { UnitTable } from '../unit-row.ts'

export const RESISTANCES = {
  ohm: { is: 'ohm', words: ['ohm', 'ohms'] },
  mohm: { is: 'mohm', words: ['milliohm', 'milliohms'] },
  µohm: { is: 'uohm', words: ['microhm', 'microhms', 'micro-ohm'] },
  kohm: { is: 'kohm', words: ['kiloohm', 'kiloohms', 'kilohm', 'kilohms'] },
  Mohm: { is: 'Mohm', words: ['megaohm', 'megaohms', 'megohm', 'megohms'] }
} as const satisfies UnitTable

export const CURRENTS = {
  A: { is: 'A', words: ['amp', 'amps', 'ampere', 'amperes'] },
  mA: { is: 'mA', words: ['milliamp', 'milliamps'] },
  µA: { is: 'uA', words: ['microamp', 'microamps'] },
  kA: { is: 'kA', words: ['kiloamp', 'kiloamps'] }
} as const satisfies UnitTable

export const VOLTAGES = {
  V: { is: 'V', as: ['Vdc', 'VDC', 'V DC'], words: ['volt', 'volts'] },
  mV: { is: 'mV', words: ['millivolt', 'millivolts'] },
  µV: { is: 'uV', words: ['microvolt', 'microvolts'] },
  kV: { is: 'kV', words: ['kilovolt', 'kilovolts'] }
} as const satisfies UnitTable

// A horsepower is 550 foot-pounds a second (memory).
export const POWERS = {
  W: { is: 'W', words: ['watt', 'watts'] },
  mW: { is: 'mW', words: ['milliwatt', 'milliwatts'] },
  kW: { is: 'kW', words: ['kilowatt', 'kilowatts'] },
  hp: { is: 'foot lbf/s', times: '550', words: ['hp', 'bhp', 'horsepower'] }
} as const satisfies UnitTable

export const CAPACITIES = {
  Ah: { is: 'Ah', as: ['A·h', 'AH'], words: ['amp·hour', 'amp·hours', 'ampere·hour', 'ampere·hours'] },
  mAh: { is: 'mAh', as: ['mA·h'] }
} as const satisfies UnitTable
