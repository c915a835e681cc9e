import type { Plain } from '../formula/given.ts'
import { resistanceOhm } from '../trade/circuit/load.ts'
import { coldOhm } from '../trade/circuit/switch-on.ts'
import { elementOhm } from '../trade/circuit/warmth.ts'
import type { Takes } from './circuit.ts'

/** Temperatures of heaters by their names; one that is not named is as hot as its rating means. */
export type HeaterC = { readonly [name: string]: number }

/** The rating holds at the temperature that it means; from there the resistance goes along a straight line. */
export function ratedOhm(takes: Plain<Extract<Takes, { by: 'rated' }>>, elementC: number | undefined): number {
  const hotOhm = resistanceOhm(takes)
  if (takes.follows === null || elementC === undefined) return hotOhm
  const { resistanceChangePerK, hotC } = takes.follows
  return elementOhm({ coldOhm: coldOhm({ resistanceOhm: hotOhm, resistanceChangePerK, hotC }), resistanceChangePerK, elementC })
}
