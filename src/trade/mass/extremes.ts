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

/**
 * The two loadings that try the limits hardest: all loads before the forward limit at their greatest and the others at their least,
 * and the same behind the rearward limit. If these two keep their limits, every loading between does.
 */
export function extremes({ empty, loads, limits }: Plain<Extremes>) {
  const forward = loaded(empty, loads, ({ armM }) => armM < limits.forwardM)
  const rearward = loaded(empty, loads, ({ armM }) => armM > limits.rearwardM)
  return {
    forward: { marginM: marginsAt(forward.centreM, limits).forwardMarginM, ...forward },
    rearward: { marginM: marginsAt(rearward.centreM, limits).rearwardMarginM, ...rearward }
  }
}

function loaded(empty: Plain<Item>, loads: readonly Plain<Load>[], full: (load: Plain<Load>) => boolean) {
  const { massKg, momentKgM } = together([
    empty,
    ...loads.map(load => ({ massKg: full(load) ? load.greatestKg : load.leastKg, armM: load.armM }))
  ])
  return { massKg, centreM: moment.centreM({ momentKgM, massKg }) }
}
