import { circuitFit } from '../../fitting/circuit-fit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Finding } from '../../rules/finding.ts'
import { throughThreads } from '../../rules/ground/through-threads.ts'
import { CIRCUIT_RULES, LOAD_RULES } from '../../rules/list.ts'
import type { Unsure } from '../../rules/missing.ts'
import { GROUND_LIMITS } from '../../rules/practice/ground.ts'
import { dropLimit } from '../../rules/practice/practice.ts'
import { tooFar } from '../../rules/protect/too-far.ts'
import { asked } from '../../rules/rule.ts'
import type { LoadSubject } from '../../rules/subjects.ts'
import { switchedOff } from '../../trade/circuit/guarding.ts'
import { PROTECTOR_PLACES } from '../../trade/circuit/protection-place.ts'
import { GROUND_RESULTS } from '../results/circuit-results.ts'
import { LOAD_RESULTS } from '../results/drop-results.ts'
import { devicesOf } from '../wiring/devices.ts'
import { fittedCircuit } from './circuit-fit-of.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { circuitWalk } from './circuit-walk.ts'
import type { JobCircuit, JobLoad } from './circuit-wiring.ts'
import type { Heated } from './heated-circuit-of.ts'
import { highestFed } from './highest-fed.ts'
import { bodyFindings } from './judge-bodies.ts'
import { judgeProtectors } from './judge-protectors.ts'
import { judgeWires } from './judge-wires.ts'
import type { Placed } from './placed.ts'
import { powerFindings } from './power-findings.ts'

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

export function circuitJudged(job: Job, circuit: JobCircuit, heated: Heated | null): CircuitJudged {
  const fitted = fittedCircuit(job, circuit)
  return { job, circuit, ...fitted, bounds: heated?.fed ?? boundsOf(fitted.fit, circuitFit), highest: highestFed(job, fitted.fit, heated) }
}

function loadThing(judged: CircuitJudged, load: JobLoad, bounds: CircuitJudged['bounds']['loads'][number]): Placed {
  const { job, circuit } = judged
  const unsure = unsureOf(judged, loadName(load))
  const { dropV, dropPercent } = bounds
  const limit = limitOf(job, circuit.source.bus.value, load)
  const drop = { dropV, dropPercent, limit, unsure: unsure ?? noWay(judged, loadName(load)) }
  const findings: readonly Finding[] = [
    ...(isOff(judged, load) ? [] : [...LOAD_RULES.map(rule => asked(rule, drop)), ...powerFindings(judged, load, bounds, unsure)]),
    ...bodyFindings(judged, load)
  ]
  return { place: `circuit.${loadName(load)}`, path: load.path, results: resultsBy(LOAD_RESULTS, bounds), findings }
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
function noWay({ fit }: CircuitJudged, name: string): Unsure | null {
  if (fit.loads.find(load => load.name === name)!.way !== null) return null
  return {
    says: `no source by itself drives a current through ${name} and back: there is nothing that its drop could be counted from`,
    change: 'draw the way from the plus of one source to the load, and from the load to the minus of that source'
  }
}

/** Drawn switched off it has no drop to be judged; a heater is what the job is about, and is judged as it is drawn. */
function isOff({ guards, fit }: CircuitJudged, load: JobLoad): boolean {
  const open = fit.runs.filter(({ state }) => state === 'open').map(({ id }) => id)
  return load.heater === null && switchedOff(guards.wiring, open).includes(loadName(load))
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

/** What is asked of the circuit as a whole; labels where anything carries a mark. */
function wholeThing(judged: CircuitJudged): Placed {
  const { job, circuit, bounds, guards } = judged
  const own = job.limits['ground-shift']
  const limit = own === null ? GROUND_LIMITS[job.job.practice] : { value: own.greatest.low, reason: own.reason }
  const marks = devicesOf(job)
    .filter(({ does }) => does !== 'joins')
    .map(({ mark }) => mark)
  const subject = { groundPoints: bounds.groundPoints, limit, ...circuitWalk(circuit, judged), marks, labels: circuit.labels }
  const unprotected = guards.unguarded.loads.length > 0 || guards.bare.endless
  const findings = [
    ...CIRCUIT_RULES.map(rule => asked(rule, subject)),
    ...(unprotected ? [asked(tooFar, { protector: null, unprotectedMm: null, place: PROTECTOR_PLACES[job.job.practice].open })] : [])
  ]
  return { place: 'circuit', path: circuit.path, results: [], findings }
}
