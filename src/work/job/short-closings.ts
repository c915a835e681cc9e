import type { FittedShort } from '../../fitting/circuit.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { loadWay } from '../../trade/circuit/load-way.ts'
import { closedMost } from '../../trade/circuit/switch-positions.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import type { PlacedShort } from './fitted-shorts.ts'

/**
 * Each short in every position of the switches in which a source feeds it, as sources that are not together as drawn are never put
 * together: what has to clear it must do so with the least of them. With one source alone, and where no position feeds it, all runs are
 * taken as closed; so they are also where several clear it side by side, as together each of them has less.
 */
export function inClosings(switching: Switching, shorts: readonly PlacedShort[]): readonly FittedShort[] {
  const { sources, runs } = switching
  if (sources.length < 2) return shorts.map(short => ({ ...short, opened: null }))
  const closings = closedMost(switching)
  return shorts.flatMap(short => {
    const fed = closings.filter(opened => isFed(short.at, opened)).map(opened => [...opened])
    const all = fed.length === 0 || short.group.length > 1 ? [null, ...fed] : fed
    return all.map(opened => ({ ...short, opened }))
  })

  function isFed(at: PlacedShort['at'], opened: Opened): boolean {
    const closed = runs.filter(({ id }) => !opened.has(id))
    return at !== null && loadWay({ runs: closed, loads: [{ name: SHORT, ...at }] }, sources, SHORT) !== null
  }
}

const SHORT = 'short'
