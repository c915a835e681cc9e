import type { Plain } from '../formula/given.ts'
import { heatedWire } from '../trade/circuit/heated-wire.ts'
import { loadedWireC } from '../trade/circuit/wire-warmth.ts'
import type { RunWire } from './circuit.ts'
import { carries } from './circuit-parts.ts'
import { partRecalled } from './part-recalled.ts'

/** A wire as it heats, where it was told how it lies and is known what it carries; null elsewhere. */
export const asHeated = partRecalled((wired: Plain<RunWire>) => {
  const current = carries(wired)
  if (wired.lies === null || current?.kind !== 'ampacity') return null
  const { insulationC, ambientC } = wired.lies
  return { current, insulationC, ambientC, wire: heatedWire({ conductor: wired.conductor, current, insulationC }) }
})

/** What it has from its load, before more flows. */
export function loadedC({ current, insulationC, ambientC }: NonNullable<ReturnType<typeof asHeated>>, currentA: number): number {
  return loadedWireC({ current, currentA, insulationC, ambientC })
}
