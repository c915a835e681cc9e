import { regionsOf } from '../../trade/circuit/regions.ts'
import { highestOf } from './in-position.ts'
import type { Position } from './positions-of.ts'

interface Lifted {
  readonly at: Position
  readonly groundPoints: Position['bounds']['groundPoints']
}

/** The position in which a ground point is lifted most, with the points that are grounded then. */
export function mostLifted(worked: readonly [Position, ...Position[]]): Lifted {
  const [first = worked[0], ...others] = worked.filter(one => groundedIn(one).length > 0)
  const at = highestOf([first, ...others], one => Math.max(0, ...groundedIn(one).map(({ shiftV }) => shiftV.high)))
  return { at, groundPoints: groundedIn(at) }
}

/** Ground points that closed runs lead from to 0 V: behind an open one a point stands where its load puts it, and nothing flows. */
function groundedIn({ fit, bounds }: Position): Lifted['groundPoints'] {
  const { region } = regionsOf(fit.runs.filter(({ state, counted }) => state === 'closed' && counted === 'yes'))
  return bounds.groundPoints.filter(({ point }) => region(point) === region(fit.ground))
}
