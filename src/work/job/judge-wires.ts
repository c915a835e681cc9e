import type { Run, RunWire } from '../../fitting/circuit.ts'
import { carries } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { resultsBy } from '../../report/result-map.ts'
import { magnesium } from '../../rules/ground/magnesium.ts'
import { throughThreads } from '../../rules/ground/through-threads.ts'
import { isMissing } from '../../rules/missing.ts'
import { asked } from '../../rules/rule.ts'
import { overAmpacity } from '../../rules/wire/over-ampacity.ts'
import { shortCircuit } from '../../rules/wire/short-circuit.ts'
import { tooSmall } from '../../rules/wire/too-small.ts'
import { conductorBySize } from '../../trade/circuit/ampacity-conductor.ts'
import { smallestAllowed } from '../../trade/circuit/ampacity-smallest-wire.ts'
import { assumedOf } from '../../trade/circuit/wire-choice.ts'
import { RUN_RESULTS } from '../results/circuit-results.ts'
import { reliesOn } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobRun, namedRuns } from './circuit-wiring.ts'
import { highestOf, inPosition, unseenFinding } from './in-position.ts'
import type { Placed } from './placed.ts'
import { protectedBy, type RunShort, shortLack, worstShort } from './run-shorts.ts'
import { shortState } from './short-state.ts'
import { figureLack } from './wire-lacks.ts'

/** Every run with a wire, and every joint to a ground. */
export function judgeWires(judged: CircuitJudged): readonly Placed[] {
  return namedRuns(judged.circuit).flatMap(({ id, run }) => [
    ...wireThing(judged, id, run),
    ...bondThing(judged, id, run),
    ...threadThing(judged, id, run)
  ])
}

function wireThing(judged: CircuitJudged, id: string, { wire, path }: JobRun): readonly Placed[] {
  const run = judged.fit.runs.find(one => one.id === id)!
  const wired = run.parts.find(part => part.of === 'wire')
  if (wire === null || wired === undefined) return []
  const bounds = judged.bounds.runs.find(one => one.id === id)!
  const worst = worstShort(judged, id)
  const findings = [
    carriedFinding(judged, id, wired),
    asked(tooSmall, sizeOf(judged, wired, wire.sheathed)),
    ...shortFinding(judged, run, worst)
  ]
  return [{ place: `circuit.${id}`, path: [...path, 'wire'], results: resultsBy(RUN_RESULTS, { worst, ...bounds }), findings }]
}

/** In the position of the switches in which most flows in it. */
function carriedFinding(judged: CircuitJudged, id: string, wired: RunWire) {
  const { circuit, fit, positions } = judged
  const unseen = unseenFinding(overAmpacity, { circuit, positions }, id)
  if (unseen !== null) return unseen
  const at = highestOf(positions.worked, ({ bounds }) => runIn(bounds).currentA.high)
  const { currentA, spareA, ampacityA, printedA } = runIn(at.bounds)
  return inPosition(asked(overAmpacity, { currentA, spareA, ampacityA, printedA, ...figureOf(wired), lacks: missingOf(judged, id) }), at)

  function runIn({ runs }: CircuitJudged['bounds']) {
    return runs[fit.runs.findIndex(run => run.id === id)]!
  }
}

/** A joint that is the threads of a part. */
function threadThing({ guards }: CircuitJudged, id: string, { threads, path }: JobRun): readonly Placed[] {
  if (threads === 'no') return []
  const loads = guards.threads.loads.flatMap(({ name, runs }) => (runs.includes(id) ? [name] : []))
  return [{ place: `circuit.${id}`, path: [...path, 'threads'], results: [], findings: [asked(throughThreads, { loads })] }]
}

/** What the figure of the wire holds for; null where nobody said how it lies. */
function figureOf(wired: RunWire) {
  const { lies } = wired
  const figure = carries(nominalPlain(wired))
  if (lies === null || figure === null) return { holds: null, figureSource: SOURCES.practice, assumed: null }
  const holds = figure.kind === 'ampacity' ? figure.holdsFor : figure.says
  return { holds, figureSource: figure.kind === 'ampacity' ? figure.source : SOURCES.practice, assumed: assumedOf(lies) }
}

function missingOf(judged: CircuitJudged, id: string) {
  const lack = figureLack(judged, id)
  return lack !== null && isMissing(lack) ? lack : null
}

function sizeOf({ job }: CircuitJudged, { conductor }: RunWire, sheathed: string) {
  const run = sheathed === 'yes' ? 'sheathed' : 'single'
  return {
    size: conductor.size.name,
    smallest: smallestAllowed({ practice: job.job.practice, conductor: conductorBySize(conductor.size), run })
  }
}

/** Wire before every protector is judged by how short it is; where no protector follows, there is nothing to judge by. */
function shortFinding(judged: CircuitJudged, run: Run, worst: RunShort | null) {
  const bare = reliesOn(judged.guards, run.id).length === 0
  if (bare && !judged.guards.unguarded.runs.has(run.id)) return []
  // What is fed at one end without a protector is not saved by one at the other.
  const half = judged.guards.unguarded.runs.has(run.id) && worst !== null && worst.marginK.low >= 0
  const found = asked(shortCircuit, {
    short: half ? null : worst,
    protector: protectedBy(judged, run.id, worst),
    lacks: shortLack(judged, run.id)
  })
  return [inPosition(found, { state: worst === null ? null : shortState(judged, worst) })]
}

/** A joint on the way home, its resistance known or not yet measured: what it is made to must be a ground. */
function bondThing({ guards }: CircuitJudged, id: string, { bond, metal, path }: JobRun): readonly Placed[] {
  if ((bond === null && metal === null) || guards.guarding.get(id)!.side !== 'return') return []
  return [
    { place: `circuit.${id}`, path: [...path, metal === null ? 'bond' : 'metal'], results: [], findings: [asked(magnesium, { metal })] }
  ]
}
