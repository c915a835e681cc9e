import type { FittedShort } from '../../fitting/circuit.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { shortWays } from '../../trade/circuit/short-ways.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import type { PlacedShort } from './fitted-shorts.ts'

/**
 * Each short in every position of the switches in which it may have the least and a source feeds it: what has to clear it must do so
 * with that. Where no position feeds it all runs are taken as closed; so they are also where several clear it side by side, as
 * together each of them has less.
 */
export function inClosings(switching: Switching, shorts: readonly PlacedShort[]): readonly FittedShort[] {
  const waysTo = shortWays(switching)
  return shorts.flatMap(short => {
    const fed = short.at === null ? [] : waysTo(short.at)
    const all = fed.length === 0 || short.group.length > 1 ? [ALL_CLOSED, ...fed] : fed
    return all.map(opened => placed(short, opened))
  })
}

const ALL_CLOSED: Opened = new Set()

/** What is open has nothing of the short in it. */
function placed(short: PlacedShort, opened: Opened): FittedShort {
  return { ...short, opened: [...opened], runs: short.runs.filter(id => !opened.has(id)) }
}
