import type { Unsure } from '../../rules/missing.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { openNames } from './position-name.ts'

/** Why nobody knows what a load gets: behind what is drawn open, fed in no position that could be worked out. Null where it is fed. */
export function unfedLoad({ circuit, fit, positions: { worked } }: CircuitJudged, name: string): Unsure | null {
  if (worked.some(({ fed }) => fed.has(name))) return null
  const off = openNames(circuit, fit)
  if (off.length === 0) return null
  const says = `${name} gets nothing behind ${off.join(' and ')}, drawn open: what it gets is not known`
  return { says, change: `judge it with ${off.join(' or ')} closed, and with what else must be open then` }
}

/** The first of the loads of which that is so: then nobody knows what flows with all of them on. */
export function unfedLoads(judged: CircuitJudged): Unsure | null {
  return judged.fit.loads.map(({ name }) => unfedLoad(judged, name)).find(unsure => unsure !== null) ?? null
}
