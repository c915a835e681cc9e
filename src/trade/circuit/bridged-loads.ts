import type { PlainNetwork } from './network.ts'
import { regionsOf } from './regions.ts'

/** Loads of which wires and joints alone lead from one end to the other. */
export function bridgedLoads({ elements }: PlainNetwork, loads: ReadonlySet<string>): ReadonlySet<string> {
  const { region } = regionsOf(elements.filter(({ id, kind }) => kind === 'resistor' && !loads.has(id)))
  return new Set(elements.flatMap(({ id, from, to }) => (loads.has(id) && region(from) === region(to) ? [id] : [])))
}
