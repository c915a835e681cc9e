import { SOURCE } from '../../fitting/circuit-parts.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { isFed } from '../../trade/circuit/fed-loads.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { countedIn, openRuns } from './guards-in.ts'
import { changed } from './nearest-feeding.ts'
import type { Position } from './positions-of.ts'

type Positions = readonly [Position, ...Position[]]

/**
 * Of the positions that feed a load those in which somebody has it on, the nearest to the drawing first. Not where it merely runs on from
 * another source with that of the bus cut off, as from a panel behind an isolator that is off.
 */
export function inUse({ guards, positions: { worked } }: CircuitJudged, feeding: Positions, name: string): Positions {
  const drawn = openRuns(worked[0].fit)
  const far = ({ fit }: Position) => changed(drawn, openRuns(fit))
  const [first, ...others] = feeding.toSorted((a, b) => far(a) - far(b))
  const near = [first!, ...others.filter(at => far(at) === far(first!))]
  if (!near.some(at => isByBus(at, name))) return [first!, ...others]
  return [first!, ...others.filter(at => near.includes(at) || isByBus(at, name) || !runsOn(openRuns(at.fit)))]

  /** Fed without anything closed that is drawn open. */
  function runsOn(open: Opened): boolean {
    return isFed(countedIn(guards), new Set([...open, ...drawn]), name)
  }
}

function isByBus({ fit }: Position, name: string): boolean {
  const { way } = fit.loads.find(load => load.name === name)!
  return way?.sources.flat().includes(SOURCE) ?? false
}
