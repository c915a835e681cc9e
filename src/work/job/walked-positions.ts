import type { CircuitFit } from '../../fitting/circuit.ts'
import { type FaultRoles, faultsGiven } from '../../fitting/circuit-faults.ts'
import { runId } from '../../fitting/circuit-parts.ts'
import { nominalPlain, type Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { keyOf, type Opened } from '../../trade/circuit/closings.ts'
import type { FaultGiven } from '../../trade/circuit/fault.ts'
import { type StatedFault, walkWithout } from '../../trade/circuit/switched-walk.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import type { JobCircuit } from './circuit-wiring.ts'
import { openRuns } from './guards-in.ts'
import { positionName } from './position-name.ts'
import type { Tried } from './positions-of.ts'
import { switchedRuns } from './switching-of.ts'

/** One position of the switches, as a walk of faults takes it. */
interface WalkedPosition extends Omit<Tried, 'state'> {
  /** Undefined as it is drawn. */
  readonly state: string | undefined
  readonly given: FaultGiven
}

/** As it is drawn, and every position that was looked at. One without an answer is a finding of its own. */
export function walkedPositions(judged: CircuitJudged, roles: FaultRoles): readonly [WalkedPosition, ...WalkedPosition[]] {
  const { fit, positions } = judged
  const drawn = nominalPlain(fit)
  const together = togetherIn(judged).filter(({ open }) => closesMore(judged, open))
  const others = givenAll(drawn, [...positions.tried, ...together], roles)
  return [{ state: undefined, open: openRuns(fit), starts: 'yes', given: faultsGiven(drawn, roles) }, ...others]
}

/** Those in which sources are together that are apart as drawn, where each switch was looked at without: nobody tells whether they may be. */
export function perhapsTogether(judged: CircuitJudged, roles: FaultRoles): readonly WalkedPosition[] {
  const together = togetherIn(judged).filter(({ open }) => !closesMore(judged, open))
  return givenAll(nominalPlain(judged.fit), together, roles)
}

/** Everything closed that can be without a source shorted, where that was not looked at. */
function togetherIn({ circuit, fit, positions: { tried } }: CircuitJudged): readonly Tried[] {
  if (circuit['other-sources'].length === 0) return []
  const drawn = openRuns(fit)
  const seen = new Set([drawn, ...tried.map(({ open }) => open)].map(keyOf))
  return fit.closedTogether
    .map(ids => new Set(ids))
    .filter(open => !seen.has(keyOf(open)))
    .map(open => ({ state: positionName(circuit, drawn, open), open, starts: 'yes' }))
}

/** Whether it closes what is drawn open and closed in no other, as what joins two sources: sooner or later that is closed. */
function closesMore({ fit, positions: { unseen } }: CircuitJudged, open: Opened): boolean {
  return [...openRuns(fit)].some(id => unseen.get(id) === id && !open.has(id))
}

function givenAll(drawn: Plain<CircuitFit>, positions: readonly Tried[], roles: FaultRoles): readonly WalkedPosition[] {
  return positions.flatMap(one => {
    const given = givenIn(drawn, one.open, roles)
    return given === null ? [] : [{ ...one, given }]
  })
}

function givenIn(drawn: Plain<CircuitFit>, open: Opened, roles: FaultRoles): FaultGiven | null {
  const runs = drawn.runs.map(run => ({ ...run, state: open.has(run.id) ? ('open' as const) : ('closed' as const) }))
  try {
    return faultsGiven({ ...drawn, runs }, roles)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}

/** What is switched off stays off, whatever single fault comes: each switch besides how they stand, but what was walked as a position. */
export function offWalks(circuit: JobCircuit, positions: readonly [WalkedPosition, ...WalkedPosition[]]): readonly StatedFault[] {
  const drawn = positions[0].open
  const seen = new Set(positions.map(({ open }) => keyOf(open)))
  const switched = switchedRuns(circuit)
  return positions
    .filter(({ starts }) => starts === 'yes')
    .flatMap(({ open, given }) =>
      switched.flatMap(id => {
        const off = new Set([...open, id])
        if (seen.has(keyOf(off)) || !given.network.elements.some(one => one.id === runId(id))) return []
        seen.add(keyOf(off))
        return walkWithout(given, runId(id), positionName(circuit, drawn, off))
      })
    )
}
