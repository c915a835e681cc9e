/** The question has no answer, in words: no operating point, no drill that fits. `change` is the nearest way out. */
export class NoAnswer extends Error {
  readonly says: string
  readonly change: string

  constructor(says: string, change: string) {
    super(says)
    this.says = says
    this.change = change
  }
}
