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
  return { shortestS, longestS, edge, ...stagedHeating({ stages: [{ currentA, timeS: longestS }], wire, insulationC, loadedC }) }
}

/** A current and how long it flows at the most, until one more protector has opened. */
export interface Stage {
  readonly currentA: number
  readonly timeS: number
}

export interface StagedGiven extends Pick<WireShortGiven, 'wire' | 'insulationC' | 'loadedC'> {
  readonly stages: readonly Stage[]
}

/** The same where several protectors feed the wire, and open one after the other. */
export function stagedHeating({ stages, wire, insulationC, loadedC }: Plain<StagedGiven>) {
  const heated = (fromC: number, some: readonly Stage[], limitC: number) => {
    const endC = hottestC({ wire, stages: some, startC: fromC, limitC })
    return { limitC, endC, marginK: limitC - endC }
  }
  const brief = heated(insulationC, within(stages, ADIABATIC_S), shortTimeLimitC({ kind: 'unknown', insulationC }))
  const wholeS = stages.reduce((sum, { timeS }) => sum + timeS, 0)
  const lasting = wholeS > ADIABATIC_S * (1 + ROUNDING) ? heated(loadedC, stages, insulationC) : brief
  return brief.marginK < lasting.marginK ? brief : lasting
}

interface HottestGiven extends Pick<StagedGiven, 'wire' | 'stages'> {
  readonly startC: number
  readonly limitC: number
}

/** Of the ends of all stages: a cooler one may follow. What is past its limit is not followed further. */
function hottestC({ wire, stages, startC, limitC }: Plain<HottestGiven>): number {
  let [nowC, mostC] = [startC, Number.NEGATIVE_INFINITY]
  for (const { currentA, timeS } of stages) {
    nowC = overloadHeating({ wire, currentA, startC: nowC, timeS, limitC }).endC
    mostC = Math.max(mostC, nowC)
    if (nowC > limitC) break
  }
  return mostC
}

function within(stages: readonly Stage[], mostS: number): readonly Stage[] {
  let leftS = mostS
  return stages.flatMap(({ currentA, timeS }) => {
    const lastsS = Math.min(leftS, timeS)
    leftS -= lastsS
    return lastsS > 0 ? [{ currentA, timeS: lastsS }] : []
  })
}
