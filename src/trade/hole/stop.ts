import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { Given, type Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Values } from '../../formula/values.ts'
import * as clearance from './clearance.ts'
import { type OldHole, oldHole } from './old-hole.ts'
import { worstCases } from './worst-cases.ts'

/** The stop as a result: exact, since the user sets it. */
export const TIP_DEPTH = fact('tipDepthMm', {
  says: "stop setting: depth of the drill's tip below the face",
  symbol: 's',
  source: SOURCES.geometry
})

/** What the stop is worked out from. */
export interface Opening extends OldHole {
  readonly keepClearMm: Given
  /** How far the drill goes beyond its stop: nominally nought, with the error both ways as its bounds. */
  readonly stopErrorMm: Given
}

export interface StopSetting {
  /** One exact number, for the user to set; assumed where a default stands behind it. */
  readonly tipDepthMm: Given
  /** Which part of the drill would meet the old bottom first, with every input at its worst end. */
  readonly first: 'point' | 'rim'
  /** The inputs at that worst end, to run `stops` on for its working. */
  readonly worstAt: Values
}

/** The greatest depth of the tip that keeps clear at the point, and at the rim. */
export function stops(opening: Plain<Opening>) {
  const { oldTipMm, rimGainMm } = oldHole(opening)
  const { keepClearMm, stopErrorMm } = opening
  const pointStopMm = clearance.pointStopMm({ oldTipMm, keepClearMm, stopErrorMm })
  const rimStopMm = clearance.rimStopMm({ oldTipMm, rimGainMm, keepClearMm, stopErrorMm })
  return { pointStopMm, rimStopMm }
}

/** Point and rim are bounded apart, and the lesser taken after: which of them is nearer may change inside the bounds. */
export function stopSetting(opening: Opening): StopSetting {
  requireFits(opening)
  const { first, bounded } = worstCases(opening)
    .flatMap(held => {
      const { pointStopMm, rimStopMm } = boundsOf(held, stops)
      return [
        { first: 'point' as const, bounded: pointStopMm },
        { first: 'rim' as const, bounded: rimStopMm }
      ]
    })
    .reduce((worst, next) => (next.bounded.low < worst.bounded.low ? next : worst))
  if (!(bounded.low > 0)) throw noRoom(bounded.low)
  const tipDepthMm = new Given(bounded.low, { assumed: reasonsOf(bounded, opening), at: ['tip-depth'] })
  return { tipDepthMm, first, worstAt: bounded.lowAt }
}

function reasonsOf({ hangsOn }: Bounded, { bottom }: Opening): string | undefined {
  const shape = bottom.shape === 'flat' && bottom.assumed !== undefined ? [`bottom: ${bottom.assumed}`] : []
  const reasons = [...hangsOn.map(({ at, assumed }) => `${at.join('.')}: ${assumed}`), ...shape]
  return reasons.length === 0 ? undefined : reasons.join('; ')
}

/** A rod that cannot have gone in, or a fillet that the hole has no room for. Inside the bounds the calculation takes the one that fits. */
function requireFits({ foundDiameterMm, rodMm, bottom }: Opening): void {
  requireWithin('rodMm', rodMm, foundDiameterMm, foundDiameterMm.high)
  if (bottom.shape === 'radius') requireWithin('filletMm', bottom.filletMm, foundDiameterMm, foundDiameterMm.high / 2)
}

function requireWithin(name: string, given: Given, foundDiameterMm: Given, greatest: number): void {
  if (given.low <= greatest) return
  const error = new OutsideRange('oldTipMm', name, given.low, 0, greatest)
  error.from = [given, foundDiameterMm]
  throw error
}

function noRoom(stopMm: number): NoAnswer {
  const where = stopMm < 0 ? `${Number((-stopMm).toFixed(2))} mm above the face` : 'level with the face'
  return new NoAnswer(
    `with every input at its worst end the stop would stand ${where}: nothing can be drilled here and keep clear of the old bottom`,
    'feel the depth closer, use a stop with less error, keep less clear, or choose another place'
  )
}
