import type { SteadyBus } from '../../rules/steady-bus.ts'
import type { JobCircuit } from './circuit-wiring.ts'

/** Whether nobody told how low the bus gets, and how high: by bounds of its own, as of a supply that is regulated, or by its ends. */
export function steadyOf({ source: { bus, low, high } }: JobCircuit): Required<SteadyBus> {
  const told = bus.low < bus.high
  return { steadyBus: low === null && !told, steadyHigh: high === null && !told }
}
