import type { Plain } from '../formula/given.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as load from '../trade/circuit/load.ts'
import type { LoadWay } from '../trade/circuit/load-way.ts'
import type { Settled } from '../trade/circuit/part.ts'
import { ratedSharePercent } from '../trade/circuit/rating-share.ts'
import type { FittedLoad } from './circuit.ts'
import { loadId } from './circuit-parts.ts'
import { type HeaterC, ratedOhm } from './rated-ohm.ts'
import { OPEN_OHM } from './resistor.ts'
import { givenBesideV, type Unloaded } from './unloaded-circuit.ts'

const ROUNDING = 1e-12

interface Around {
  readonly settled: Settled
  readonly busV: number
  readonly heaterC: HeaterC
  /** Null where no sources stand side by side. */
  readonly without: Unloaded | null
}

/** What one load of a settled circuit gets. What only a rated load has is null for the others. */
export function atLoad(fitted: Plain<FittedLoad>, { settled, busV, heaterC, without }: Around) {
  const flow = settled.flows[loadId(fitted.name)]!
  // What stands across a load that is switched off is rounding, of either sign.
  const atV = Math.abs(flow.dropV) < ROUNDING * Math.abs(busV) ? 0 : flow.dropV
  return {
    name: fitted.name,
    atV,
    ...lost(fitted, { settled, without }, atV),
    ...taken(fitted, { atV, currentA: flow.currentA, powerW: flow.powerW, elementC: heaterC[fitted.name] })
  }
}

/** What its sources give, less what it takes and what stands in series with it takes: what is left was lost in the runs. */
function lost({ name, way }: Plain<FittedLoad>, { settled: { flows }, without }: Pick<Around, 'settled' | 'without'>, atV: number) {
  if (way === null) return { dropV: null, dropPercent: null }
  const takenV = way.passes.reduce((sum, { load, turned }) => {
    const acrossV = load === name ? atV : flows[loadId(load)]!.dropV
    return sum + (turned ? -acrossV : acrossV)
  }, 0)
  const ohm = Math.abs(takenV / flows[loadId(name)]!.currentA)
  const isOff = atV === 0 || !(ohm < OPEN_OHM)
  const givenV = without === null || isOff ? atTerminalsV(way.sources, flows) : givenBesideV(way, { flows, ohm }, without)
  const dropV = Math.max(0, givenV - takenV)
  return { dropV, dropPercent: feed.dropPercent({ dropV, busV: givenV }) }
}

/** Of sources one after the other; of those side by side the highest. */
function atTerminalsV(sources: LoadWay['sources'], flows: Settled['flows']): number {
  return sources.reduce((sum, beside) => sum + Math.max(...beside.map(id => -flows[id]!.dropV)), 0)
}

interface Flowing {
  readonly atV: number
  readonly currentA: number
  readonly powerW: number
  readonly elementC: number | undefined
}

interface Taken {
  readonly resistanceOhm: number | null
  readonly currentA: number
  readonly powerW: number
  readonly ratedSharePercent: number | null
}

function taken({ takes }: Plain<FittedLoad>, { atV, currentA, powerW, elementC }: Flowing): Taken {
  if (takes.by !== 'rated')
    return { resistanceOhm: takes.by === 'resistance' ? takes.resistanceOhm : null, currentA, powerW, ratedSharePercent: null }
  const resistanceOhm = ratedOhm(takes, elementC)
  const power = load.powerW({ atV: Math.abs(atV), resistanceOhm })
  return {
    resistanceOhm,
    currentA: load.currentA({ atV: Math.abs(atV), resistanceOhm }),
    powerW: power,
    ratedSharePercent: ratedSharePercent({ powerW: power, ratedW: takes.powerW })
  }
}
