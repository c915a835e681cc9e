import type { Ampacity, NoFigure } from './ampacity.ts'
import { loadRatio, squareLawC } from './ampacity-temperature.ts'

export interface LoadedWire {
  readonly current: Ampacity | NoFigure
  readonly currentA: number
  readonly insulationC: number
  readonly ambientC: number
}

/**
 * Temperature of a wire with its current, by the square of the current up to what brings it to the rating of its insulation as it
 * lies. Above that it counts as at its limit: such a wire is turned down anyhow.
 */
export function loadedWireC({ current, currentA, insulationC, ambientC }: LoadedWire): number {
  if (current.kind === 'no figure') return ambientC
  const ratio = Math.min(1, loadRatio({ currentA, ampacityA: current.reachA }))
  return squareLawC({ ambientC, ratedC: insulationC, loadRatio: ratio })
}
