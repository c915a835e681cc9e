import type { Ampacity, NoFigure } from './ampacity.ts'
import { loadRatio, squareLawC } from './ampacity-temperature.ts'

export interface LoadedWire {
  readonly current: Ampacity | NoFigure
  readonly currentA: number
  readonly insulationC: number
  readonly ambientC: number
}

/**
 * Temperature of a wire with its current: the rise up to its insulation in the surroundings that the figure is held for, by the square
 * of the current. In a cooler place the rise stays the same. Above its full current it counts as at its limit: such a wire is turned
 * down anyhow.
 */
export function loadedWireC({ current, currentA, insulationC, ambientC }: LoadedWire): number {
  if (current.kind === 'no figure') return ambientC
  const ratio = Math.min(1, loadRatio({ currentA, ampacityA: current.ampacityA }))
  return squareLawC({ ambientC, ratedC: ambientC + insulationC - current.heldC, loadRatio: ratio })
}
