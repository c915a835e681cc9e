import type { Given, Plain } from '../../formula/given.ts'
import * as heating from './heating.ts'

/** A block known by its heat capacity and its loss: worked out from mass and film, or fitted to a heat test. */
export interface WarmUp {
  readonly powerW: Given
  readonly capacityJPerK: Given
  readonly lossWPerK: Given
  readonly airC: Given
  readonly startC: Given
  readonly targetC: Given | null
}

export function warmUp({ powerW, capacityJPerK, lossWPerK, airC, startC, targetC }: Plain<WarmUp>) {
  const steadyC = heating.steadyC({ airC, powerW, lossWPerK })
  const timeConstantS = heating.timeConstantS({ capacityJPerK, lossWPerK })
  const holdMarginK = targetC === null ? null : heating.holdMarginK({ steadyC, targetC })
  const timeToTargetS = targetC === null ? null : timeToHoldS({ steadyC, startC, targetC, timeConstantS })
  return { steadyC, timeConstantS, holdMarginK, timeToTargetS }
}

interface Course {
  readonly steadyC: number
  readonly startC: number
  readonly targetC: number
  readonly timeConstantS: number
}

/** Until the target is reached and held. Infinite where it never is, so that bounds can reach there: printed as no answer. */
function timeToHoldS({ steadyC, startC, targetC, timeConstantS }: Course): number {
  if (steadyC <= targetC) return Number.POSITIVE_INFINITY
  if (startC >= targetC) return 0
  const startGapK = heating.gapK({ steadyC, blockC: startC })
  const targetGapK = heating.gapK({ steadyC, blockC: targetC })
  return heating.timeToTargetS({ timeConstantS, startGapK, targetGapK })
}

interface Plot {
  readonly steadyC: number
  readonly startC: number
  readonly timeConstantS: number
  readonly lastS: number
  readonly stepCount: number
}

/** Temperatures at even times, start included, for a plot. */
export function warmCurve({ steadyC, startC, timeConstantS, lastS, stepCount }: Plot) {
  return Array.from({ length: stepCount + 1 }, (_, i) => {
    const timeS = (i * lastS) / stepCount
    return { timeS, blockC: heating.blockC({ steadyC, startC, timeS, timeConstantS }) }
  })
}
