/** What is wrong with a piece of input, before anyone knows where it stood. */
export interface Fault {
  /** What was found, quoting the words of the user: `unknown unit "mmm"`. */
  readonly found: string
  /** What would have been right: `a length, as "6.8 mm" or "1/4 in"`. */
  readonly accepted: string
  /** The nearest known word or the corrected text, where there is one. */
  readonly near?: string
}

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault }

export function good<T>(value: T): Outcome<T> {
  return { ok: true, value }
}

export function bad(found: string, accepted: string, near?: string): { readonly ok: false; readonly fault: Fault } {
  return { ok: false, fault: near === undefined ? { found, accepted } : { found, accepted, near } }
}
