import type { CircuitFit } from '../../fitting/circuit.ts'
import type { Missing } from '../../rules/missing.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import type { Heated } from './heated-circuit-of.ts'
import { type FedLoads, warmingNames } from './heaters-of.ts'
import { offCount } from './in-position.ts'
import type { Position } from './positions-of.ts'

/** What a circuit gives the heaters of a casting. */
export interface CastingFeed {
  /** What each load gets; what warms the casting also at most. */
  readonly loads: FedLoads
  /** Circuit and casting as one. */
  readonly heated: () => Heated | null
  /** The circuit as it gives the heaters most. */
  readonly hottest: CircuitFit | null
  /** How its switches stand while the casting is warmed, and where it gets hottest. */
  readonly states: { readonly warmed: Position['state']; readonly hottest: Position['state'] }
  /** Why nothing can be said of the warm-up: a heater behind a switch that is closed in no position. */
  readonly unfed: Missing | null
}

/** Of a job without a circuit, or without one that has an answer. */
export const NO_FEED: CastingFeed = {
  loads: [],
  heated: () => null,
  hottest: null,
  states: { warmed: null, hottest: null },
  unfed: null
}

export const NO_WAY: Missing = {
  field: 'a closed way to the heater',
  measure: 'close the switches of its feed and its return, and draw it the right way round'
}

/** A switch that is drawn open is closed while the casting is warmed, and where it gets hottest. */
export function castingFeed({ job, positions: { worked }, highest }: CircuitJudged): CastingFeed {
  const drawn = worked[0].bounds.loads.map(({ name }) => name)
  const names = job.warm === null ? [] : warmingNames(job).filter(name => drawn.includes(name))
  const at = warmedIn(worked, names)
  const most = names.length === 0 ? null : highest(names, at)
  return {
    loads:
      most === null
        ? at.bounds.loads
        : at.bounds.loads.map(load => ({ ...load, highest: most.loads.find(({ name }) => name === load.name) })),
    heated: at.heated.ask,
    hottest: most?.fit ?? at.fit,
    states: { warmed: at.state, hottest: (most?.position ?? at).state },
    unfed: offCount(at) > 0 && names.some(name => !at.fed.has(name)) ? NO_WAY : null
  }
}

/** Where most of the heaters are fed, and of such positions where the fewest switches are off. */
function warmedIn([drawn, ...others]: readonly [Position, ...Position[]], names: readonly string[]): Position {
  const fedCount = ({ fed }: Position) => names.filter(name => fed.has(name)).length
  return others.reduce((best, one) => {
    const more = fedCount(one) - fedCount(best)
    return more > 0 || (more === 0 && offCount(one) < offCount(best)) ? one : best
  }, drawn)
}
