/** What a calculation was asked: its keys in order, under each a word, a number or more of the kind. A copy: others may change the object. */
export class Asked {
  private readonly keys: string[] = []
  private readonly values: unknown[] = []

  constructor(node: object) {
    for (const key in node) {
      const value = under(node, key)
      this.keys.push(key)
      this.values.push(isBranch(value) ? new Asked(value) : value)
    }
  }

  /** Whether all of it stands in `node`, in the same order, and nothing else. */
  isSame(node: object): boolean {
    let i = 0
    for (const key in node) {
      if (this.keys[i] !== key) return false
      const [before, now] = [this.values[i++], under(node, key)]
      if (before instanceof Asked ? !(isBranch(now) && before.isSame(now)) : before !== now) return false
    }
    return i === this.keys.length
  }
}

/** What two askings that are the same have in common, and few others: the numbers of it, each times its place. */
export function sumOf(node: object): number {
  let [sum, place] = [0, 0]
  for (const key in node) {
    const value = under(node, key)
    place++
    if (typeof value === 'number') sum += place * value
    else if (isBranch(value)) sum += place * sumOf(value)
  }
  return sum
}

function under(node: object, key: string): unknown {
  return (node as Record<string, unknown>)[key]
}

function isBranch(value: unknown): value is object {
  return typeof value === 'object' && value !== null
}
