import { Given } from '../../formula/given.ts'
import type { JobCircuit } from './circuit-wiring.ts'

/** Low and high are the bounds of bus, where they are given. */
export function busOf({ bus, low, high }: JobCircuit['source']): Given {
  return new Given(bus.value, { low: low?.low ?? bus.low, high: high?.high ?? bus.high, at: bus.at })
}
