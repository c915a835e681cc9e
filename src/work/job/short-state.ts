import type { FittedShort } from '../../fitting/circuit.ts'
import { keyOf } from '../../trade/circuit/closings.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { openRuns } from './guards-in.ts'
import { positionName } from './position-name.ts'
import type { Position } from './positions-of.ts'

/** How the switches stand in a short; null as they are drawn, and where all are closed and no sources come together by that. */
export function shortState(
  { circuit, fit }: CircuitJudged,
  { opened, sources }: Pick<FittedShort, 'opened' | 'sources'>
): Position['state'] {
  const drawn = openRuns(fit)
  const open = new Set(opened)
  return (open.size === 0 && sources === 'apart') || keyOf(open) === keyOf(drawn) ? null : positionName(circuit, drawn, open)
}
