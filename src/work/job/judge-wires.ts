import type { Run, RunWire } from '../../fitting/circuit.ts'
import { carries } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { resultsBy } from '../../report/result-map.ts'
import { magnesium } from '../../rules/ground/magnesium.ts'
import { throughThreads } from '../../rules/ground/through-threads.ts'
import { asked } from '../../rules/rule.ts'
import { overAmpacity } from '../../rules/wire/over-ampacity.ts'
import { shortCircuit } from '../../rules/wire/short-circuit.ts'
import { tooSmall } from '../../rules/wire/too-small.ts'
import { conductorBySize } from '../../trade/circuit/ampacity-conductor.ts'
import { smallestAllowed } from '../../trade/circuit/ampacity-smallest-wire.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { assumedOf } from '../../trade/circuit/wire-choice.ts'
import { RUN_RESULTS } from '../results/circuit-results.ts'
import { reliesOn } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { type JobRun, namedRuns } from './circuit-wiring.ts'
import type { Placed } from './placed.ts'

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
  const { currentA, spareA, ampacityA } = bounds
  const worst = worstShort(judged, id)
  const findings = [
    asked(overAmpacity, { currentA, spareA, ampacityA, ...figureOf(wired) }),
    asked(tooSmall, sizeOf(judged, wired, wire.sheathed)),
    ...shortFinding(judged, run, worst)
  ]
  return [{ place: `circuit.${id}`, path: [...path, 'wire'], results: resultsBy(RUN_RESULTS, { worst, ...bounds }), findings }]
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

function sizeOf({ job }: CircuitJudged, { conductor }: RunWire, sheathed: string) {
  const run = sheathed === 'yes' ? 'sheathed' : 'single'
  return {
    size: conductor.size.name,
    smallest: smallestAllowed({ practice: job.job.practice, conductor: conductorBySize(conductor.size), run })
  }
}

type WireShort = CircuitJudged['bounds']['shorts'][number]['wires'][number]['short']

/** Of the shorts that flow in a wire, the one that leaves it the least room. */
function worstShort(
  { bounds }: CircuitJudged,
  id: string
): (NonNullable<WireShort> & { readonly faultA: NonNullable<CircuitJudged['bounds']['shorts'][number]['faultA']> }) | null {
  const found = bounds.shorts.flatMap(({ faultA, wires }) =>
    wires.flatMap(({ id: wire, short }) => (wire !== id || short === null || faultA === null ? [] : [{ ...short, faultA }]))
  )
  return found.toSorted((a, b) => a.marginK.low - b.marginK.low)[0] ?? null
}

/** Wire before every protector is judged by how short it is; where no protector follows, there is nothing to judge by. */
function shortFinding(judged: CircuitJudged, run: Run, worst: ReturnType<typeof worstShort>) {
  const protector = reliesOn(judged.guards, run.id)
  const bare = judged.guards.guarding.get(run.id)!.guards.length === 0
  if (bare && !judged.guards.unguarded.runs.has(run.id)) return []
  const says =
    protector === undefined
      ? 'no protector of known style and rating'
      : `${protector.name}, a ${styleOf(protector.style).says} of ${protector.ratingA.value} A,`
  return [asked(shortCircuit, { short: worst, protector: says })]
}

/** A joint on the way home, its resistance known or not yet measured: what it is made to must be a ground. */
function bondThing({ guards }: CircuitJudged, id: string, { bond, metal, path }: JobRun): readonly Placed[] {
  if ((bond === null && metal === null) || guards.guarding.get(id)!.side !== 'return') return []
  return [
    { place: `circuit.${id}`, path: [...path, metal === null ? 'bond' : 'metal'], results: [], findings: [asked(magnesium, { metal })] }
  ]
}
