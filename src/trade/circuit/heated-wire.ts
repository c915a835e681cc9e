import type { Plain } from '../../formula/given.ts'
import type { Ampacity } from './ampacity.ts'
import type { Conductor } from './conductor.ts'
import type { HeatedWireGiven } from './short-heating-end.ts'
import { conductorMm2, conductorOhmPerM } from './wire-resistance.ts'

export interface Heated {
  readonly conductor: Conductor
  readonly current: Ampacity
  readonly insulationC: number
  readonly ambientC: number
}

/** A wire as the heating of it is worked out: its copper, and what brings it to the rating of its insulation where it lies. */
export function heatedWire({ conductor, current, insulationC, ambientC }: Heated): Plain<HeatedWireGiven> {
  return {
    areaMm2: conductorMm2(conductor),
    resistanceOhmPerM: conductorOhmPerM(conductor),
    ampacityA: current.reachA,
    ratedC: insulationC,
    ambientC
  }
}
