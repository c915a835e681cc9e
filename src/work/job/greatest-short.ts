import type { Bounded } from '../../formula/bounds.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { carriesMore } from './most-carried.ts'
import type { Position } from './positions-of.ts'
import { shortState } from './short-state.ts'

interface GreatestShort extends Pick<Position, 'state'> {
  readonly faultA: Bounded | null
}

/** The position of the switches in which most flows into a short: as it is drawn, unless more does in another. */
export function greatestShort(judged: CircuitJudged, nearInA: readonly (Bounded | null)[]): GreatestShort {
  const most = nearInA.reduce((at, one, i) => (carriesMore(one?.high ?? 0, nearInA[at]?.high ?? 0) ? i : at), 0)
  return { faultA: nearInA[most] ?? null, state: shortState(judged, judged.fit.closings[most]!) }
}
