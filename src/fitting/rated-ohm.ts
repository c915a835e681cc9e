import type { Plain } from '../formula/given.ts'
import { resistanceOhm } from '../trade/circuit/load.ts'
import { coldOhm } from '../trade/circuit/switch-on.ts'
import { elementOhm } from '../trade/circuit/warmth.ts'
import type { Follows, Takes } from './circuit.ts'

/** Temperatures of heaters by their names; one that is not named is as hot as its rating means. */
export type HeaterC = { readonly [name: string]: number }

/** The rating holds at the temperature that it means; from there the resistance goes along a straight line. */
export function ratedOhm(takes: Plain<Extract<Takes, { by: 'rated' }>>, elementC: number | undefined): number {
  const hotOhm = resistanceOhm(takes)
  if (takes.follows === null || elementC === undefined) return hotOhm
  return followedOhm(hotOhm, takes.follows, elementC)
}

/** What is so much where it is hot, at another temperature. */
export function followedOhm(hotOhm: number, { resistanceChangePerK, hotC }: Plain<Follows>, elementC: number): number {
  return elementOhm({ coldOhm: coldOhm({ resistanceOhm: hotOhm, resistanceChangePerK, hotC }), resistanceChangePerK, elementC })
}
