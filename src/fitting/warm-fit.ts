import type { Given, Plain } from '../formula/given.ts'
import { type Around, asPair, type Block, type Loss, warmBlock } from '../trade/heat/block.ts'
import { jointWPerK } from '../trade/heat/conduction.ts'
import { airAtPartC, type Cooling } from '../trade/heat/cooling.ts'
import { coupledAt } from '../trade/heat/coupled.ts'
import { type Dew, dew, type OverIce } from '../trade/heat/dew.ts'
import { allW } from '../trade/heat/heated-parts.ts'
import * as heating from '../trade/heat/heating.ts'
import { heldBy, type Thermostat } from '../trade/heat/held-by.ts'
import { surfaceMarginK } from '../trade/heat/moist-air.ts'
import { type PowerWindow, powerWindow } from '../trade/heat/power-window.ts'
import type { Target } from '../trade/heat/read-target.ts'
import { steppedToTargetS } from '../trade/heat/stepped-time.ts'
import { pairOf, settledPair, twoNode } from '../trade/heat/two-node.ts'
import type { Follows } from './circuit.ts'

/** The coldest air, and what it becomes on its way to the part. */
export interface ColdAir {
  readonly airC: Given
  readonly altitudeM: Given
  readonly moisture: Dew['moisture'] | null
  readonly cooling: Cooling
}

/** A casting warmed in cold air. */
export interface WarmFit {
  readonly heatersW: readonly Given[]
  readonly air: ColdAir
  readonly block: Block
  readonly startC: Given
  readonly target: Target | null
  readonly thermostat: Thermostat | null
}

/** `ice` is settled once, so that bounds that cross 0 °C do not make a frost point come and go. */
export function warmFit({ heatersW, air, block, startC, target, thermostat }: Plain<WarmFit>, ice: OverIce | null) {
  const around = coldAround(air)
  const pointC = pointOf(air, ice)
  const targetC = targetOf(target, pointC)
  const warmed = warmBlock(block, { heatersW, startC, targetC, ...around })
  return {
    powerW: allW(heatersW),
    targetC,
    airAtPartC: around.airC,
    dewMarginK: pointC === null ? null : surfaceMarginK({ surfaceC: warmed.steadyC, pointC }),
    startMarginK: pointC === null ? null : surfaceMarginK({ surfaceC: startC, pointC }),
    held: thermostat === null ? null : heldBy(thermostat, { targetC, pointC }),
    ...warmed
  }
}

/** The same with the temperature of the casting at any time: by two exponentials where the heated part is told apart, else by one. */
export function warmingOf(fit: Plain<WarmFit>, ice: OverIce | null) {
  const warmed = warmFit(fit, ice)
  const { block, startC, air, heatersW } = fit
  const { steadyC, timeConstantS, targetC } = warmed
  const pair = asPair(block, { heatersW, startC, targetC, ...coldAround(air) })
  if (pair === null) return { ...warmed, castingAtC: (timeS: number) => heating.blockC({ steadyC, startC, timeS, timeConstantS }) }
  const coupled = pairOf(pair).pair
  const settled = settledPair(coupled)
  return { ...warmed, castingAtC: (timeS: number) => coupledAt(coupled, settled, timeS).castingC }
}

/** A second opinion on the time, with film and radiation as they change on the way. Null but for a heated part told apart. */
export function steppedFit({ heatersW, air, block, startC, target }: Plain<WarmFit>, ice: OverIce | null): number | null {
  const course = { heatersW, startC, targetC: targetOf(target, pointOf(air, ice)), ...coldAround(air) }
  const pair = asPair(block, course)
  return pair === null ? null : steppedToTargetS(pair, twoNode(pair).timeToTargetS ?? 0)
}

/** The air as it comes to the casting. */
export function coldAround({ airC, altitudeM, cooling }: Plain<ColdAir>): Around {
  return { airC: airAtPartC(airC, cooling), machineC: airC, altitudeM }
}

/** The higher of dew and frost point: what evaporates on the way is no water. */
function pointOf({ airC, altitudeM, moisture }: Plain<ColdAir>, ice: OverIce | null): number | null {
  return moisture === null || ice === null ? null : dew({ airC, moisture, altitudeM, surfaceC: null }, ice).pointC
}

function targetOf(target: Plain<Target> | null, pointC: number | null): number | null {
  if (target === null) return null
  if (target.by === 'temperature') return target.targetC
  return pointC === null ? null : heating.targetC({ pointC, aboveK: target.aboveK })
}

/** The same casting in the hottest air, which stands. */
export interface HotFit {
  readonly heatersW: readonly Given[]
  readonly hotC: Given
  readonly altitudeM: Given
  readonly block: Block
}

export function hotFit({ heatersW, hotC, altitudeM, block }: Plain<HotFit>) {
  const course = { airC: hotC, machineC: hotC, altitudeM, startC: hotC, targetC: null }
  const { steadyC, bodiesC, partC, filmWPerM2K } = warmBlock(block, { heatersW, ...course })
  return { powerW: allW(heatersW), steadyC, bodiesC, partC, filmWPerM2K }
}

/** What a heater of fixed resistance must give in the cold at low bus, and may give in the heat at high bus. */
export interface WindowFit {
  readonly air: ColdAir
  readonly target: Target
  readonly moving: Loss
  readonly hotC: Given
  readonly limitC: Given
  readonly still: Loss
  readonly ratedV: Given
  /** What a heater gives of its rating, by its tolerance: both ends are met by one that is bought. */
  readonly ratingRatios: PowerWindow['ratingRatios']
  readonly lowV: Given
  readonly highV: Given
  readonly follows: Follows | null
  /** The heated part, where it is told apart. */
  readonly body: Block['body']
  /** What the strongest heater gives of what all give. */
  readonly strongest: number
}

export function windowFit(
  { air, target, moving, hotC, limitC, still, ratedV, ratingRatios, lowV, highV, follows, body, strongest }: Plain<WindowFit>,
  ice: OverIce | null
) {
  const around = coldAround(air)
  const targetC = targetOf(target, pointOf(air, ice))
  if (targetC === null) throw new Error('a window without a target came to be worked out')
  return powerWindow({
    cold: { targetC, around, loss: moving, busV: lowV },
    hot: { limitC, around: { airC: hotC, machineC: hotC, altitudeM: air.altitudeM }, loss: still, busV: highV },
    ratedV,
    ratingRatios,
    follows,
    jointKPerW: body === null ? 0 : strongest / jointWPerK(body)
  })
}
