import { circuitFit } from '../../fitting/circuit-fit.ts'
import { nominalPlain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { silently } from '../../formula/working.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import type { none } from '../../rules/switch/none.ts'
import { OFF_RATIO } from '../../trade/circuit/backwards-watch.ts'
import { closedRuns } from '../../trade/circuit/closings.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import { fedThrough, leadingRound, staysFed } from '../../trade/circuit/switched-by.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { openRuns } from './guards-in.ts'
import { loadIn } from './in-position.ts'
import { switchRuns } from './on-together.ts'
import { positionFit } from './position-fit.ts'

/** What takes the power off a load; nothing where it stays fed, by itself or through others. */
export function switchedOff(judged: CircuitJudged, name: string): Omit<SubjectOf<typeof none>, 'load'> {
  const { wiring } = judged.guards
  const runs = switchRuns(judged.circuit)
  const open = runs.map(({ id }) => id)
  if (staysFed(wiring, name, open)) return { switchedBy: [], gone: goneRound(judged, name) }
  const through = fedThrough(wiring, name, open)
  const leftW = through === null ? 0 : powerWith(judged, name, open)
  if (isOff(judged, name, leftW)) return { switchedBy: switchedBy(judged, name).flatMap(({ items }) => items) }
  return { switchedBy: [], left: { off: runs.flatMap(({ items }) => items), through: through ?? [], powerW: leftW } }
}

/** What would take its power off if nothing led round it; null where no such thing stands on its way. */
function goneRound({ circuit, guards: { wiring } }: CircuitJudged, name: string): SubjectOf<typeof none>['gone'] {
  const runs = switchRuns(circuit)
  const round = leadingRound(
    wiring,
    name,
    runs.map(({ id }) => id)
  )
  if (round.length === 0) return null
  const left = { ...wiring, runs: wiring.runs.filter(({ id }) => !round.includes(id)) }
  const alone = runs.filter(({ id }) => !staysFed(left, name, [id]))
  const past = alone.length > 0 ? alone : besideEachOther(left, name, runs)
  return { round, items: past.flatMap(({ items }) => items) }
}

/** Of switches that take the power off together, each that keeps the load on by itself. */
function besideEachOther(wiring: Wiring, name: string, runs: ReturnType<typeof switchRuns>): ReturnType<typeof switchRuns> {
  const all = runs.map(({ id }) => id)
  return runs.filter(
    ({ id }) =>
      staysFed(
        wiring,
        name,
        all.filter(one => one !== id)
      ) && !staysFed(wiring, name, all)
  )
}

/** What takes its power off alone in every position that feeds it; else what stands in series with it and leaves it little; else what does together, each beside the other. */
function switchedBy(judged: CircuitJudged, name: string): ReturnType<typeof switchRuns> {
  const { circuit, guards } = judged
  const runs = switchRuns(circuit)
  const fed = feedingPositions(judged, name)
  const alone = fed.length === 0 ? [] : runs.filter(({ id }) => fed.every(position => fedThrough(position, name, [id]) === null))
  if (alone.length > 0) return alone
  const inSeries = runs.filter(
    ({ id }) => guards.guarding.get(id)!.loads.includes(name) && isOff(judged, name, powerWith(judged, name, [id]))
  )
  if (inSeries.length > 0) return inSeries
  const together = fed.flatMap(position => besideEachOther(position, name, runs))
  return runs.filter(run => together.includes(run))
}

/** The circuit in each position in which a source drives a current through a load. */
function feedingPositions({ fit, positions, guards: { wiring } }: CircuitJudged, name: string): readonly Wiring[] {
  return [openRuns(fit), ...positions.tried.map(({ open }) => open)]
    .map(open => ({ ...wiring, runs: closedRuns(wiring.runs, open) }))
    .filter(position => fedThrough(position, name, []) !== null)
}

/** By its power, what a walk of faults takes for off by its voltage. */
function isOff(judged: CircuitJudged, name: string, leftW: number | null): boolean {
  return leftW !== null && leftW <= OFF_RATIO ** 2 * greatestW(judged, name)
}

/** At the nominal; null where that has no answer. */
function powerWith({ circuit, ...fitted }: CircuitJudged, name: string, open: readonly string[]): number | null {
  const fit = positionFit(fitted, circuit, new Set(open))
  try {
    const { loads } = silently(() => circuitFit(nominalPlain(fit)))
    return Math.abs(loads.find(load => load.name === name)!.powerW)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}

function greatestW({ positions: { worked } }: CircuitJudged, name: string): number {
  return Math.max(...worked.map(position => Math.abs(loadIn(position, name).powerW.value)))
}
