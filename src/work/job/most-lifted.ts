import { regionsOf } from '../../trade/circuit/regions.ts'
import { highestOf } from './in-position.ts'
import type { Position } from './positions-of.ts'

interface Lifted {
  readonly at: Position
  readonly groundPoints: Position['bounds']['groundPoints']
}

/** The position in which a ground point that counts is lifted most, with those that are grounded then. */
export function mostLifted(worked: readonly [Position, ...Position[]], counts: (point: string) => boolean = () => true): Lifted {
  const countedIn = (one: Position) => groundedIn(one).filter(({ point }) => counts(point))
  const [first = worked[0], ...others] = worked.filter(one => countedIn(one).length > 0)
  const at = highestOf([first, ...others], one => Math.max(0, ...countedIn(one).map(({ shiftV }) => shiftV.high)))
  return { at, groundPoints: countedIn(at) }
}

/** Ground points that closed runs lead from to 0 V: behind an open one a point stands where its load puts it, and nothing flows. */
function groundedIn({ fit, bounds }: Position): Lifted['groundPoints'] {
  const { region } = regionsOf(fit.runs.filter(({ state, counted }) => state === 'closed' && counted === 'yes'))
  return bounds.groundPoints.filter(({ point }) => region(point) === region(fit.ground))
}
