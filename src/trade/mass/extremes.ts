import type { Given, Plain } from '../../formula/given.ts'
import { type Item, type Limits, marginsAt, together } from './mass.ts'
import * as moment from './moment.ts'

/** Something that is carried or not: fuel, a driver, a load. */
export interface Load {
  readonly leastKg: Given
  readonly greatestKg: Given
  readonly armM: Given
}

export interface Extremes {
  readonly empty: Item
  readonly loads: readonly Load[]
  readonly limits: Limits
}

/** The two loadings that bring the centre as far forward and as far to the rear as can be: every loading between lies between. */
export function extremes({ empty, loads, limits }: Plain<Extremes>) {
  const forward = drawn(empty, loads, -1)
  const rearward = drawn(empty, loads, 1)
  return {
    forward: { marginM: marginsAt(forward.centreM, limits).forwardMarginM, ...forward },
    rearward: { marginM: marginsAt(rearward.centreM, limits).rearwardMarginM, ...rearward }
  }
}

/** A load beyond the centre draws it on: from the outermost inwards each is at its greatest until one no longer does; the others are at their least. */
function drawn(empty: Plain<Item>, loads: readonly Plain<Load>[], side: 1 | -1) {
  const outermost = loads.toSorted((a, b) => side * (b.armM - a.armM))
  let most = centreOf([empty, ...outermost.map(least)])
  for (const [i, { armM }] of outermost.entries()) {
    if (side * (armM - most.centreM) <= 0) break
    most = centreOf([empty, ...outermost.map((load, k) => (k <= i ? { ...load, massKg: load.greatestKg } : least(load)))])
  }
  return most
}

function least({ leastKg, armM }: Plain<Load>): Plain<Item> {
  return { massKg: leastKg, armM }
}

function centreOf(items: readonly Plain<Item>[]) {
  const { massKg, momentKgM } = together(items)
  return { massKg, centreM: moment.centreM({ momentKgM, massKg }) }
}
