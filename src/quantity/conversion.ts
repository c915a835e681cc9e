import { Exact, NOUGHT } from './exact.ts'
import { type Kind, rowOf } from './kinds.ts'
import { converted } from './unit-class.ts'
import type { UnitRow } from './unit-row.ts'

/** House units = `times` × the number written + `plus`. */
export interface Scale {
  readonly times: Exact
  readonly plus: Exact
}

const ONE = new Exact(1n)
const SAME: Scale = { times: ONE, plus: NOUGHT }

const scales = new Map<Kind, Map<string, Scale>>()

/** The straight line from a unit to the house unit of its kind. Worked out when it is first needed, and once. */
export function scaleOf(kind: Kind, label: string): Scale {
  const ofKind = scales.get(kind) ?? new Map<string, Scale>()
  const known = ofKind.get(label)
  if (known !== undefined) return known
  const { house, units } = rowOf(kind)
  const scale = house === '' || label === house ? SAME : lineBetween(units[label]!, units[house]!)
  scales.set(kind, ofKind.set(label, scale))
  return scale
}

/** Drawn through the conversions of nought and of one: for temperatures the two scales begin apart. */
function lineBetween(from: UnitRow, to: UnitRow): Scale {
  const plus = inHouse(NOUGHT, from, to)
  return { times: inHouse(ONE, from, to).minus(plus), plus }
}

function inHouse(value: Exact, from: UnitRow, to: UnitRow): Exact {
  return converted(value.times(countOf(from)), from.is, to.is).over(countOf(to))
}

function countOf({ times }: UnitRow): Exact {
  return times === undefined ? ONE : new Exact(Number(times))
}
