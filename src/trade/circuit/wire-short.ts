import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { openingTime } from './protection-opening.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { ADIABATIC_S } from './short-heating.ts'
import { type HeatedWireGiven, overloadHeating } from './short-heating-end.ts'
import { shortTimeLimitC } from './short-heating-material.ts'

export const shortA = formula('shortA', {
  says: 'current of a short at the far end',
  symbol: 'Ik',
  equation: 'U/r',
  inputs: { busV: ['U', 0, 1000], loopOhm: ['r', 1e-6, 1e7] },
  source: SOURCES.ohm,
  of: ({ busV, loopOhm }) => busV / loopOhm
})

/** Beyond so many times its rating the current is set by the source, which nobody gave; what melts the fuse stays the same. */
const GREATEST_RATIO = 400
const ROUNDING = 1e-9

export interface WireShortGiven {
  readonly style: StyleId
  readonly ratingA: Given
  readonly faultA: Given
  readonly wire: HeatedWireGiven
  readonly insulationC: Given
  /** What the wire has from its load. */
  readonly loadedC: Given
}

/**
 * How hot a wire gets until the slow edge of its protector has opened. Up to 5 s from the rating of the insulation to its short-time
 * limit, as the standard reckons; longer than that the first 5 s so, and the whole from its warmth under load to the rating itself,
 * whichever leaves less. Null where no band is published for the style.
 */
export function wireShort({ style, ratingA, faultA, wire, insulationC, loadedC }: Plain<WireShortGiven>) {
  const currentA = Math.min(faultA, GREATEST_RATIO * ratingA)
  const opening = openingTime(styleOf(style), { currentA, ratingA })
  if (opening === null) return null
  const { shortestS, longestS, edge } = opening
  const heated = (startC: number, timeS: number, limitC: number) => ({
    limitC,
    ...overloadHeating({ wire, currentA, startC, timeS, limitC })
  })
  const brief = heated(insulationC, Math.min(ADIABATIC_S, longestS), shortTimeLimitC({ kind: 'unknown', insulationC }))
  const lasting = longestS > ADIABATIC_S * (1 + ROUNDING) ? heated(loadedC, longestS, insulationC) : brief
  const { limitC, endC, marginK } = brief.marginK < lasting.marginK ? brief : lasting
  return { shortestS, longestS, edge, limitC, endC, marginK }
}
