import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Finding } from '../../rules/finding.ts'
import { throughThreads } from '../../rules/ground/through-threads.ts'
import { CIRCUIT_RULES, LOAD_RULES } from '../../rules/list.ts'
import type { Unsure } from '../../rules/missing.ts'
import { dropLimit } from '../../rules/practice/practice.ts'
import { tooFar } from '../../rules/protect/too-far.ts'
import { asked } from '../../rules/rule.ts'
import type { LoadSubject } from '../../rules/subjects.ts'
import { PROTECTOR_PLACES } from '../../trade/circuit/protection-place.ts'
import { GROUND_RESULTS } from '../results/circuit-results.ts'
import { LOAD_RESULTS } from '../results/drop-results.ts'
import { devicesOf } from '../wiring/devices.ts'
import { fittedCircuit } from './circuit-fit-of.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { circuitWalk } from './circuit-walk.ts'
import type { JobCircuit, JobLoad } from './circuit-wiring.ts'
import { drawnIn } from './drawn-in.ts'
import { highestFed } from './highest-fed.ts'
import { feeding, inPosition, loadIn } from './in-position.ts'
import { bodyFindings } from './judge-bodies.ts'
import { judgeProtectors } from './judge-protectors.ts'
import { judgeWires } from './judge-wires.ts'
import { partedCircuit } from './parted-circuit.ts'
import type { Placed } from './placed.ts'
import { openNames } from './position-name.ts'
import { type Position, positionsOf } from './positions-of.ts'
import { powerFindings } from './power-findings.ts'
import { reversedBy } from './reversed-by.ts'
import { shiftFinding } from './shift-finding.ts'
import { unfedLoad } from './unfed-loads.ts'

/** Every thing of the circuit under its name: loads, wires, protectors and switches, ground points, and the whole. */
export function judgeCircuit(judged: CircuitJudged): readonly Placed[] {
  const { circuit } = judged
  return [
    ...circuit.loads.map((load, i) => loadThing(judged, load, judged.bounds.loads[i]!)),
    ...judgeWires(judged),
    ...judgeProtectors(judged),
    ...groundThings(judged),
    wholeThing(judged)
  ]
}

export function circuitJudged(job: Job, drawn: JobCircuit): CircuitJudged {
  const circuit = partedCircuit(drawn, PROTECTOR_PLACES[job.job.practice])
  const fitted = fittedCircuit(job, circuit)
  const positions = positionsOf({ job, circuit, fitted })
  const [{ bounds }] = positions.worked
  return { job, circuit, ...fitted, bounds, positions, highest: highestFed(job, positions.worked) }
}

/** Its results are those of the circuit as drawn; it is judged where its switches feed it, its drop where most is lost. */
function loadThing(judged: CircuitJudged, load: JobLoad, drawn: CircuitJudged['bounds']['loads'][number]): Placed {
  const { job, circuit } = judged
  const name = loadName(load)
  const { first, most } = feeding(judged, name)
  const { dropV, dropPercent, atV } = loadIn(most, name)
  const unsure = unsureOf(judged, name) ?? unfedLoad(judged, name)
  const drop = {
    load: name,
    dropV,
    dropPercent,
    atV,
    limit: limitOf(job, circuit.source.bus.value, load),
    unsure: unsure ?? noWay(first, name),
    reversedBy: reversedBy(most, name)
  }
  const findings: readonly Finding[] = [
    ...LOAD_RULES.map(rule => inPosition(asked(rule, drop), most)),
    ...powerFindings(judged, load, unsure),
    ...bodyFindings(judged, load)
  ]
  return { place: `circuit.${name}`, path: load.path, results: resultsBy(LOAD_RESULTS, drawn), findings }
}

/** Threads are never counted on: what comes back through them alone may get nothing. */
function unsureOf({ guards }: CircuitJudged, name: string): Unsure | null {
  const found = guards.threads.loads.find(load => load.name === name)
  if (found === undefined) return null
  return {
    says: `${name} comes back through threads alone (${found.runs.join(', ')}): what it gets is not known`,
    change: throughThreads.change
  }
}

/** Between two sources, or two loads, no source is the one that its drop counts from. */
function noWay({ fit: { loads } }: Position, name: string): Unsure | null {
  if (loads.find(load => load.name === name)!.way !== null) return null
  return {
    says: `no source by itself drives a current through ${name} and back: there is nothing that its drop could be counted from`,
    change: 'draw the way from the plus of one source to the load, and from the load to the minus of that source'
  }
}

/** A limit that the job gives itself goes before that of the practice. */
function limitOf({ limits, job }: Job, busV: number, { duty }: JobLoad): LoadSubject['limit'] {
  if (limits.drop !== null) return { value: limits.drop.greatest.low, unit: '%', reason: limits.drop.reason }
  return dropLimit(job.practice, busV, duty) ?? null
}

function groundThings({ circuit, bounds }: CircuitJudged): readonly Placed[] {
  return bounds.groundPoints.map(point => ({
    place: `circuit.${point.point}`,
    path: [...circuit.path, 'source', 'ground'],
    results: resultsBy(GROUND_RESULTS, point),
    findings: []
  }))
}

/** Said beside results that are those of a circuit that is off. */
function drawnOpen({ circuit, fit }: CircuitJudged): readonly string[] {
  const off = openNames(circuit, fit)
  if (off.length === 0) return []
  return [
    `${off.join(' and ')} drawn open: results of the circuit are those with it open; it is judged closed as well, and warm-up and supply are reckoned so`
  ]
}

/** What is asked of the circuit as a whole; labels where anything carries a mark. */
function wholeThing(judged: CircuitJudged): Placed {
  const { job, circuit, guards } = judged
  const marks = devicesOf(job)
    .filter(({ does }) => does !== 'joins')
    .map(({ mark }) => mark)
  const subject = { ...circuitWalk(judged), ...drawnIn(judged), marks, labels: circuit.labels }
  const unprotected = guards.unguarded.loads.length > 0 || guards.bare.endless
  const findings = [
    shiftFinding(judged),
    ...CIRCUIT_RULES.map(rule => asked(rule, subject)),
    ...judged.positions.unanswered,
    ...(unprotected ? [asked(tooFar, { protector: null, unprotectedMm: null, place: PROTECTOR_PLACES[job.job.practice].open })] : [])
  ]
  return { place: 'circuit', path: circuit.path, results: [], findings, cautions: drawnOpen(judged) }
}
