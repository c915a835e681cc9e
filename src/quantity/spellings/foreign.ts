/** Units that no quantity of ours is asked in, known only to be named in a fault. */
export const FOREIGN: { readonly [says: string]: readonly string[] } = {
  energy: ['J', 'kJ', 'MJ', 'mJ', 'joule', 'joules', 'Wh', 'W·h', 'kWh', 'mWh', 'kW·h', 'Ws', 'BTU', 'cal', 'kcal', 'erg', 'eV'],
  'apparent power': ['VA', 'kVA', 'var'],
  charge: ['As', 'A·s', 'coulomb', 'coulombs'],
  capacitance: ['µF', 'nF', 'pF', 'farad', 'farads'],
  inductance: ['H', 'mH', 'µH', 'henry'],
  frequency: ['Hz', 'kHz', 'MHz'],
  'speed of rotation': ['rpm', 'RPM', 'rev/min', 'r/min', '1/min', 'rad/s'],
  volume: ['L', 'l', 'mL', 'ml', 'litre', 'litres', 'liter', 'liters', 'cc', 'm³', 'cm³', 'mm³', 'in³', 'gal'],
  density: ['kg/m³', 'g/cm³', 'kg/L'],
  'moment of mass': ['kg·m', 'kgm', 'kg·cm', 'kgcm', 'kg·mm', 'g·cm'],
  'resistance per length': ['ohm/m', 'ohm/km', 'mohm/m'],
  conductivity: ['W/(m·K)', 'W/mK', 'W/m/K'],
  'heat flux': ['W/m²', 'W/cm²', 'W/in²'],
  'wire gauge': ['AWG', 'awg', 'ga', 'gauge', 'SWG'],
  'thread count': ['TPI', 'tpi']
}

/** What was probably meant where somebody wrote the unit of a neighbouring kind. */
export const MEANT: { readonly [kind: string]: { readonly [key: string]: string } } = {
  force: { kg: 'kgf', lb: 'lbf', lbs: 'lbf', oz: 'ozf' },
  torque: { kg·m: 'kgf·m', kgm: 'kgf·m', kg·cm: 'kgf·cm', kgcm: 'kgf·cm', g·cm: 'gf·cm' },
  difference: { '°C': 'K', C: 'K', degC: 'K', '°F': 'Δ°F', F: 'Δ°F', degF: 'Δ°F' },
  mass: { lbf: 'lb', kgf: 'kg', ozf: 'oz' }
}
