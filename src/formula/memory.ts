import { Given } from './given.ts'

type Known = WeakMap<object, Map<string, unknown>>

let known: Known | undefined

/** So many trees of one calculation are kept; beyond it all of them are let go. */
const MOST = 100

/**
 * Runs `work`; what is bounded in it a second time, by the same calculation from the same numbers, is not worked out
 * again. Like working, this is asked for around the whole, and it never changes a number.
 */
export function remembering<T>(work: () => T): T {
  const outer = known
  known = outer ?? new WeakMap()
  try {
    return work()
  } finally {
    known = outer
  }
}

/** What `work` gives, or gave before for the same calculation and tree and as many draws. */
export function recalled<R>({ tree, calculation, draws }: Question, work: () => R): R {
  if (known === undefined) return work()
  const trees = known.get(calculation) ?? new Map<string, unknown>()
  known.set(calculation, trees)
  const mark = `${draws} ${markOf(tree, new Map())}`
  if (trees.has(mark)) return trees.get(mark) as R
  const found = work()
  if (trees.size >= MOST) trees.clear()
  trees.set(mark, found)
  return found
}

interface Question {
  readonly tree: unknown
  readonly calculation: object
  readonly draws: number
}

/** Two trees with one mark give the same: the same numbers, bounds, reasons and places, and the same number in the same two places. */
function markOf(node: unknown, seen: Map<Given, number>): string {
  if (node instanceof Given) return givenMark(node, seen)
  if (typeof node !== 'object' || node === null) return typeof node === 'string' ? JSON.stringify(node) : String(node)
  return `{${Object.entries(node)
    .map(([key, child]) => `${key}:${markOf(child, seen)}`)
    .join()}}`
}

function givenMark(given: Given, seen: Map<Given, number>): string {
  const before = seen.get(given)
  if (before !== undefined) return `#${before}`
  seen.set(given, seen.size)
  const { value, low, high, assumed, at } = given
  return `(${value} ${low} ${high} ${JSON.stringify([assumed, at])})`
}
