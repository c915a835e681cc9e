import { unitOf, wordsOf } from '../quantity/units.ts'
import type { Given } from './given.ts'

/** A formula was asked outside the range it is good for. Whoever knows the file or the option says where that came from. */
export class OutsideRange extends Error {
  readonly formula: string
  readonly input: string
  readonly value: number
  readonly least: number
  readonly greatest: number
  /** What the formula works out, in words. */
  readonly says: string
  /** The given numbers behind it, strongest first; filled in where they are known. */
  from: readonly Given[] = []

  constructor(formula: string, input: string, value: number, least: number, greatest: number, says = wordsOf(formula)) {
    super(`${wordsOf(input)} outside the range of ${wordsOf(formula)}`)
    this.formula = formula
    this.input = input
    this.value = value
    this.least = least
    this.greatest = greatest
    this.says = says
  }

  get found(): string {
    return `${wordsOf(this.input)} is ${withUnit(this.value, this.input)}`
  }

  get accepted(): string {
    return `${this.least} to ${withUnit(this.greatest, this.input)}, the range of: ${this.says}`
  }
}

function withUnit(value: number, name: string): string {
  if (!Number.isFinite(value)) return 'without end'
  return `${Number(value.toPrecision(4))} ${unitOf(name)}`.trim()
}
