import { unitOf } from '../quantity/units.ts'
import type { Facts, ResultFacts } from './formula.ts'

/** One line of working. Plain data: the table, the page and the JSON are printed from it. */
export interface Line {
  readonly symbol: string
  readonly says: string
  readonly equation: string
  readonly putIn: string
  readonly value: number
  readonly unit: string
  readonly source: string
}

let open: Line[] | undefined

/** Runs `calculation` and hands back what it gave, with a line for every formula called, in the order they finished. */
export function withWorking<T>(calculation: () => T): { readonly value: T; readonly working: readonly Line[] } {
  const outer = open
  const working: Line[] = []
  open = working
  try {
    const value = calculation()
    if (value instanceof Promise) throw new TypeError('withWorking: an async calculation would mix its lines with others')
    return { value, working }
  } finally {
    open = outer
  }
}

/** Runs `calculation` without a trace in any working: for evaluations that nobody will read. */
export function silently<T>(calculation: () => T): T {
  const outer = open
  open = undefined
  try {
    return calculation()
  } finally {
    open = outer
  }
}

/** Called by every formula. Does nothing unless somebody asked for the working. */
export function record(facts: Facts, x: { readonly [name: string]: number }, value: number): void {
  open?.push(lineOf(facts, facts.equation, putIn(facts, x), value))
}

/** Whether anybody reads the working: what only tells of steps need not be made ready for nobody. */
export function isRecording(): boolean {
  return open !== undefined
}

/** For a step that is no equation: a table looked up, a network solved. `from` is only called when working is asked for. */
export function recordStep(facts: ResultFacts, value: number, from: () => string): void {
  open?.push(lineOf(facts, 'by table or by steps', from(), value))
}

function lineOf({ symbol, says, gives, source }: ResultFacts, equation: string, text: string, value: number): Line {
  return { symbol, says, equation, putIn: text, value, unit: unitOf(gives), source: source.id }
}

const WORD = /[A-Za-zα-ωΑ-Ω][A-Za-z0-9α-ωΑ-Ω']*/g

/** The equation with the numbers in place of the letters. */
function putIn({ equation, inputs }: Facts, x: { readonly [name: string]: number }): string {
  const numbers = new Map(Object.entries(inputs).map(([name, [symbol]]) => [symbol, x[name]]))
  return equation.replace(WORD, word => {
    const number = numbers.get(word)
    return number === undefined ? word : number < 0 ? `(${short(number)})` : short(number)
  })
}

function short(number: number): string {
  return String(Number(number.toPrecision(5)))
}
