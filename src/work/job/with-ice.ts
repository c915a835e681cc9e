import type { ColdAir } from '../../fitting/warm-fit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { type OverIce, overIce } from '../../trade/heat/dew.ts'

/** Whether there is a frost point is settled at the nominal. */
export function withIce<X, R>({ airC, altitudeM, moisture }: ColdAir, of: (x: X, ice: OverIce | null) => R): (x: X) => R {
  const ice = moisture === null ? null : boundsOf({ airC, altitudeM, moisture, surfaceC: null }, overIce)
  return x => of(x, ice)
}
