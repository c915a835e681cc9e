import { AREAS } from './spellings/area.ts'
import { CAPACITIES, CURRENTS, POWERS, RESISTANCES, VOLTAGES } from './spellings/electric.ts'
import { FORCES } from './spellings/force.ts'
import { CONDUCTANCES, FILMS, SPECIFIC_HEATS } from './spellings/heat.ts'
import { LENGTHS } from './spellings/length.ts'
import { MASSES } from './spellings/mass.ts'
import { PRESSURES, STRESSES } from './spellings/pressure.ts'
import { ANGLES, COEFFICIENTS, PERCENTS, TURNS } from './spellings/share.ts'
import { DIFFERENCES, TEMPERATURES } from './spellings/temperature.ts'
import { SPEEDS, TIMES } from './spellings/time.ts'
import { TORQUES } from './spellings/torque.ts'
import type { UnitTable } from './unit-row.ts'
import { type PURE, SUFFIXES, type Suffix } from './units.ts'

export interface KindRow {
  /** What a person calls it. */
  readonly says: string
  /** How a name ends that holds it. */
  readonly suffix: Suffix | (typeof PURE)[number]
  /** The house unit, as JSON spells it. */
  readonly house: string
  readonly example: string
  readonly units: UnitTable
  /** A pure number: it may stand without a unit. */
  readonly pure?: true
  readonly whole?: true
  /** There is no less of it, whatever field it stands in. */
  readonly least?: 0
  /** The kind its tolerances are of, where that is another one. */
  readonly tolerance?: 'difference'
}

/** Every kind of quantity that can be asked for. */
export const KINDS = {
  length: { says: 'length', suffix: 'Mm', house: SUFFIXES.Mm, example: '6.8 mm', units: LENGTHS },
  run: { says: 'length', suffix: 'M', house: SUFFIXES.M, example: '5.5 m', units: LENGTHS },
  area: { says: 'area', suffix: 'Mm2', house: SUFFIXES.Mm2, example: '0.75 mm2', units: AREAS, least: 0 },
  surface: { says: 'area', suffix: 'M2', house: SUFFIXES.M2, example: '0.042 m2', units: AREAS, least: 0 },
  force: { says: 'force', suffix: 'N', house: SUFFIXES.N, example: '4500 N', units: FORCES, least: 0 },
  torque: { says: 'torque', suffix: 'Nm', house: SUFFIXES.Nm, example: '17.5 N·m', units: TORQUES },
  pressure: { says: 'pressure', suffix: 'Pa', house: SUFFIXES.Pa, example: '1013 hPa', units: PRESSURES },
  stress: { says: 'stress', suffix: 'Mpa', house: SUFFIXES.Mpa, example: '250 MPa', units: STRESSES, least: 0 },
  resistance: { says: 'resistance', suffix: 'Ohm', house: SUFFIXES.Ohm, example: '3.3 mohm', units: RESISTANCES, least: 0 },
  current: { says: 'current', suffix: 'A', house: SUFFIXES.A, example: '7.5 A', units: CURRENTS },
  voltage: { says: 'voltage', suffix: 'V', house: SUFFIXES.V, example: '27.6 V', units: VOLTAGES },
  power: { says: 'power', suffix: 'W', house: SUFFIXES.W, example: '45 W', units: POWERS, least: 0 },
  capacity: { says: 'capacity', suffix: 'Ah', house: SUFFIXES.Ah, example: '100 Ah', units: CAPACITIES, least: 0 },
  temperature: { says: 'temperature', suffix: 'C', house: SUFFIXES.C, example: '-5 °C', units: TEMPERATURES, tolerance: 'difference' },
  difference: { says: 'temperature difference', suffix: 'K', house: SUFFIXES.K, example: '3 K', units: DIFFERENCES },
  time: { says: 'time', suffix: 'S', house: SUFFIXES.S, example: '12 min', units: TIMES, least: 0 },
  mass: { says: 'mass', suffix: 'Kg', house: SUFFIXES.Kg, example: '38 g', units: MASSES },
  speed: { says: 'speed', suffix: 'MPerS', house: SUFFIXES.MPerS, example: '3 m/s', units: SPEEDS, least: 0 },
  'specific-heat': {
    says: 'specific heat',
    suffix: 'JPerKgK',
    house: SUFFIXES.JPerKgK,
    example: '900 J/kgK',
    units: SPECIFIC_HEATS,
    least: 0
  },
  conductance: { says: 'heat conductance', suffix: 'WPerK', house: SUFFIXES.WPerK, example: '0.8 W/K', units: CONDUCTANCES, least: 0 },
  film: { says: 'film coefficient', suffix: 'WPerM2K', house: SUFFIXES.WPerM2K, example: '20 W/m2K', units: FILMS, least: 0 },
  angle: { says: 'angle', suffix: 'Deg', house: SUFFIXES.Deg, example: '118°', units: ANGLES },
  percent: { says: 'percentage', suffix: 'Percent', house: SUFFIXES.Percent, example: '85 %', units: PERCENTS },
  coefficient: { says: 'temperature coefficient', suffix: 'PerK', house: SUFFIXES.PerK, example: '0.4 %/K', units: COEFFICIENTS },
  factor: { says: 'pure number', suffix: 'Factor', house: '', example: '0.14', units: {}, pure: true },
  turns: { says: 'number of turns', suffix: 'Turns', house: '', example: '7.5', units: TURNS, pure: true },
  count: { says: 'whole number', suffix: 'Count', house: '', example: '2', units: {}, pure: true, whole: true, least: 0 }
} as const satisfies { readonly [kind: string]: KindRow }

export type Kind = keyof typeof KINDS

/** A unit of a kind, as it is printed. */
export type Label<K extends Kind> = keyof (typeof KINDS)[K]['units'] & string

export const KIND_NAMES = Object.keys(KINDS) as readonly Kind[]

export function rowOf(kind: Kind): KindRow {
  return KINDS[kind]
}
