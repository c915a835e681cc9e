import type { UnitName } from '../quantity/units.ts'
import { OutsideRange } from './outside-range.ts'
import { rangeChecks } from './range-check.ts'
import type { Source } from './source.ts'
import { record } from './working.ts'

/** The letter an input has in the equation, and the least and greatest value the formula is good for. */
export type Input = readonly [symbol: string, least: number, greatest: number]
export type Inputs = { readonly [name: string]: Input }
type Numbers<I> = { readonly [Name in keyof I]: number }
type OnlyUnitNames<I> = { readonly [Name in keyof I]: Name extends UnitName ? Input : 'the name must end in a unit of units.ts' }

/** What a result is, whether it comes from an equation or from a table. */
export interface ResultFacts {
  readonly gives: UnitName
  readonly says: string
  readonly symbol: string
  readonly source: Source
}

/** What can be read about a formula without calling it. */
export interface Facts extends ResultFacts {
  readonly equation: string
  readonly inputs: Inputs
}

/** Called like any function; carries its facts beside. */
export type Formula<G extends UnitName, I extends Inputs> = ((x: Numbers<I>) => number) & Facts & { readonly gives: G; readonly inputs: I }

type Description<I extends Inputs> = Omit<Facts, 'gives' | 'inputs'> & {
  readonly inputs: I & OnlyUnitNames<I>
  readonly of: (x: Numbers<I>) => number
}

/** One formula of the trade: its facts, its range and the function, in house units. */
export function formula<const G extends UnitName, const I extends Inputs>(gives: G, { of, ...rest }: Description<I>): Formula<G, I> {
  const facts: Facts = { gives, ...rest }
  const names = Object.keys(rest.inputs)
  const [least, greatest] = [names.map(name => rest.inputs[name]![1]), names.map(name => rest.inputs[name]![2])]
  const firstOutside = rangeChecks({ names, least, greatest })
  const call = (x: Numbers<I>): number => {
    const i = firstOutside(x)
    if (i >= 0) throw new OutsideRange(gives, names[i]!, x[names[i]!]!, least[i]!, greatest[i]!, rest.says)
    const value = of(x)
    record(facts, x, value)
    return value
  }
  return Object.assign(call, facts) as Formula<G, I>
}

/** The facts of a number that is looked up or found by steps, not by one equation. */
export function fact<const G extends UnitName>(gives: G, facts: Omit<ResultFacts, 'gives'>): ResultFacts & { readonly gives: G } {
  return { gives, ...facts }
}
