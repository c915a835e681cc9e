import { Given } from '../formula/given.ts'
import { fuseResistance } from '../trade/circuit/fuse-resistance.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { type JobItem, unsaidAlong } from './circuit-names.ts'
import type { Path } from './field.ts'
import type { Job } from './read-job.ts'

type Circuit = NonNullable<Job['circuit']>
type JobRun = Circuit['runs'][number]
type JobWire = NonNullable<JobRun['wire']>

/** What is taken for a field in place of its default, because something else that is told says more; null where nothing takes it. */
type Taken = readonly [path: string, given: Given | null]

/** Of every quantity that was left out and is not taken as its default. */
export function takenOf(job: Job): readonly Taken[] {
  const { circuit, holes } = job
  const bottoms = Object.values(holes).map(({ found }) => unless(found.bottom === 'cone', found['bottom-angle']))
  if (circuit === null) return bottoms.flat()
  const runs = circuit.runs.map(({ wire, through }) => [
    ...(wire === null ? [] : ofWire(wire)),
    ...through.flatMap(item => ofItem(item, wire))
  ])
  return [...bottoms, ...runs, unless(altitudeOf(job, circuit) === circuit.altitude, circuit.altitude)].flat()
}

/** Of the circuit where it is said there, else of the surroundings. */
export function altitudeOf({ surroundings }: Job, { altitude }: Circuit): Given {
  return altitude.assumed === undefined || surroundings === null ? altitude : surroundings.altitude
}

/** Whether the temperature of a wire is worked out from its current and how it lies. */
export function warmsItself({ temperature, insulation, ambient }: JobWire): boolean {
  return insulation !== null && ambient !== null && temperature.assumed !== undefined
}

/** What was not measured of a fuse is taken from its sheet, or estimated from those of others. */
export function itemOhm({ resistance, style, rating }: JobItem): Given {
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

function ofWire(wire: JobWire): readonly Taken[] {
  const loaded = wire.insulation !== null && wire.ambient !== null
  return [...unless(!warmsItself(wire), wire.temperature), ...unless(loaded, wire.bundle)]
}

/** A fuse or breaker has a place on the wire of its run; nobody asks how warm another part is. */
function ofItem(item: JobItem, wire: JobWire | null): readonly Taken[] {
  const { fuse, breaker, along, at, path } = item
  const protects = (fuse ?? breaker) !== null
  const ohm = itemOhm(item)
  return [
    ...(ohm === item.resistance ? [] : [taken([...path, 'resistance'], ohm)]),
    ...unless(protects, at),
    ...(protects && wire !== null && along === null ? [taken([...path, 'along'], unsaidAlong(wire.length, path))] : [])
  ]
}

/** Nothing where a field is asked for, or was told. */
function unless(isAsked: boolean, { assumed, at }: Given): readonly Taken[] {
  return isAsked || assumed === undefined ? [] : [taken(at, null)]
}

function taken(path: Path, given: Given | null): Taken {
  return [path.join('.'), given]
}
