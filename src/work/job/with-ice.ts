import type { ColdAir } from '../../fitting/warm-fit.ts'
import { nominalOf } from '../../formula/bounds.ts'
import { type OverIce, overIce } from '../../trade/heat/dew.ts'

/** Whether there is a frost point is settled at the nominal. */
export function withIce<X, R>({ airC, altitudeM, moisture }: ColdAir, of: (x: X, ice: OverIce | null) => R): (x: X) => R {
  const ice = moisture === null ? null : nominalOf({ airC, altitudeM, moisture, surfaceC: null }, overIce)
  return once(ice === null ? '' : `${ice.frostPoint} ${ice.humidity}`, of, () => x => of(x, ice))
}

const made = new WeakMap<object, Map<string, unknown>>()

/** The same calculation under the same ice is one and the same, so that it is known again. */
function once<T>(ice: string, of: object, make: () => T): T {
  const under = made.get(of) ?? new Map<string, unknown>()
  made.set(of, under)
  if (!under.has(ice)) under.set(ice, make())
  return under.get(ice) as T
}
