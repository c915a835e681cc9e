import type { Unsure } from '../../rules/missing.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { openNames } from './position-name.ts'

/** Why nobody knows what flows with everything on: a load behind what is drawn open, fed in no position that could be worked out. Null where there is none. */
export function unfedLoads({ circuit, fit, positions: { worked } }: CircuitJudged): Unsure | null {
  const off = openNames(circuit, fit)
  const unfed = off.length === 0 ? [] : fit.loads.flatMap(({ name }) => (worked.some(({ fed }) => fed.has(name)) ? [] : [name]))
  if (unfed.length === 0) return null
  return {
    says: `${unfed.join(' and ')}: nothing gets there behind ${off.join(' and ')}, drawn open, and what flows when closed is not known`,
    change: `judge it with ${off.join(' or ')} closed, and with what else must be open then`
  }
}
