import { scaleOf } from './conversion.ts'
import { Exact } from './exact.ts'
import type { Kind, Label } from './kinds.ts'
import { quickProduct } from './quick-product.ts'

/** A number in the house unit of its kind, told in another unit of that kind. */
export function inUnit<K extends Kind>(kind: K, label: Label<K>, value: number): number {
  const { times, plus } = scaleOf(kind, label)
  const quick = plus.top === 0n ? quickProduct(String(value), inverseOf(times)) : undefined
  return quick ?? Number(new Exact(value).minus(plus).over(times))
}

const inverses = new WeakMap<Exact, Exact>()

/** Of each scale once. */
function inverseOf(ratio: Exact): Exact {
  const inverse = inverses.get(ratio) ?? new Exact(1n).over(ratio)
  inverses.set(ratio, inverse)
  return inverse
}
