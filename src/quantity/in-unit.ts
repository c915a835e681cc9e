import { scaleOf } from './conversion.ts'
import { Exact } from './exact.ts'
import type { Kind, Label } from './kinds.ts'

/** A number in the house unit of its kind, told in another unit of that kind. */
export function inUnit<K extends Kind>(kind: K, label: Label<K>, value: number): number {
  const { times, plus } = scaleOf(kind, label)
  return Number(new Exact(value).minus(plus).over(times))
}
