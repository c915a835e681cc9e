import type { ColdAir } from '../../fitting/warm-fit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { type OverIce, overIce } from '../../trade/heat/dew.ts'

/** Whether there is a frost point is settled at the nominal. */
export function withIce<X, R>({ airC, altitudeM, moisture }: ColdAir, of: (x: X, ice: OverIce | null) => R): (x: X) => R {
  const ice = moisture === null ? null : boundsOf({ airC, altitudeM, moisture, surfaceC: null }, overIce)
  return once(ice ?? NO_ICE, of, () => x => of(x, ice))
}

const NO_ICE = {}
const made = new WeakMap<object, WeakMap<object, unknown>>()

/** The same calculation under the same ice is one and the same, so that it is known again. */
function once<T>(ice: object, of: object, make: () => T): T {
  const under = made.get(ice) ?? new WeakMap<object, unknown>()
  made.set(ice, under)
  if (!under.has(of)) under.set(of, make())
  return under.get(of) as T
}
