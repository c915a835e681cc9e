import { findUnit } from './find-unit.ts'
import type { Kind } from './kinds.ts'
import type { Term } from './scan.ts'

/** One unit at the end serves the numbers before it: `+0.1 -0.2 mm`. A percentage serves other tolerances, but not the number it is a percentage of. */
export function fillUnits(kind: Kind, terms: readonly Term[]): readonly Term[] {
  const filled: Term[] = []
  let unit = ''
  for (const term of [...terms].reverse()) {
    const serves = term.joint !== '' || kind === 'percent' || !isPercent(unit)
    filled.unshift(term.unit === '' && serves ? { ...term, unit } : term)
    unit = filled[0]!.unit
  }
  return filled
}

export function isPercent(unit: string): boolean {
  return unit !== '' && findUnit('percent', unit) !== undefined
}
