import { boundsOf } from '../formula/bounds.ts'
import { Given } from '../formula/given.ts'
import { SOURCES, type Source } from '../formula/source.ts'
import type { ConductorKind } from '../trade/circuit/conductor.ts'
import type { Follows } from './circuit.ts'
import { followedOhm } from './rated-ohm.ts'

/** What a circuit in order may differ from its drawing without anybody having said so. */
export interface Allowance {
  readonly says: string
  readonly source: Source
}

export const ALLOWANCES: readonly Allowance[] = [
  {
    says: 'a wire may have 10 % less than the greatest resistance of its table, and 15 % less where that is an aircraft table',
    source: SOURCES['wire-drum']
  },
  { says: 'a gauge that is drawn as solid copper may be stranded: up to 27 % more', source: SOURCES['ac-43.13-1b-11-9'] },
  { says: 'each end of a wire may have up to 3 mohm', source: SOURCES['bonding-joint'] },
  { says: 'a fuse or switch whose resistance was not given may have up to 20 mohm', source: SOURCES.practice },
  { says: 'a heater may have up to 3.8 % less resistance cold than hot', source: SOURCES['resistance-alloy'] },
  { says: 'a heater that tells its resistance-change may be as cold as 0 °C, and as hot as it tells', source: SOURCES.ohm }
]

/** Table over true resistance. The gauge tables of aircraft wire stand up to 27 % above the solid formula, typical wire well below them. */
export function wireFactor(kind: ConductorKind): Given {
  if (kind === 'solid') return new Given(1, { low: 0.98, high: 1.27 })
  return new Given(1, { low: kind === 'aircraft' ? 0.85 : 0.9, high: 1 })
}

/** Both ends of one wire. */
export function endsOhm(): Given {
  return new Given(0, { low: 0, high: 2 * 0.003 })
}

/** A joint as it was given; one that nobody measured is between nothing and what a worn one has. */
export function joined(jointOhm: Given): Given {
  if (jointOhm.assumed === undefined) return jointOhm
  return new Given(jointOhm.value, { low: 0, high: Math.max(jointOhm.high, 0.02), assumed: jointOhm.assumed, at: jointOhm.at })
}

/** Cold over hot: as the heater tells it, in a shop of 0 to 40 °C; else of three resistance alloys at 300 °C, 1.008 to 1.038 hot over cold. */
export function coldFactor(follows: Follows | null): Given {
  if (follows === null) return new Given(1, { low: 1 / 1.038, high: 1 })
  const at = (elementC: number) => boundsOf(follows, x => followedOhm(1, x, elementC))
  const [frost, shop, heat] = [at(0), at(20), at(40)]
  const ends = [frost.low, frost.high, heat.low, heat.high]
  return new Given(shop.value, { low: Math.min(...ends), high: Math.max(...ends), at: follows.resistanceChangePerK.at })
}

/** With the power on it is somewhere between cold and hot. */
export function warming(hotOhm: Given, follows: Follows | null): Given {
  if (follows === null) return hotOhm
  const { low, high } = coldFactor(follows)
  const { value, assumed, at } = hotOhm
  return new Given(value, { low: hotOhm.low * Math.min(1, low), high: hotOhm.high * Math.max(1, high), assumed, at })
}
