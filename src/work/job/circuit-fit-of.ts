import type { CircuitFit, FittedHeater, Run, RunPart } from '../../fitting/circuit-fit.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import { type Conductor, conductorOf, usualKind } from '../../trade/circuit/conductor.ts'

type Circuit = NonNullable<Job['circuit']>

/** The point that the source feeds. */
export const BUS = 'bus'

/** The circuit of a job, as the network is given it. */
export function circuitFitOf(job: Job, { source, runs, loads }: Circuit): CircuitFit {
  return {
    bus: BUS,
    ground: source.ground,
    busV: busOf(source),
    insideOhm: source.resistance,
    runs: runs.map(runOf),
    heaters: loads.map(load => heaterOf(job, load))
  }
}

/** Low and high are the bounds of bus, where they are given. */
function busOf({ bus, low, high }: Circuit['source']): Given {
  return new Given(bus.value, { low: low?.low ?? bus.low, high: high?.high ?? bus.high, at: bus.at })
}

function runOf({ from, to, wire, bond, through }: Circuit['runs'][number]): Run {
  const joints: readonly RunPart[] = [...(bond === null ? [] : [bond]), ...through.map(({ resistance }) => resistance)].map(jointOhm => ({
    of: 'joint',
    jointOhm
  }))
  return { from, to, parts: wire === null ? joints : [wirePart(wire), ...joints] }
}

function wirePart({ size, length: lengthM, conductor, temperature: conductorC }: NonNullable<Circuit['runs'][number]['wire']>): RunPart {
  const found = conductorOf({ size, kind: conductor ?? usualKind(size) })
  if (!found.ok) throw new Error('a job with a conductor that is not made came to be judged')
  return { of: 'wire', conductor: found.value satisfies Conductor, lengthM, conductorC }
}

function heaterOf({ holes, parts }: Job, { heater, from, to }: Circuit['loads'][number]): FittedHeater {
  const { rated } = parts[holes[heater]!.takes]!
  if (rated === null) throw new Error('a job with an unrated heater came to be judged')
  return { name: heater, from, to, powerW: rated.power, ratedV: rated.voltage, follows: followsOf(rated) }
}

/** How the resistance of a heater follows its temperature, where the job tells it. */
export function followsOf({ 'resistance-change': change }: NonNullable<Job['parts'][string]['rated']>): FittedHeater['follows'] {
  return change === null ? null : { resistanceChangePerK: change['per-kelvin'], hotC: change.hot }
}
