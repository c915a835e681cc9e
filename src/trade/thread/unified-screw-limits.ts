import type { ExternalLimits, Span } from './limits.ts'
import type { ExternalClass } from './unified-class.ts'
import { limitMm } from './unified-limit.ts'
import type { LimitBase } from './unified-limits.ts'
import { countText, tenThousandths } from './unified-rounding.ts'
import { unifiedMajorTolerance1AMm, unifiedMajorToleranceMm } from './unified-tolerance.ts'

/** What the pitch diameter tolerance of class 2A is multiplied by. */
const OF_2A = { '1A': 1.5, '2A': 1, '3A': 0.75 } as const

/** In 0.0001 inch. By the formula it is 0.0017 inch; published tables print 0.0016 (read-secondary). */
const PRINTED_ALLOWANCES: { readonly [name: string]: number } = { '5/8-11 UNC': 16 }

export function screwLimits(base: LimitBase, fit: ExternalClass): ExternalLimits {
  const { thread, pitchDiameterMm, tolerance2AMm } = base
  const allowance = fit === '3A' ? 0 : allowanceOf(base)
  const majorWidth = tenThousandths(fit === '1A' ? unifiedMajorTolerance1AMm(thread) : unifiedMajorToleranceMm(thread))
  const pitchWidth = tenThousandths(OF_2A[fit] * tolerance2AMm)
  return {
    major: span({ basic: tenThousandths(thread.majorMm), allowance, width: majorWidth }, `major diameter, ${fit}`, 'D'),
    pitchDiameter: span({ basic: tenThousandths(pitchDiameterMm), allowance, width: pitchWidth }, `pitch diameter, ${fit}`, 'E'),
    source: 'asme-b1.1'
  }
}

/** Play that classes 1A and 2A leave below the basic profile: 0.3 of the tolerance of class 2A. */
function allowanceOf({ thread, tolerance2AMm }: LimitBase): number {
  return PRINTED_ALLOWANCES[thread.name] ?? tenThousandths(0.3 * tolerance2AMm)
}

/** From the basic size less the allowance, downward by the width of the tolerance; all in 0.0001 inch. */
function span(
  { basic, allowance, width }: { readonly basic: number; readonly allowance: number; readonly width: number },
  says: string,
  letter: string
): Span {
  const from = allowance === 0 ? letter : `${letter} - ${countText(allowance)}`
  return {
    minMm: limitMm(basic - allowance - width, `${says}, least`, `${from} - ${countText(width)}`),
    maxMm: limitMm(basic - allowance, `${says}, greatest`, from)
  }
}
