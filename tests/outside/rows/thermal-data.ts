// Contact resistance, emissivity and materials.
import { rowsOf, type ThermalRow } from './thermal-row.ts'

const S1 = 'Incropera, Fundamentals of Heat and Mass Transfer, tables 3.1 and 3.2'
const S2 = 'Lienhard and Lienhard, A Heat Transfer Textbook, table 2.1'
const S3 = "emissivity table in a thermal-camera maker's manual"
const S4 = "emissivity table in an infrared-thermometer maker's manual"
const S5 = 'NADCA die-casting alloy data, typical as-cast, reproduced on supplier and document pages'
const S6 = 'industry presentation on magnesium castings'
const S7 = 'Callister, appendix B'
const S8 = 'materials reference site and a caster data page'
const S9 = 'materials reference site (20 C)'
const S10 = 'caster data page'
const S11 = 'materials reference site'
const S12 = 'Incropera table A.1 through example 3.9 of an open textbook companion'

export const CONTACT: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'contact resistance', unit: '1e-4 m2K/W', tolerance: '', source: S1, label: 'memory' }, [
    ['rc-Al/Al 10 um rough, air-100kPa', 'Al/Al 10 um rough, air; 100 kPa', '2.75'],
    ['rc-Al/Al 10 um rough, silicone oil-100kPa', 'Al/Al 10 um rough, silicone oil; 100 kPa', '0.525'],
    ['rc-Al/Al with silicone grease-100kPa', 'Al/Al with silicone grease; 100 kPa', '0.07'],
    ['rc-brass/brass 15 um tin solder-', 'brass/brass 15 um tin solder', '0.025..0.14'],
    ['rc-chip/Al 0.02 mm epoxy-', 'chip/Al 0.02 mm epoxy', '0.2..0.9']
  ]),
  ...rowsOf({ quantity: 'interfacial conductance', unit: 'W/m2K', tolerance: '', source: S2, label: 'memory' }, [
    ['hc-aluminium/aluminium', 'aluminium/aluminium, moderate pressure, usual finish', '2200..12000'],
    ['hc-copper/copper', 'copper/copper, moderate pressure, usual finish', '10000..25000']
  ])
]

export const EMISSIVITY: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'band emissivity', unit: '1', tolerance: '', source: S3, label: 'read-secondary' }, [
    ['em-aluminium, as-cast and blast-cleaned-70 C, 8-14 um', 'aluminium, as-cast and blast-cleaned; 70 C, 8-14 um', '0.46'],
    ['em-aluminium, as-cast and blast-cleaned-70 C, 2-5 um', 'aluminium, as-cast and blast-cleaned; 70 C, 2-5 um', '0.47']
  ]),
  ...rowsOf({ quantity: 'total emissivity', unit: '1', tolerance: '', source: S3, label: 'read-secondary' }, [
    ['em-aluminium, rough surface-20-50 C', 'aluminium, rough surface; 20-50 C', '0.06..0.07'],
    ['em-aluminium, strongly oxidised-50-500 C', 'aluminium, strongly oxidised; 50-500 C', '0.2..0.3'],
    ['em-aluminium plate as received-100 C', 'aluminium plate as received; 100 C', '0.09'],
    ['em-lacquer, matt black-100 C', 'lacquer, matt black; 100 C', '0.97'],
    ['em-lacquer, heat-resistant-100 C', 'lacquer, heat-resistant; 100 C', '0.92'],
    ['em-aluminium paint on rough surface-20 C', 'aluminium paint on rough surface; 20 C', '0.4'],
    ['em-cast iron casting-50 C', 'cast iron casting; 50 C', '0.81'],
    ['em-iron rusty red-20 C', 'iron rusty red; 20 C', '0.69'],
    ['em-brass dull tarnished-20-350 C', 'brass dull tarnished; 20-350 C', '0.22'],
    ['em-copper oxidised-50 C', 'copper oxidised; 50 C', '0.6..0.7']
  ]),
  ...rowsOf({ quantity: 'emissivity 8-14 um', unit: '1', tolerance: '', source: S4, label: 'read-secondary' }, [
    ['em2-aluminium oxidised', 'aluminium oxidised', '0.2..0.4'],
    ['em2-cast iron oxidised', 'cast iron oxidised', '0.6..0.95']
  ])
]

export const MATERIAL: readonly ThermalRow[] = [
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '', source: S5, label: 'read-secondary' }, [
    ['mat-0', 'A380 die-cast aluminium', '2710'],
    ['mat-1', '380 die-cast aluminium', '2740'],
    ['mat-13', 'zinc alloy 3', '6600']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '', source: S5, label: 'read-secondary' }, [
    ['mat-2', '380 / A380', '96.2'],
    ['mat-14', 'zinc alloy 3', '113']
  ]),
  ...rowsOf({ quantity: 'specific heat', unit: 'J/kgK', tolerance: '', source: S5, label: 'read-secondary' }, [
    ['mat-3', '380 / A380', '963'],
    ['mat-15', 'zinc alloy 3', '419']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '', source: S6, label: 'read-secondary' }, [['mat-10', 'A356-T6', '159']]),
  ...rowsOf({ quantity: 'specific gravity', unit: '1', tolerance: '', source: S6, label: 'read-secondary' }, [
    ['mat-11', 'A356-T6', '2.69']
  ]),
  ...rowsOf({ quantity: 'specific heat', unit: 'J/kgK', tolerance: '', source: S7, label: 'memory' }, [
    ['mat-12', '356.0', '963'],
    ['mat-25', 'grey iron', '544'],
    ['mat-29', 'steel 1020', '486'],
    ['mat-36', 'brass C36000', '380'],
    ['mat-41', 'copper C11000', '385']
  ]),
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '', source: S8, label: 'read-secondary' }, [
    ['mat-18', 'AZ91D magnesium', '1810']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '', source: S9, label: 'read-secondary' }, [['mat-19', 'AZ91D', '72.7']]),
  ...rowsOf({ quantity: 'specific heat', unit: 'J/kgK', tolerance: '', source: S10, label: 'read-secondary' }, [
    ['mat-20', 'AZ91D', '1050']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '', source: S11, label: 'read-secondary' }, [
    ['mat-23', 'grey iron', '46']
  ]),
  ...rowsOf({ quantity: 'density', unit: 'kg/m3', tolerance: '', source: S7, label: 'memory' }, [
    ['mat-24', 'grey iron', '7300'],
    ['mat-30', 'steel 1020', '7850'],
    ['mat-37', 'brass C36000', '8500'],
    ['mat-42', 'copper C11000', '8890']
  ]),
  ...rowsOf({ quantity: 'conductivity', unit: 'W/mK', tolerance: '', source: S7, label: 'memory' }, [
    ['mat-28', 'steel 1020', '51.9'],
    ['mat-35', 'brass C36000', '115']
  ]),
  ...rowsOf({ quantity: 'conductivity at 335 K', unit: 'W/mK', tolerance: '', source: S12, label: 'read-secondary' }, [
    ['mat-32', 'stainless 316', '14'],
    ['mat-40', 'copper', '398']
  ])
]
