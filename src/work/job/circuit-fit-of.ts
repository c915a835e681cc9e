import type { CircuitFit, FittedLoad, FittedSwitch, Follows, Run, RunPart, Takes } from '../../fitting/circuit.ts'
import { Given } from '../../formula/given.ts'
import { type JobItem, loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { conductorOf, usualKind } from '../../trade/circuit/conductor.ts'
import { fuseResistance } from '../../trade/circuit/fuse-resistance.ts'
import { guardings, returnPoints } from '../../trade/circuit/guarding.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { SWITCH_FACTORS, type SwitchLoad } from '../../trade/circuit/switch-factor.ts'
import { fittedProtector, fittedShorts, type Guards, ratedProtectors } from './circuit-guards.ts'
import { BUS, type JobCircuit, type JobLoad, type JobRun, namedRuns, wiringOf } from './circuit-wiring.ts'

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
  const guards: Guards = { wiring, guarding: guardings(wiring), protectors: ratedProtectors(named) }
  const runs = named.map(({ id, run }) => runOf(job, circuit, { id, run }))
  const { source } = circuit
  const fit: CircuitFit = {
    bus: BUS,
    ground: source.ground,
    busV: busOf(source),
    insideOhm: source.resistance,
    inside: source.resistance.assumed === undefined ? 'known' : 'stiff',
    others: circuit['other-sources'].map(({ what, from, to, voltage, resistance }) => ({
      id: what,
      from,
      to,
      sourceV: voltage,
      insideOhm: resistance
    })),
    runs,
    loads: circuit.loads.map(load => loadOf(job, load)),
    protectors: guards.protectors.map(one => fittedProtector(guards, one, runs)),
    switches: switchesOf(circuit, guards),
    shorts: fittedShorts(guards, runs),
    groundPoints: returnPoints(wiring)
  }
  return { fit, guards }
}

/** Low and high are the bounds of bus, where they are given. */
function busOf({ bus, low, high }: JobCircuit['source']): Given {
  return new Given(bus.value, { low: low?.low ?? bus.low, high: high?.high ?? bus.high, at: bus.at })
}

interface NamedRun {
  readonly id: string
  readonly run: JobRun
}

function runOf(job: Job, circuit: JobCircuit, { id, run: { from, to, wire, bond, through } }: NamedRun): Run {
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

/** What was not measured of a fuse is taken from its sheet, or estimated from those of others. */
function itemOhm({ resistance, style, rating }: JobItem): Given {
  if (resistance.assumed === undefined || style === null || rating === null) return resistance
  const found = fuseResistance(styleOf(style), rating.value)
  if (found === null) return resistance
  const reason = found.basis === 'published' ? 'the sheet of its rating' : 'estimated from the sheets of others'
  return new Given(found.warmOhm, {
    low: found.coldOhm,
    high: Math.max(found.coldOhm, found.warmOhm),
    assumed: `default: ${reason}`,
    at: resistance.at
  })
}

function wirePart({ job, surroundings }: Job, { altitude: own }: JobCircuit, wire: NonNullable<JobRun['wire']>): RunPart {
  const { size, length: lengthM, conductor, temperature: conductorC, ambient, insulation, bundle } = wire
  const found = conductorOf({ size, kind: conductor ?? usualKind(size) })
  if (!found.ok) throw new Error('a job with a conductor that is not made came to be judged')
  const altitude = own.assumed === undefined || surroundings === null ? own : surroundings.altitude
  const lies =
    insulation === null || ambient === null
      ? null
      : { insulationC: insulation, ambientC: ambient, bundleCount: bundle, altitudeM: altitude, practice: job.practice }
  const warmth = lies !== null && conductorC.assumed !== undefined ? 'own' : 'given'
  return { of: 'wire', conductor: found.value, lengthM, conductorC: warmth === 'own' ? lies!.ambientC : conductorC, lies, warmth }
}

function loadOf(job: Job, load: JobLoad): FittedLoad {
  const { from, to, inrush } = load
  return {
    name: loadName(load),
    from,
    to,
    takes: takesOf(job, load),
    inrush: inrush === null ? null : { times: inrush.times, lastsS: inrush.lasts }
  }
}

function takesOf({ holes, parts }: Job, { heater, current, power, voltage, resistance }: JobLoad): Takes {
  if (heater !== null) {
    const { rated } = parts[holes[heater]!.takes]!
    if (rated === null) throw new Error('a job with an unrated heater came to be judged')
    return { by: 'rated', powerW: rated.power, ratedV: rated.voltage, follows: followsOf(rated) }
  }
  if (current !== null) return { by: 'current', currentA: current }
  if (resistance !== null) return { by: 'resistance', resistanceOhm: resistance }
  if (power === null) throw new Error('a job with a load of nothing came to be judged')
  return voltage === null ? { by: 'power', powerW: power } : { by: 'rated', powerW: power, ratedV: voltage, follows: null }
}

/** How the resistance of a heater follows its temperature, where the job tells it. */
export function followsOf({ 'resistance-change': change }: NonNullable<Job['parts'][string]['rated']>): Follows | null {
  return change === null ? null : { resistanceChangePerK: change['per-kelvin'], hotC: change.hot }
}

const [, AT_28_V] = SWITCH_FACTORS

/** No factor is printed above 32 V: nothing is said of switches there. */
function switchesOf(circuit: JobCircuit, { guarding }: Guards): readonly FittedSwitch[] {
  if (busOf(circuit.source).high > AT_28_V.greatestV) return []
  return namedRuns(circuit).flatMap(({ id, run }) => {
    const behind = circuit.loads.filter(load => guarding.get(id)!.loads.includes(loadName(load)))
    return run.through.flatMap(({ switch: name }) =>
      name === null ? [] : [{ name, run: id, load: worstKind(behind), coldRatio: worstRatio(behind) }]
    )
  })
}

function worstKind(loads: readonly JobLoad[]): SwitchLoad {
  return loads.map(({ kind }) => kind).reduce<SwitchLoad>((worst, kind) => (AT_28_V[kind] > AT_28_V[worst] ? kind : worst), 'resistive')
}

function worstRatio(loads: readonly JobLoad[]): Given | null {
  return loads.flatMap(({ inrush }) => inrush?.times ?? []).toSorted((a, b) => b.high - a.high)[0] ?? null
}
