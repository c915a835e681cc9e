import type { CircuitFit, Run, RunPart } from '../../fitting/circuit.ts'
import { sourceId } from '../../fitting/circuit-parts.ts'
import { Given } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { altitudeOf, itemOhm, warmsItself } from '../../job/taken.ts'
import { type ByThreads, byThreads } from '../../trade/circuit/by-threads.ts'
import { closedRuns } from '../../trade/circuit/closings.ts'
import { AS_SOLID, conductorOf, usualKind } from '../../trade/circuit/conductor.ts'
import { guardings, looseEnd, returnPoints, type Wiring } from '../../trade/circuit/guarding.ts'
import { PROTECTOR_PLACES } from '../../trade/circuit/protection-place.ts'
import { closedTogether } from '../../trade/circuit/short-ways.ts'
import { turnedSource } from '../../trade/circuit/turned-source.ts'
import { unguardedOf } from '../../trade/circuit/unguarded.ts'
import { busOf } from './bus-of.ts'
import { carriedBy } from './carried-by.ts'
import { type Guards, ratedProtectors } from './circuit-guards.ts'
import { BUS, type JobCircuit, type JobRun, namedRuns, wiringOf } from './circuit-wiring.ts'
import { feedingGroups } from './feeding-groups.ts'
import { fittedProtector } from './fitted-protector.ts'
import { fittedShorts } from './fitted-shorts.ts'
import { countedIn, guardsIn, openRuns, wayIn } from './guards-in.ts'
import { loadOf } from './load-of.ts'
import { PieceLength } from './piece-length.ts'
import { inClosings } from './short-closings.ts'
import { switchesOf } from './switches-of.ts'
import { switchingOf } from './switching-of.ts'
import { bareWireOf } from './wire-before.ts'

export interface FittedCircuit {
  readonly fit: CircuitFit
  readonly guards: Guards
}

/** The circuit of a job, as the network is given it. */
export function circuitFitOf(job: Job, circuit: JobCircuit): CircuitFit {
  return fittedCircuit(job, circuit).fit
}

/** The same, with what hangs on what. */
export function fittedCircuit(job: Job, circuit: JobCircuit): FittedCircuit {
  const named = namedRuns(circuit)
  const wiring = wiringOf(circuit)
  refuseLooseEnd(circuit, wiring)
  refuseTurnedSource(circuit, wiring)
  const threads = threadsOf(circuit, wiring)
  const protectors = ratedProtectors(named)
  const runs = named.map(
    ({ id, run }): Run => ({
      ...runOf(job, circuit, { id, run }),
      counted: threads.open.has(id) ? 'no' : 'yes'
    })
  )
  const guards: Guards = {
    wiring,
    threads,
    guarding: guardedBy(wiring, threads),
    groups: feedingGroups(wiring, protectors, wireLengths(named)),
    unguarded: unguardedOf(wiring),
    protectors,
    bare: bareWireOf(circuit, PROTECTOR_PLACES[job.job.practice], id => carriedBy(runs.find(run => run.id === id)!))
  }
  const { source } = circuit
  const open = openRuns({ runs })
  const drawn = guardsIn(guards, open)
  const loads = circuit.loads.map(load => ({ ...loadOf(job, load), way: wayIn(guards, open, loadName(load)) }))
  const switching = switchingOf(circuit, countedIn(guards))
  const together = closedTogether(switching)
  const fit: CircuitFit = {
    bus: BUS,
    ground: source.ground,
    busV: busOf(source),
    insideOhm: source.resistance,
    inside: source.resistance.assumed === undefined ? 'known' : 'stiff',
    others: circuit['other-sources'].map(({ what, from, to, voltage, resistance }) => ({
      id: sourceId(what),
      what,
      from,
      to,
      sourceV: voltage,
      insideOhm: resistance
    })),
    runs,
    loads,
    protectors: guards.protectors.map(one => ({ ...fittedProtector(guards, one, runs), loads: drawn.guarding.get(one.run)!.loads })),
    switches: switchesOf(circuit, drawn),
    shorts: inClosings(switching, { protectors, together }, fittedShorts(guards, runs, loads)),
    closedTogether: together.map(open => [...open]),
    groundPoints: returnPoints(wiring)
  }
  return { fit, guards }
}

/** What comes back through the threads of a part. */
export function threadsOf(circuit: JobCircuit, wiring: Wiring = wiringOf(circuit)): ByThreads {
  const threads = namedRuns(circuit).flatMap(({ id, run }) => (run.threads === 'yes' ? [id] : []))
  return byThreads(withOthers(circuit, wiring), threads)
}

/** What hangs on a run hangs on it whatever threads there are beside it. */
function guardedBy(wiring: Wiring, { open }: ByThreads): Guards['guarding'] {
  if (open.size === 0) return guardings(wiring)
  return new Map([...guardings(wiring), ...guardings({ ...wiring, runs: closedRuns(wiring.runs, open) })])
}

/** Sources as ways: no run is without a name. */
function withOthers(circuit: JobCircuit, wiring: Wiring): Wiring {
  const sources = circuit['other-sources'].map(({ from, to }) => ({ id: '', from, to, protects: 'no' as const }))
  return { ...wiring, runs: [...wiring.runs, ...sources] }
}

/** A load with an end that leads nowhere gets nothing, whatever its wires are: what is missing is a run. */
function refuseLooseEnd(circuit: JobCircuit, wiring: Wiring): void {
  const loose = looseEnd(withOthers(circuit, wiring))
  if (loose === null) return
  const { load, point, other } = loose
  throw new NoAnswer(
    `no run leads from "${point}" to "${other}": load ${load} gets nothing`,
    `draw what joins them under circuit.runs, as { from: ${point}, to: ${other}, wire: { size: 1.5 mm2, length: 2 m } }`
  )
}

/** A battery that is put in the wrong way round is no matter of figures. */
function refuseTurnedSource({ source: { ground }, 'other-sources': sources }: JobCircuit, { runs }: Wiring): void {
  const turned = turnedSource({ bus: BUS, ground, runs }, sources)
  if (turned === undefined) return
  const { what, from, to } = turned
  throw new NoAnswer(
    `${what} is drawn the wrong way round: its minus, "${from}", is joined to the bus, its plus, "${to}", to the 0 V node`,
    `draw it from its minus to its plus, as { from: ${to}, to: ${from} }, and see that it is connected so before anything is closed`
  )
}

function wireLengths(named: readonly NamedRun[]): ReadonlyMap<string, number> {
  return new Map(named.flatMap(({ id, run: { wire } }) => (wire === null ? [] : [[id, wire.length.value]])))
}

interface NamedRun {
  readonly id: string
  readonly run: JobRun
}

function runOf(job: Job, circuit: JobCircuit, { id, run: { from, to, wire, bond, through } }: NamedRun): Omit<Run, 'counted'> {
  const joints: readonly RunPart[] = [...(bond === null ? [] : [bond]), ...through.map(itemOhm)].map(jointOhm => ({
    of: 'joint',
    jointOhm
  }))
  return {
    id,
    from,
    to,
    parts: wire === null ? joints : [wirePart(job, circuit, wire), ...joints],
    state: through.some(({ state }) => state === 'open') ? 'open' : 'closed'
  }
}

function wirePart(all: Job, circuit: JobCircuit, wire: NonNullable<JobRun['wire']>): RunPart {
  const { size, length: lengthM, conductor, temperature: conductorC, ambient, insulation, bundle } = wire
  const { practice } = all.job
  const kind = conductor ?? usualKind(size, practice)
  const found = conductorOf({ size, kind })
  if (!found.ok) throw new Error('a job with a conductor that is not made came to be judged')
  const lies =
    insulation === null || ambient === null
      ? null
      : { insulationC: insulation, ambientC: ambient, bundleCount: bundle, altitudeM: altitudeOf(all, circuit), practice }
  const warmth = warmsItself(wire) ? 'own' : 'given'
  const assumed = conductor === null && kind === 'solid' ? `default: ${AS_SOLID}` : undefined
  const strandFactor = new Given(1, { assumed, at: [...wire.path, 'conductor'] })
  return {
    of: 'wire',
    conductor: found.value,
    strandFactor,
    ...(lengthM instanceof PieceLength ? { lengthM: lengthM.toM, beginsM: lengthM.fromM } : { lengthM, beginsM: null }),
    conductorC: warmth === 'own' ? lies!.ambientC : conductorC,
    lies,
    warmth
  }
}
