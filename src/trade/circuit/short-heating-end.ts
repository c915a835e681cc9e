import type { Given, Plain } from '../../formula/given.ts'
import { riseK } from './ampacity-ambient.ts'
import * as balance from './heat-balance.ts'
import * as adiabatic from './short-heating.ts'
import { WIRE_MATERIALS } from './short-heating-material.ts'

/** A copper wire, with the continuous current that holds for how and where it lies. */
export interface HeatedWireGiven {
  readonly areaMm2: Given
  /** At 20 °C. */
  readonly resistanceOhmPerM: Given
  readonly ampacityA: Given
  /** Temperature of the conductor at that current: what its insulation is rated for. */
  readonly ratedC: Given
  /** Surroundings for which that current holds. */
  readonly ambientC: Given
}

export interface OverloadGiven {
  readonly wire: HeatedWireGiven
  readonly currentA: Given
  readonly startC: Given
  /** Infinite where the current is never cleared. */
  readonly timeS: Given
  readonly limitC: Given
}

/**
 * How hot a wire gets until the current is cleared. Up to 5 s all heat stays in the copper; beyond that, one lump with its losses,
 * for which there is no published source; a current that is never cleared is judged where it settles.
 */
export function overloadHeating({ wire, currentA, startC, timeS, limitC }: Plain<OverloadGiven>) {
  const method = timeS <= adiabatic.ADIABATIC_S ? 'all heat kept' : Number.isFinite(timeS) ? 'heat balance' : 'settled'
  const endC = { 'all heat kept': keptC, 'heat balance': warmedC, settled: settledC }[method]({ wire, currentA, startC, timeS })
  return { endC, marginK: limitC - endC, method }
}

/** From here on a wire finds no steady temperature. */
const RUNAWAY = balance.wireSteadyC.inputs.heatingRatio[2]

type Heating = Omit<Plain<OverloadGiven>, 'limitC'>

function keptC({ wire: { areaMm2 }, currentA, startC, timeS }: Heating): number {
  const { materialARootSPerMm2, zeroC, meltC } = WIRE_MATERIALS.copper
  return adiabatic.adiabaticEndC({ currentA, timeS, areaMm2, startC, materialARootSPerMm2, zeroC, meltC })
}

function warmedC({ wire, currentA, startC, timeS }: Heating): number {
  const { heatingRatio, wireTimeConstantS } = balanceOf(wire, currentA)
  return balance.warmedC({ startC, ambientC: wire.ambientC, heatingRatio, timeS, wireTimeConstantS })
}

function settledC({ wire, currentA }: Heating): number {
  const { heatingRatio } = balanceOf(wire, currentA)
  if (heatingRatio >= RUNAWAY) return WIRE_MATERIALS.copper.meltC
  return Math.min(WIRE_MATERIALS.copper.meltC, balance.wireSteadyC({ ambientC: wire.ambientC, heatingRatio }))
}

function balanceOf({ areaMm2, resistanceOhmPerM, ampacityA, ratedC, ambientC }: Plain<HeatedWireGiven>, currentA: number) {
  const rise = riseK({ insulationC: ratedC, ambientC })
  return {
    heatingRatio: balance.heatingRatio({ currentA, ampacityA, riseK: rise, ratedC }),
    wireTimeConstantS: balance.wireTimeConstantS({ areaMm2, riseK: rise, ampacityA, resistanceOhmPerM, ratedC })
  }
}

/** Time in which a current brings the wire to a temperature; infinite where it settles below it. For the line of the wire beside the band of its protector. */
export function wireTimeS({ wire, currentA, startC, limitC }: Omit<Plain<OverloadGiven>, 'timeS'>): number {
  const { heatingRatio, wireTimeConstantS } = balanceOf(wire, currentA)
  if (limitC <= startC) return 0
  if (heatingRatio < RUNAWAY && balance.wireSteadyC({ ambientC: wire.ambientC, heatingRatio }) <= limitC) return Number.POSITIVE_INFINITY
  return balance.reachedS({ limitC, startC, ambientC: wire.ambientC, heatingRatio, wireTimeConstantS })
}
