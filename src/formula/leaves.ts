import { NoAnswer } from './no-answer.ts'

/** Where the numbers stand in what a calculation gives: keys in order, each with a number or with more below it. */
export interface Shape {
  readonly keys: readonly string[]
  /** Null where a number stands. */
  readonly below: readonly (Shape | null)[]
}

/** The shape of a result; null for one bare number. Texts, nulls and switches have no place in it. */
export function shapeOf(results: unknown): Shape | null {
  if (typeof results === 'number') return null
  const shape = { keys: [] as string[], below: [] as (Shape | null)[] }
  for (const key in results as object) {
    const child = (results as Record<string, unknown>)[key]
    if (typeof child !== 'number' && (typeof child !== 'object' || child === null)) continue
    shape.keys.push(key)
    shape.below.push(shapeOf(child))
  }
  return shape
}

export function countOf(shape: Shape | null): number {
  return shape === null ? 1 : shape.below.reduce((sum, below) => sum + countOf(below), 0)
}

/** Reads every number of a result of this shape, in order. One that is not there, or is no number, is a fault of the calculation. */
export function numbersOf(shape: Shape | null, count: number, results: unknown): readonly number[] {
  const numbers = new Array<number>(count)
  const end = fill(numbers, 0, shape, results)
  if (end < 0) throw faultAt(faultOf(shape, results), results)
  return numbers
}

/** A number of a result, where it is one. */
export function checked(number: number, results: unknown): number {
  if (Number.isNaN(number)) throw faultAt(faultOf(shapeOf(results), results), results)
  return number
}

function faultAt(path: readonly string[], results: unknown): Error {
  const value = path.reduce<unknown>((node, key) => (node as Record<string, unknown> | null)?.[key], results)
  if (value === undefined || value === null)
    return new NoAnswer('a result there is at the numbers given is not there at an end of their bounds', 'narrower bounds')
  // NaN loses every comparison, so a NaN corner would pass unseen.
  return new Error(`a calculation gave no number for ${path.join('.')}`)
}

/** The next free place; negative where a number is missing. */
function fill(numbers: number[], at: number, shape: Shape | null, node: unknown): number {
  if (shape === null) {
    if (typeof node !== 'number' || Number.isNaN(node)) return -1
    numbers[at] = node
    return at + 1
  }
  if (typeof node !== 'object' || node === null) return shape.keys.length === 0 ? at : -1
  let next = at
  for (let i = 0; i < shape.keys.length && next >= 0; i++)
    next = fill(numbers, next, shape.below[i]!, (node as Record<string, unknown>)[shape.keys[i]!])
  return next
}

function faultOf(shape: Shape | null, node: unknown): readonly string[] {
  const held = (node ?? {}) as Record<string, unknown>
  for (const [i, key] of (shape?.keys ?? []).entries()) {
    const below = shape!.below[i]!
    if (fill([], 0, below, held[key]) < 0) return [key, ...faultOf(below, held[key])]
  }
  return []
}

/** The same result with something else in place of each number, taken in the order of `numbersOf`. */
export function withLeaves(results: unknown, next: (number: number) => unknown): unknown {
  if (typeof results === 'number') return next(results)
  if (typeof results !== 'object' || results === null) return results
  if (Array.isArray(results)) return results.map(child => withLeaves(child, next))
  const held = results as Record<string, unknown>
  const out: Record<string, unknown> = {}
  for (const key of Object.keys(held)) out[key] = withLeaves(held[key], next)
  return out
}
