import type { FittedShort } from '../../fitting/circuit.ts'
import { closedRuns, type Opened } from '../../trade/circuit/closings.ts'
import { sharingLoop } from '../../trade/circuit/same-loop.ts'
import { shortWays } from '../../trade/circuit/short-ways.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import type { RatedProtector } from './circuit-guards.ts'
import type { PlacedShort } from './fitted-shorts.ts'

interface Around {
  readonly protectors: readonly Pick<RatedProtector, 'name' | 'run'>[]
  /** Positions in which sources may be together. */
  readonly together: readonly Opened[]
}

/**
 * Each short in every position of the switches in which it may have the least and a source feeds it: what has to clear it must do so
 * with that. Where no position feeds it all runs are taken as closed; so they are also where several clear it side by side, as
 * together each of them has less. What would have nothing of it in any of them, as before a relay that joins two sources and is drawn
 * open, is asked with those sources together.
 */
export function inClosings(switching: Switching, { protectors, together }: Around, shorts: readonly PlacedShort[]): readonly FittedShort[] {
  const waysTo = shortWays(switching)
  return shorts.flatMap(short => {
    const fed = short.at === null ? [] : waysTo(short.at)
    if (fed.length === 0 || short.group.length > 1) return [ALL_CLOSED, ...fed].map(opened => placed(short, opened, 'apart'))
    const joined = onlyTogether(short, fed)
    if (joined.length > 0) return joined.map(opened => placed(short, opened, 'together'))
    return fed.map(opened => placed(short, opened, 'apart'))
  })

  /** Positions in which its protector has some of it; none where it has so with sources apart. */
  function onlyTogether({ at, protector }: PlacedShort, apart: readonly Opened[]): readonly Opened[] {
    const run = protectors.find(({ name }) => name === protector)?.run
    const carries = (opened: Opened) => flowsIn(switching, opened, at!).has(run)
    return run === undefined || apart.some(carries) ? [] : together.filter(carries)
  }
}

const ALL_CLOSED: Opened = new Set()

/** Runs that may have some of what a short draws. */
function flowsIn({ runs, sources }: Switching, opened: Opened, at: NonNullable<PlacedShort['at']>): ReadonlySet<string | undefined> {
  const short = { id: '', ...at }
  return new Set([...sharingLoop([...closedRuns(runs, opened), ...sources], short)].map(({ id }) => id))
}

/** What is open has nothing of the short in it. */
function placed(short: PlacedShort, opened: Opened, sources: FittedShort['sources']): FittedShort {
  return { ...short, opened: [...opened], sources, runs: short.runs.filter(id => !opened.has(id)) }
}
