import type { Finding } from '../../rules/finding.ts'
import { unsureOf } from '../../rules/missing.ts'
import { asked, type Rule } from '../../rules/rule.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { namedRuns } from './circuit-wiring.ts'
import { carriesMore } from './most-carried.ts'
import { switchNames } from './position-name.ts'
import type { Position } from './positions-of.ts'

/** Of several positions the one with the highest figure: as it is drawn, unless another has more. */
export function highestOf(positions: readonly [Position, ...Position[]], figureOf: (position: Position) => number | undefined): Position {
  return positions.reduce((most, one) => (carriesMore(figureOf(one) ?? 0, figureOf(most) ?? 0) ? one : most))
}

/** Said of the position that it was found in. */
export function inPosition(finding: Finding, { state }: Position): Finding {
  return state === null ? finding : { ...finding, says: `with ${state}: ${finding.says}` }
}

type LoadBounds = Position['bounds']['loads'][number]

export function loadIn({ bounds }: Position, name: string): LoadBounds {
  return bounds.loads.find(load => load.name === name)!
}

/** Of the positions in which a load is fed the first, as drawn where it is fed then, and the one in which most is lost on its way. */
export function feeding({ positions: { worked } }: CircuitJudged, name: string): { readonly first: Position; readonly most: Position } {
  const [first = worked[0], ...others] = worked.filter(({ fed }) => fed.has(name))
  return { first, most: highestOf([first, ...others], at => loadIn(at, name).dropPercent?.high) }
}

/** What is drawn open and closed in no position that could be worked out is not judged; null where there is one. */
export function unseenFinding(
  rule: Omit<Rule<never>, 'judge'>,
  { circuit, positions }: Pick<CircuitJudged, 'circuit' | 'positions'>,
  run: string
): Finding | null {
  if (!positions.unseen.has(run)) return null
  const names = namedRuns(circuit)
    .flatMap(({ id, run: { through } }) => (id === run ? switchNames(through) : []))
    .join(' and ')
  const says = `${names}, drawn open: what it carries when closed is not known`
  return asked(
    { ...rule, judge: () => unsureOf({ says, change: `judge it with ${names} closed, and with what else must be open then` }) },
    null
  )
}
