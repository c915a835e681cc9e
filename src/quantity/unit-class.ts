import { createUnitClass } from 'mathjs'
import { Exact } from './exact.ts'

// The type declarations of mathjs leave this export out.
declare module 'mathjs' {
  export function createUnitClass(parts: Record<string, unknown>): UnitClass
}

interface UnitClass {
  new (value: Exact, expression: string): { toNumeric(expression: string): Exact }
  readonly typeConverters: Record<string, (x: Exact | number) => Exact>
}

type Operand = Exact | number | string

function exact(x: Operand): Exact {
  return x instanceof Exact ? x : new Exact(Number(x))
}

/** What the unit class is made to reckon with, in place of all the number types of mathjs. */
const PARTS = {
  config: { number: 'number', predictable: true },
  addScalar: (a: Operand, b: Operand) => exact(a).plus(exact(b)),
  subtractScalar: (a: Operand, b: Operand) => exact(a).minus(exact(b)),
  multiplyScalar: (a: Operand, b: Operand) => exact(a).times(exact(b)),
  divideScalar: (a: Operand, b: Operand) => exact(a).over(exact(b)),
  pow: (a: Operand, whole: Operand) => exact(a).power(Number(whole)),
  abs: (a: Operand) => exact(a).size(),
  equal: (a: Operand, b: Operand) => exact(a).minus(exact(b)).top === 0n,
  number: Number,
  isNumeric: (x: unknown) => x instanceof Exact,
  // Asked for, but only used to print or to round, which is not done here.
  fix: Number,
  round: Number,
  format: String,
  Complex: { I: 1 },
  BigNumber: Exact,
  Fraction: Exact
}

let made: UnitClass | undefined

function unitClass(): UnitClass {
  if (made === undefined) {
    made = createUnitClass(PARTS)
    made.typeConverters[Exact.name] = exact
  }
  return made
}

/** So much of one unit, in another. The expressions are those of our own tables: text of a user never comes here. */
export function converted(value: Exact, from: string, to: string): Exact {
  const Unit = unitClass()
  return new Unit(value, from).toNumeric(to)
}
