import type { Finding } from '../../rules/finding.ts'
import { type Unsure, unsureOf } from '../../rules/missing.ts'
import { asked, type Rule } from '../../rules/rule.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { namedRuns } from './circuit-wiring.ts'
import { openRuns } from './guards-in.ts'
import { inUse } from './in-use.ts'
import { carriesMore } from './most-carried.ts'
import { switchNames } from './position-name.ts'
import type { Position } from './positions-of.ts'

/** Of several positions the one with the highest figure: as it is drawn, unless another has more. */
export function highestOf(positions: readonly [Position, ...Position[]], figureOf: (position: Position) => number | undefined): Position {
  return positions.reduce((most, one) => (carriesMore(figureOf(one) ?? 0, figureOf(most) ?? 0) ? one : most))
}

/** Said of the position that it was found in. */
export function inPosition(finding: Finding, { state }: Pick<Position, 'state'>): Finding {
  return state === null || finding.verdict === 'not-judged' ? finding : { ...finding, says: `with ${state}: ${finding.says}` }
}

type LoadBounds = Position['bounds']['loads'][number]

export function loadIn({ bounds }: Position, name: string): LoadBounds {
  return bounds.loads.find(load => load.name === name)!
}

interface Feeding {
  /** As drawn where it is fed then. */
  readonly first: Position
  /** Where most is lost on its way. */
  readonly most: Position
  /** Where it gets least power while somebody has it on; of several alike that with the fewest switches changed. */
  readonly least: Position
}

/** Positions in which a load is fed. */
export function feeding(judged: CircuitJudged, name: string): Feeding {
  const { worked } = judged.positions
  const [first = worked[0], ...others] = worked.filter(({ fed }) => fed.has(name))
  if (others.length === 0) return { first, most: first, least: first }
  const all = [first, ...others] as const
  return {
    first,
    most: highestOf(all, at => loadIn(at, name).dropPercent?.high),
    least: highestOf(inUse(judged, all, name), at => -loadIn(at, name).powerW.low)
  }
}

export function offCount({ fit }: Position): number {
  return openRuns(fit).size
}

type Seen = Pick<CircuitJudged, 'circuit' | 'positions'>

/** What stays open in every position that could be worked out, or is in series with that, is not judged; null where its current is known. */
export function unseenFinding(rule: Omit<Rule<never>, 'judge'>, seen: Seen, run: string): Finding | null {
  const unsure = unseenLack(seen, run)
  return unsure === null ? null : asked({ ...rule, judge: () => unsureOf(unsure) }, null)
}

/** Why nobody knows what flows in it when it is closed. */
export function unseenLack({ circuit, positions }: Seen, run: string): Unsure | null {
  const by = positions.unseen.get(run)
  if (by === undefined) return null
  const names = namedRuns(circuit)
    .flatMap(({ id, run: { through } }) => (id === by ? switchNames(through) : []))
    .join(' and ')
  const says = `${names}, drawn open: what it carries when closed is not known`
  return { says, change: `judge it with ${names} closed, and with what else must be open then` }
}
