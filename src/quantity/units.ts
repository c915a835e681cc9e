/** Every unit a number may be in, by the suffix of its name: as JSON spells it. A longer suffix stands before the shorter one it ends in. */
export const SUFFIXES = {
  OhmPerM: 'ohm/m',
  JPerKgK: 'J/(kg·K)',
  WPerM2K: 'W/(m²·K)',
  M2KPerW: 'm²·K/W',
  WPerMK: 'W/(m·K)',
  KgPerM3: 'kg/m³',
  M2PerS: 'm²/s',
  JPerKg: 'J/kg',
  WPerK: 'W/K',
  JPerK: 'J/K',
  ARootSPerMm2: 'A·√s/mm²',
  MPerS: 'm/s',
  PerK: '%/K',
  A2S: 'A²·s',
  Rpm: 'rpm',
  KgM: 'kg·m',
  Mm2: 'mm²',
  Mm: 'mm',
  M2: 'm²',
  Mpa: 'MPa',
  Nm: 'N·m',
  Ohm: 'ohm',
  Percent: '%',
  Deg: '°',
  Ah: 'Ah',
  Kg: 'kg',
  PaS: 'Pa·s',
  Pa: 'Pa',
  M: 'm',
  N: 'N',
  A: 'A',
  V: 'V',
  W: 'W',
  J: 'J',
  C: '°C',
  K: 'K',
  S: 's'
} as const

/** Numbers that have no unit, by the last word of their name. */
export const PURE = ['Factor', 'Turns', 'Count', 'Ratio'] as const

export type Suffix = keyof typeof SUFFIXES
type Pure = (typeof PURE)[number]
/** A name that says its unit. Anything else is refused by the compiler where a formula is described. */
export type UnitName = `${string}${Suffix | Pure}` | Uncapitalize<Pure>

const ENDINGS = Object.keys(SUFFIXES) as Suffix[]

const known = new Map<string, Suffix | undefined>()

/** Asked of the same few names again and again. */
export function suffixOf(name: string): Suffix | undefined {
  if (known.has(name)) return known.get(name)
  const suffix = ENDINGS.find(ending => name.endsWith(ending))
  known.set(name, suffix)
  return suffix
}

/** The unit that a name says, as JSON spells it; empty for a pure number. */
export function unitOf(name: string): string {
  const suffix = suffixOf(name)
  return suffix === undefined ? '' : SUFFIXES[suffix]
}

/** `threadLengthMm` → `thread length`. */
export function wordsOf(name: string): string {
  const suffix = suffixOf(name) ?? ''
  return name
    .slice(0, name.length - suffix.length)
    .replace(/[A-Z0-9]+/g, part => ` ${part.toLowerCase()}`)
    .trim()
}

/** Exact by definition (memory). */
export const MM_PER_IN = 25.4
