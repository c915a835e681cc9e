import { loadName } from '../../job/circuit-names.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { loadIn } from './in-position.ts'

/** By load: the most that stands over it where it is fed, at the nominal; of one that is fed nowhere, over any. */
export function fedVolts({ circuit, positions: { worked } }: Pick<CircuitJudged, 'circuit' | 'positions'>): ReadonlyMap<string, number> {
  const names = circuit.loads.map(load => loadName(load))
  const found = names.map(name => {
    const fed = worked.filter(position => position.fed.has(name))
    return Math.max(0, ...fed.map(position => Math.abs(loadIn(position, name).atV.value)))
  })
  const most = Math.max(0, ...found)
  return new Map(names.map((name, i) => [name, found[i] || most]))
}
