import type { CircuitFit } from '../../fitting/circuit.ts'
import { closedRuns, type Opened } from '../../trade/circuit/closings.ts'
import { guardings, type Wiring } from '../../trade/circuit/guarding.ts'
import { type LoadWay, loadWay } from '../../trade/circuit/load-way.ts'
import type { Guards } from './circuit-guards.ts'

/** Runs that are open as they are drawn. */
export function openRuns({ runs }: Pick<CircuitFit, 'runs'>): Opened {
  return new Set(runs.flatMap(({ id, state }) => (state === 'open' ? [id] : [])))
}

/** What hangs on what with some runs open; what is asked of those is asked as if they were closed. */
export function guardsIn(guards: Guards, open: Opened): Guards {
  if (open.size === 0) return guards
  const { wiring, threads, guarding } = guards
  const closed = closedRuns(wiring.runs, open)
  const counted = closed.filter(({ id }) => !threads.open.has(id))
  return {
    ...guards,
    wiring: { ...wiring, runs: closed },
    guarding: new Map([...guarding, ...guardings({ ...wiring, runs: counted })])
  }
}

/** Lines that are counted on, with their sources: threads beside another way are none. */
export function countedIn({ wiring, threads }: Pick<Guards, 'wiring' | 'threads'>): Required<Wiring> {
  return { ...wiring, runs: wiring.runs.filter(({ id }) => !threads.open.has(id)), sources: wiring.sources! }
}

/** How a load comes by its current with some runs open; one that they cut off, as if they were closed. */
export function wayIn({ wiring, threads }: Guards, open: Opened, name: string): LoadWay | null {
  const counted = wiring.runs.filter(({ id }) => !threads.open.has(id))
  const closed = closedRuns(counted, open)
  return wayBy(closed) ?? (open.size === 0 ? null : wayBy(counted))

  function wayBy(runs: Wiring['runs']): LoadWay | null {
    return loadWay({ runs, loads: wiring.loads }, wiring.sources!, name)
  }
}
