import { PURE, type Suffix, suffixOf } from './units.ts'

export interface Digits {
  /** At least so many after the point. */
  readonly decimals?: number
  /** At least so many from the first that is not nought; alone, exactly so many. */
  readonly significant?: number
  readonly side: 'nearest' | 'down' | 'up'
  /** Without the noughts at the end. */
  readonly trim?: true
}

/** How each figure is printed (common practice of the shop). Depths and stops have a side: the caller knows which one is the careful one. */
export const DIGITS = {
  plain: { decimals: 0, significant: 6, side: 'nearest', trim: true },
  length: { decimals: 2, side: 'nearest' },
  drill: { decimals: 2, side: 'nearest' },
  limit: { decimals: 3, side: 'nearest' },
  depth: { decimals: 2, side: 'nearest' },
  'depth-down': { decimals: 2, side: 'down' },
  'depth-up': { decimals: 2, side: 'up' },
  inch: { decimals: 4, side: 'nearest' },
  'inch-down': { decimals: 4, side: 'down' },
  'inch-up': { decimals: 4, side: 'up' },
  run: { decimals: 2, side: 'nearest' },
  arm: { decimals: 3, side: 'nearest' },
  'arm-change': { decimals: 3, significant: 2, side: 'nearest' },
  altitude: { decimals: 0, side: 'nearest' },
  area: { decimals: 1, significant: 3, side: 'nearest' },
  surface: { significant: 3, side: 'nearest' },
  force: { decimals: 0, significant: 3, side: 'nearest' },
  torque: { significant: 3, side: 'nearest' },
  'torque-down': { significant: 3, side: 'down' },
  'torque-up': { significant: 3, side: 'up' },
  stress: { decimals: 0, significant: 3, side: 'nearest' },
  pressure: { decimals: 0, significant: 3, side: 'nearest' },
  resistance: { significant: 3, side: 'nearest' },
  'resistance-per-length': { significant: 3, side: 'nearest' },
  current: { decimals: 2, significant: 2, side: 'nearest' },
  voltage: { decimals: 2, significant: 2, side: 'nearest' },
  bits: { decimals: 2, side: 'nearest' },
  reading: { decimals: 2, significant: 3, side: 'nearest' },
  power: { decimals: 1, significant: 2, side: 'nearest' },
  capacity: { decimals: 1, side: 'nearest' },
  temperature: { decimals: 1, side: 'nearest' },
  difference: { decimals: 1, significant: 2, side: 'nearest' },
  time: { decimals: 0, significant: 2, side: 'nearest' },
  mass: { decimals: 1, significant: 3, side: 'nearest' },
  weighed: { decimals: 2, side: 'nearest' },
  moment: { decimals: 1, significant: 3, side: 'nearest' },
  speed: { decimals: 1, significant: 2, side: 'nearest' },
  'specific-heat': { decimals: 0, significant: 3, side: 'nearest' },
  conductance: { decimals: 2, significant: 3, side: 'nearest' },
  heat: { decimals: 0, significant: 3, side: 'nearest' },
  property: { significant: 4, side: 'nearest' },
  film: { decimals: 0, significant: 3, side: 'nearest' },
  withstand: { decimals: 0, significant: 3, side: 'nearest' },
  melting: { decimals: 0, significant: 3, side: 'nearest' },
  rotation: { decimals: 0, side: 'nearest' },
  angle: { decimals: 1, side: 'nearest' },
  percent: { decimals: 1, significant: 3, side: 'nearest' },
  coefficient: { significant: 3, side: 'nearest' },
  factor: { decimals: 2, significant: 3, side: 'nearest' },
  turns: { decimals: 1, side: 'nearest' },
  'turns-down': { decimals: 1, side: 'down' },
  count: { decimals: 0, side: 'nearest' },
  ratio: { significant: 4, side: 'nearest', trim: true }
} as const satisfies { readonly [shown: string]: Digits }

export type Shown = keyof typeof DIGITS

const BY_SUFFIX: { readonly [Unit in Suffix]: Shown } = {
  M2KPerW: 'property',
  WPerMK: 'property',
  KgPerM3: 'property',
  M2PerS: 'property',
  JPerKg: 'property',
  PaS: 'property',
  WPerK: 'conductance',
  JPerK: 'heat',
  J: 'heat',
  ARootSPerMm2: 'withstand',
  A2S: 'melting',
  Rpm: 'rotation',
  OhmPerM: 'resistance-per-length',
  JPerKgK: 'specific-heat',
  WPerM2K: 'film',
  MPerS: 'speed',
  PerK: 'coefficient',
  KgM: 'moment',
  Mm2: 'area',
  Mm: 'length',
  M2: 'surface',
  Mpa: 'stress',
  Nm: 'torque',
  Ohm: 'resistance',
  Percent: 'percent',
  Deg: 'angle',
  Ah: 'capacity',
  Kg: 'mass',
  Pa: 'pressure',
  M: 'run',
  N: 'force',
  A: 'current',
  V: 'voltage',
  W: 'power',
  C: 'temperature',
  K: 'difference',
  S: 'time'
}

/** The usual row for a number of this name, read off the unit it ends in. */
export function shownFor(name: string): Shown {
  const suffix = suffixOf(name)
  if (suffix !== undefined) return BY_SUFFIX[suffix]
  const pure = PURE.find(word => name.endsWith(word) || name === word.toLowerCase())
  return pure === undefined ? 'plain' : (pure.toLowerCase() as Lowercase<typeof pure>)
}
