import type { Given } from './given.ts'
import { type Values, withAt } from './values.ts'

export interface Loose {
  readonly given: Given
  /** Its place in the values. */
  readonly i: number
}

/** How far inside an end to look, as a share of the bounds. */
const INSIDE = 1e-3
const ROUNDS = 5

/**
 * Looks from a corner along each input: just inside both ends, at the nominal, at the far end.
 * While some such point is worth more than the corner, goes to the top along that input and says that it turned.
 */
export function climb(corner: Values, loose: readonly Loose[], worth: (values: Values) => number) {
  let values = corner
  let best = worth(corner)
  const turned = new Set<Given>()
  for (let round = 0, moved = true; moved && round < ROUNDS; round++) {
    moved = false
    for (const { given, i } of loose) {
      const along = (x: number) => worth(withAt(values, i, x))
      const top = topAlong(given, along, best)
      if (top === undefined) continue
      values = withAt(values, i, top)
      best = worth(values)
      turned.add(given)
      moved = true
    }
  }
  return { values, best, turned: [...turned] }
}

/** Where along one input to look for something worth more than where it stands: both ends, just inside them, the nominal. */
function placesAlong({ low, high, value }: Given): readonly number[] {
  const step = INSIDE * (high - low)
  return [low, low + step, value, high - step, high]
}

/** The same seen from one end: just inside it, the nominal, the far end. */
export function placesFrom(end: number, { low, high, value }: Given): readonly [inside: number, nominal: number, far: number] {
  const step = INSIDE * (high - low)
  return end === low ? [low + step, value, high] : [high - step, value, low]
}

/** Whether a place is worth more than the best one, beyond rounding. */
export function isMore(worth: number, best: number): boolean {
  return worth > best + noise(best)
}

/** Where along one input something worth more than `best` stands, if anywhere that is looked at. */
function topAlong(given: Given, along: (x: number) => number, best: number): number | undefined {
  const tries = placesAlong(given).map(x => ({ x, worth: along(x) }))
  if (!tries.some(({ worth }) => isMore(worth, best))) return undefined
  const top = hump(along, given.low, given.high)
  return [...tries, { x: top, worth: along(top) }].reduce((a, b) => (b.worth > a.worth ? b : a)).x
}

/** A move smaller than this is rounding, not a move. */
export function noise(value: number): number {
  return Number.isFinite(value) ? 1e-12 * Math.abs(value) : 0
}

/** Top of a curve with one hump, by golden section. */
function hump(along: (x: number) => number, least: number, greatest: number): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let [low, high] = [least, greatest]
  for (let step = 0; step < 40; step++) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)]
    if (along(left) > along(right)) high = right
    else low = left
  }
  return (low + high) / 2
}
