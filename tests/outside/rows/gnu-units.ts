// How GNU units spells our units: the program's own words, not ours.

import type { Kind } from '../../../src/quantity/kinds.ts'

export interface GnuTable {
  readonly house: string
  readonly units: { readonly [label: string]: string }
}

const LENGTH = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'inch',
  ft: 'foot',
  µm: 'micron',
  thou: 'mil',
  yd: 'yard',
  km: 'km'
}
const AREA = { 'mm²': 'mm^2', 'cm²': 'cm^2', 'dm²': 'dm^2', 'm²': 'm^2', 'in²': 'inch^2', 'ft²': 'foot^2' }
const PRESSURE = { Pa: 'Pa', kPa: 'kPa', MPa: 'MPa', bar: 'bar', psi: 'psi' }

export const GNU: { readonly [K in Exclude<Kind, 'temperature' | 'factor' | 'count'>]: GnuTable } = {
  length: { house: 'mm', units: LENGTH },
  run: { house: 'm', units: LENGTH },
  area: { house: 'mm^2', units: AREA },
  surface: { house: 'm^2', units: AREA },
  force: {
    house: 'N',
    units: { N: 'newton', kN: 'kN', lbf: 'lbf', kgf: 'kgf', daN: 'daN', mN: 'mN', ozf: 'ounce force', kip: 'kip' }
  },
  torque: {
    house: 'N m',
    units: {
      N·m: 'N m',
      lbf·in: 'inch lbf',
      lbf·ft: 'foot lbf',
      kgf·cm: 'kgf cm',
      kgf·m: 'kgf m',
      ozf·in: 'ounce force inch',
      N·cm: 'N cm',
      N·mm: 'N mm',
      cN·m: 'cN m',
      mN·m: 'mN m',
      daN·m: 'daN m',
      kN·m: 'kN m',
      gf·cm: 'gram force cm',
      dyn·cm: 'dyne cm'
    }
  },
  stress: { house: 'MPa', units: { ...PRESSURE, GPa: 'GPa', ksi: 'ksi', 'kgf/mm²': 'kgf/mm^2' } },
  pressure: {
    house: 'Pa',
    units: { ...PRESSURE, hPa: 'hPa', mbar: 'millibar', inHg: 'inHg', mmHg: 'mmHg', inH2O: 'inH2O', atm: 'atm' }
  },
  resistance: { house: 'ohm', units: { ohm: 'ohm', mohm: 'milliohm', µohm: 'microohm', kohm: 'kiloohm', Mohm: 'megaohm' } },
  current: { house: 'A', units: { A: 'ampere', mA: 'mA', µA: 'microampere', kA: 'kA' } },
  voltage: { house: 'V', units: { V: 'volt', mV: 'mV', µV: 'microvolt', kV: 'kV' } },
  power: { house: 'W', units: { W: 'watt', mW: 'mW', kW: 'kW', hp: 'horsepower' } },
  capacity: { house: 'A hour', units: { Ah: 'A hour', mAh: 'mA hour' } },
  difference: { house: 'K', units: { K: 'K', 'Δ°F': 'degF', mK: 'mK' } },
  time: { house: 's', units: { s: 's', min: 'minute', h: 'hour', ms: 'ms', µs: 'microsecond', d: 'day' } },
  mass: { house: 'kg', units: { kg: 'kg', g: 'gram', lb: 'lb', oz: 'oz', mg: 'mg', t: 'tonne' } },
  speed: {
    house: 'm/s',
    units: { 'm/s': 'm/s', 'km/h': 'km/hour', mph: 'mile/hour', kn: 'knot', 'ft/s': 'foot/s', 'ft/min': 'foot/minute' }
  },
  'specific-heat': {
    house: 'J/kg K',
    units: { 'J/(kg·K)': 'J/kg K', 'kJ/(kg·K)': 'kJ/kg K', 'J/(g·K)': 'J/gram K', 'BTU/(lb·°F)': 'btu/lb degF' }
  },
  conductance: { house: 'W/K', units: { 'W/K': 'W/K', 'mW/K': 'mW/K', 'BTU/(h·°F)': 'btu/hour degF' } },
  film: {
    house: 'W/m^2 K',
    units: { 'W/(m²·K)': 'W/m^2 K', 'W/(cm²·K)': 'W/cm^2 K', 'BTU/(h·ft²·°F)': 'btu/hour foot^2 degF' }
  },
  angle: { house: 'degree', units: { '°': 'degree', rad: 'radian' } },
  percent: { house: 'percent', units: { '%': 'percent' } },
  coefficient: { house: 'percent/K', units: { '%/K': 'percent/K', 'ppm/K': 'ppm/K', '1/K': '1/K' } },
  turns: { house: 'turn', units: { turns: 'turn' } }
}
