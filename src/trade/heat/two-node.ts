import { fact } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { type CastingLoss, outOf } from './casting-loss.ts'
import * as conduction from './conduction.ts'
import { type Coupled, coupledAt, type Settled } from './coupled.ts'
import * as heating from './heating.ts'
import { crossing } from './settle.ts'

/** A heated part screwed into a casting. Both start at one temperature; the part gives its heat to the casting alone. */
export interface TwoNode {
  readonly powerW: Given
  readonly body: { readonly massKg: Given; readonly heatJPerKgK: Given }
  readonly casting: { readonly massKg: Given; readonly heatJPerKgK: Given }
  readonly joint: { readonly contactMm2: Given; readonly contactM2KPerW: Given }
  readonly loss: CastingLoss
  readonly startC: Given
  readonly targetC: Given | null
}

/** Film and radiation are taken at the casting's steady temperature: `coupledCurve` lets them vary. */
export function twoNode(x: Plain<TwoNode>) {
  const { filmWPerM2K, radiationWPerM2K, pair } = pairOf(x)
  const settled = settledPair(pair)
  return {
    bodyC: settled.bodyC,
    castingC: settled.castingC,
    fastS: settled.fastS,
    slowS: settled.slowS,
    holdMarginK: x.targetC === null ? null : heating.holdMarginK({ steadyC: settled.castingC, targetC: x.targetC }),
    timeToTargetS: x.targetC === null ? null : castingTimeS(pair, settled, x.targetC),
    filmWPerM2K,
    radiationWPerM2K
  }
}

/** The constants of the pair, with the films that it was worked out with. */
export function pairOf({ powerW, body, casting, joint, loss, startC }: Plain<TwoNode>) {
  const { filmWPerM2K, radiationWPerM2K, outWPerK, outC } = outOf(loss, powerW)
  const pair: Coupled = {
    powerW,
    bodyJPerK: heating.capacityJPerK(body),
    castingJPerK: heating.capacityJPerK(casting),
    jointWPerK: conduction.jointWPerK(joint),
    outWPerK,
    outC,
    startC
  }
  return { filmWPerM2K, radiationWPerM2K, pair }
}

export function settledPair({ powerW, bodyJPerK, castingJPerK, jointWPerK, outWPerK, outC }: Coupled): Settled {
  const castingC = conduction.castingC({ outC, powerW, outWPerK })
  const bodyC = conduction.bodyC({ castingC, powerW, jointWPerK })
  const fastS = conduction.fastS({ bodyJPerK, castingJPerK, jointWPerK, outWPerK })
  const slowS = conduction.slowS({ bodyJPerK, castingJPerK, jointWPerK, outWPerK, fastS })
  return { bodyC, castingC, fastS, slowS }
}

const timeToTargetS = fact('timeToTargetS', {
  says: 'time until the casting reaches the target',
  symbol: 't',
  source: SOURCES['heat-balance']
})

/** Infinite where the casting never reaches the target or does not hold it, so that bounds can reach there: printed as no answer. */
function castingTimeS(pair: Coupled, settled: Settled, targetC: number): number {
  if (settled.castingC <= targetC) return Number.POSITIVE_INFINITY
  if (pair.startC >= targetC) return 0
  const missingK = (timeS: number) => coupledAt(pair, settled, timeS).castingC - targetC
  let latestS = settled.slowS
  while (missingK(latestS) < 0) latestS *= 2
  // From below the target to above it the sum of two exponentials passes once.
  const timeS = crossing(missingK, 0, latestS)
  const how = () => `two exponentials, ${settled.fastS.toPrecision(4)} and ${settled.slowS.toPrecision(4)} s, by false position`
  recordStep(timeToTargetS, timeS, how)
  return timeS
}
