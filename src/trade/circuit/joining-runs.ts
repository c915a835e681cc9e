import { closedTogether } from './short-ways.ts'
import { soundIn } from './sound-position.ts'
import type { Switching } from './switching.ts'

/** Runs that put sources together which are apart as drawn, when all of them are closed: none of them to spare, no source shorted, others first. */
export function joiningRuns(switching: Switching, last: readonly string[]): readonly string[] | null {
  const isApart = soundIn(switching)
  const most = switching.sources.length < 2 ? undefined : closedTogether(switching).find(position => !isApart(position))
  if (most === undefined) return null
  const spare = new Set(most)
  for (const id of [...last, ...switching.switchable]) {
    if (spare.has(id)) continue
    spare.add(id)
    if (isApart(spare)) spare.delete(id)
  }
  return switching.switchable.filter(id => !spare.has(id))
}
