import { loadName, markedItem } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import type { TestPoint } from '../../trade/proof/predictor.ts'
import { isLive, type Probe } from '../../trade/proof/probe.ts'
import { benchOf } from './bench-of.ts'
import { benchMeter } from './meter-of.ts'
import { returnsOf } from './returns-of.ts'

/** A test point of a job, with what is measured there in words. */
export interface NamedPoint extends TestPoint {
  readonly says: string
}

type Circuit = NonNullable<Job['circuit']>
type Named = Probe & { readonly says: string }

/** Every point at which the finished circuit is measured: power on first, then power off. */
export function testPoints(job: Job, circuit: Circuit, open: Opened): readonly NamedPoint[] {
  const named = [
    ...liveVolts(circuit),
    ...liveAmps(circuit),
    ...coldOhms(circuit),
    ...feedOhms(circuit),
    ...groundTests(job, circuit, open)
  ]
  return named
    .filter((one, i) => named.findIndex(other => samePlace(one, other)) === i)
    .map(one => ({ ...one, meter: benchMeter(job, one.takes) }))
}

/** Whether two readings are taken at one place in one way. */
export function samePlace(a: Probe, b: Probe): boolean {
  return a.takes === b.takes && a.red === b.red && a.black === b.black && (a.passingA === null) === (b.passingA === null)
}

function liveVolts({ source, runs, loads }: Circuit): readonly Named[] {
  const at = (red: string, black: string, says: string): Named => ({ takes: 'volts', red, black, passingA: null, says })
  return [
    at('bus', source.ground, 'bus'),
    ...loads.map(load => at(load.from, load.to, `at ${loadName(load)}`)),
    ...runs.map(({ from, to, wire, through, bond }) => at(from, to, `drop: ${partsText({ wire, through, bond })}`))
  ]
}

type RunParts = Pick<Circuit['runs'][number], 'wire' | 'through' | 'bond'>

function partsText({ wire, through, bond }: RunParts): string {
  return [
    ...(wire === null ? [] : [wire.size.name]),
    ...through.map(item => markedItem(item).what),
    ...(bond === null ? [] : ['bond'])
  ].join(', ')
}

/** The feed is measured on the one lead that leaves the bus, else on the lead of the source. */
function liveAmps({ source, runs, loads }: Circuit): readonly Named[] {
  const at = (red: string, black: string, says: string): Named => ({ takes: 'amps', red, black, passingA: null, says })
  const leaving = [...runs, ...loads].filter(({ from, to }) => from === 'bus' || to === 'bus')
  const [only, ...others] = leaving
  const away = only === undefined || others.length > 0 ? undefined : only.from === 'bus' ? only.to : only.from
  return [
    away === undefined || away === source.ground ? at(source.ground, 'bus', 'feed, at the source') : at('bus', away, 'feed'),
    ...loads.map(load => at(load.from, load.to, `through ${loadName(load)}`))
  ]
}

function coldOhms({ loads }: Circuit): readonly Named[] {
  // What electronics reads cold tells nothing of what it takes.
  const resistances = loads.filter(({ current, power, voltage }) => current === null && (power === null || voltage !== null))
  return resistances.map(load => ({
    takes: 'ohms',
    red: load.from,
    black: load.to,
    passingA: null,
    says: `${loadName(load)} cold, one lead off`
  }))
}

/** From each feed to the 0 V node: a short to ground shows here when its fuse is open. */
function feedOhms({ source, loads, 'other-sources': others }: Circuit): readonly Named[] {
  return loads
    .filter(({ to }) => to !== source.ground)
    .map(({ from }) => ({
      takes: 'ohms',
      red: from,
      black: source.ground,
      passingA: null,
      says: `${from} to ground through the circuit, ${others.length === 0 ? 'source' : 'every source'} off`
    }))
}

/** From each return to the 0 V node, a known current passed. */
function groundTests(job: Job, circuit: Circuit, open: Opened): readonly Named[] {
  const passingA = benchOf(job).testCurrent.value
  return returnsOf(circuit, open).map(to => ({
    takes: 'volts',
    red: to,
    black: circuit.source.ground,
    passingA,
    says: `ground of ${to}, ${passingA} A passed, power off`
  }))
}

/** `power on` or `power off`, as it stands in a table. */
export function powerText(probe: Probe): 'on' | 'off' {
  return isLive(probe) ? 'on' : 'off'
}
