import { Given } from '../../formula/given.ts'
import type { JobItem } from '../../job/circuit-names.ts'
import type { FedAt } from '../../trade/circuit/fed-by.ts'
import { isProtector, type JobRun } from './circuit-wiring.ts'

/** Where a run begins. */
export const AT_ITS_FROM = new Given(0)

/** What a run leads through, where along its wire that sits. */
export interface Along {
  readonly item: JobItem
  readonly atM: Given
}

/** Where nobody said where a protector sits, the end of its run that a source feeds; of two such ends the one with more wire up to a told one. */
export function untoldPlace(through: JobRun['through'], length: Given, ends: readonly FedAt[]): Given {
  const fed = ends.map(({ end }) => end)
  if (fed.length === 1) return fed[0] === 'to' ? length : AT_ITS_FROM
  const told = through.flatMap(item => (isProtector(item) && item.along !== null ? [item.along.value] : []))
  return Math.min(...told) < length.value - Math.max(...told) ? length : AT_ITS_FROM
}

/** What a run leads through, in the order along its wire. What is no protector sits behind the one that is named before it. */
export function alongOf(through: JobRun['through'], untold: Given): readonly Along[] {
  let last = AT_ITS_FROM
  const placed = through.map(item => {
    if (isProtector(item)) last = item.along ?? untold
    return { item, atM: last }
  })
  return placed.toSorted((a, b) => a.atM.value - b.atM.value)
}
