/** One number for each given of a tree, in slot order; or for each result, in the order of its leaves. */
export type Values = readonly number[]

/** The same with another number at one place. A quarter of the bookkeeping of bounds goes where the method `with` of arrays does it. */
export function withAt(values: Values, i: number, number: number): Values {
  const changed = values.slice()
  changed[i] = number
  return changed
}
