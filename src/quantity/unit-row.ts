/** One unit of a kind, under the spelling it is printed with. */
export interface UnitRow {
  /** What it is, made of units whose definition is exact. */
  readonly is: string
  /** How many of these it is, as a decimal, where it is not one. */
  readonly times?: string
  /** Other symbols for it; upper and lower case matter. */
  readonly as?: readonly string[]
  /** Words for it; upper and lower case do not matter. */
  readonly words?: readonly string[]
}

export type UnitTable = { readonly [label: string]: UnitRow }
