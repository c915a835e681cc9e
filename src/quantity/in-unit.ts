import { type Scale, scaleOf } from './conversion.ts'
import { Exact } from './exact.ts'
import type { Kind, Label } from './kinds.ts'
import { QuickRatio } from './quick-ratio.ts'

/** Tells a number in the house unit of its kind in another unit of that kind. */
type Teller = (value: number) => number

/** A number in the house unit of its kind, told in another unit of that kind. */
export function inUnit<K extends Kind>(kind: K, label: Label<K>, value: number): number {
  return tellerOf(kind, label)(value)
}

const tellers = new Map<Kind, Map<string, Teller>>()

/** For one unit that is told again and again. */
export function tellerOf<K extends Kind>(kind: K, label: Label<K>): Teller {
  const ofKind = tellers.get(kind) ?? new Map<string, Teller>()
  const known = ofKind.get(label)
  if (known !== undefined) return known
  const teller = tellerTo(scaleOf(kind, label))
  tellers.set(kind, ofKind.set(label, teller))
  return teller
}

function tellerTo({ times, plus }: Scale): Teller {
  const long: Teller = value => Number(new Exact(value).minus(plus).over(times))
  if (plus.top !== 0n) return long
  const quick = new QuickRatio(new Exact(1n).over(times))
  return value => quick.times(String(value)) ?? long(value)
}
