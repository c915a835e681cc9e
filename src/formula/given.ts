/** A number somebody gave, with how far off it may be. A tree of these is what a command line or a job file becomes. */
export class Given {
  readonly value: number
  readonly low: number
  readonly high: number
  /** Why it was assumed, where nobody gave it. */
  readonly assumed: string | undefined
  /** Its place: the path in the job file, or the name of the option. */
  readonly at: readonly (string | number)[]

  constructor(value: number, { low = value, high = value, assumed, at = [] }: GivenDetails = {}) {
    this.value = value
    this.low = low
    this.high = high
    this.assumed = assumed
    this.at = at
  }
}

export interface GivenDetails {
  readonly low?: number | undefined
  readonly high?: number | undefined
  readonly assumed?: string | undefined
  readonly at?: readonly (string | number)[]
}

/** The same tree with plain numbers in place of the givens: what a calculation sees. */
export type Plain<T> = T extends Given
  ? number
  : T extends string | number | boolean | null | undefined
    ? T
    : { readonly [K in keyof T]: Plain<T[K]> }

/** One given of a tree, and how to put another number in its place. */
export interface Slot {
  readonly given: Given
  readonly set: (value: number) => void
}

/**
 * Copies the tree with plain numbers (nominal, or `values` in slot order) and hands out a setter for each given.
 * A given that stands in two places is one slot: it moves as one.
 */
export function plainOf<T>(tree: T, values?: readonly number[]): { readonly plain: Plain<T>; readonly slots: readonly Slot[] } {
  const holders = new Map<Given, [holder: Record<string, unknown>, key: string][]>()
  const plain = copy(tree, holders) as Plain<T>
  const slots = [...holders].map(([given, places]) => ({
    given,
    set: (value: number) => {
      for (const [holder, key] of places) holder[key] = value
    }
  }))
  if (values !== undefined) for (const [i, { set }] of slots.entries()) set(values[i]!)
  return { plain, slots }
}

function copy(node: unknown, holders: Map<Given, [Record<string, unknown>, string][]>): unknown {
  if (typeof node !== 'object' || node === null) return node
  const out = (Array.isArray(node) ? [] : {}) as Record<string, unknown>
  for (const key of Object.keys(node)) {
    const child = (node as Record<string, unknown>)[key]
    if (!(child instanceof Given)) out[key] = copy(child, holders)
    else {
      out[key] = child.value
      const places = holders.get(child)
      if (places === undefined) holders.set(child, [[out, key]])
      else places.push([out, key])
    }
  }
  return out
}

/** The tree with the nominal in place of every given. */
export function nominalPlain<T>(tree: T): Plain<T> {
  return atNominal(tree) as Plain<T>
}

function atNominal(node: unknown): unknown {
  if (typeof node !== 'object' || node === null) return node
  if (node instanceof Given) return node.value
  if (Array.isArray(node)) return node.map(atNominal)
  const out: Record<string, unknown> = {}
  for (const key of Object.keys(node)) out[key] = atNominal((node as Record<string, unknown>)[key])
  return out
}

/** The nominal of each given in slot order, where none has bounds and none was assumed. */
export function exactValues(tree: unknown): readonly number[] | undefined {
  const found = new Set<Given>()
  return noted(tree, found) ? Array.from(found, ({ value }) => value) : undefined
}

function noted(node: unknown, found: Set<Given>): boolean {
  if (typeof node !== 'object' || node === null) return true
  if (node instanceof Given) {
    found.add(node)
    return !(node.low < node.high) && node.assumed === undefined
  }
  for (const key of Object.keys(node)) if (!noted((node as Record<string, unknown>)[key], found)) return false
  return true
}
