import type { InternalLimits } from './limits.ts'
import type { InternalClass } from './unified-class.ts'
import { limitMm } from './unified-limit.ts'
import type { LimitBase } from './unified-limits.ts'
import { internalMinorToleranceMm } from './unified-minor-tolerance.ts'
import { countText, tenThousandths, toThousandths } from './unified-rounding.ts'
import type { UnifiedThread } from './unified-series.ts'

/** What the pitch diameter tolerance of class 2A is multiplied by. */
const OF_2A = { '1B': 1.95, '2B': 1.3, '3B': 0.975 } as const

/** From number 6 up, minor diameters are printed to three decimals of an inch. */
const NUMBER_SIX_COUNT = 1380

export function holeLimits({ thread, pitchDiameterMm, minorDiameterMm, tolerance2AMm }: LimitBase, fit: InternalClass): InternalLimits {
  const pitch = tenThousandths(pitchDiameterMm)
  const pitchWidth = tenThousandths(OF_2A[fit] * tolerance2AMm)
  const minor = tenThousandths(minorDiameterMm)
  const minorWidth = tenThousandths(internalMinorToleranceMm(thread, fit))
  const rounded = minorRounding(thread, fit)
  return {
    minor: {
      minMm: limitMm(rounded.least(minor), `minor diameter, ${fit}, least`, 'K'),
      maxMm: limitMm(rounded.greatest(minor + minorWidth), `minor diameter, ${fit}, greatest`, `K + ${countText(minorWidth)}`)
    },
    pitchDiameter: {
      minMm: limitMm(pitch, `pitch diameter, ${fit}, least`, 'E'),
      maxMm: limitMm(pitch + pitchWidth, `pitch diameter, ${fit}, greatest`, `E + ${countText(pitchWidth)}`)
    },
    major: { minMm: thread.majorMm },
    source: 'asme-b1.1'
  }
}

/** Class 3B keeps four decimals in its greatest minor diameter (memory). */
function minorRounding({ majorMm }: UnifiedThread, fit: InternalClass) {
  const asItIs = (tenThousandthsCount: number) => tenThousandthsCount
  const three = tenThousandths(majorMm) >= NUMBER_SIX_COUNT
  return { least: three ? toThousandths : asItIs, greatest: three && fit !== '3B' ? toThousandths : asItIs }
}
