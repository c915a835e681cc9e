import type { CircuitJudged } from './circuit-judged.ts'
import { openRuns } from './guards-in.ts'
import { changed } from './nearest-feeding.ts'
import type { Position } from './positions-of.ts'

type Positions = readonly [Position, ...Position[]]

/**
 * Of the positions that feed a load those in which somebody counts on it, the nearest to the drawing first. Not where panels alone feed
 * it, as behind an isolator that is off: it merely runs on then, with what the sun gives. Any other source may be what it is used with.
 */
export function inUse({ positions: { worked } }: Pick<CircuitJudged, 'positions'>, feeding: Positions, name: string): Positions {
  const drawn = openRuns(worked[0].fit)
  const far = ({ fit }: Position) => changed(drawn, openRuns(fit))
  const nearest = feeding.toSorted((a, b) => far(a) - far(b))
  const [first, ...others] = nearest.filter(({ lasting }) => lasting.has(name))
  return first === undefined ? [nearest[0]!, ...nearest.slice(1)] : [first, ...others]
}
