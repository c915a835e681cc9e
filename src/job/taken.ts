import { Given } from '../formula/given.ts'
import { KINDS } from '../quantity/kinds.ts'
import { fuseResistance } from '../trade/circuit/fuse-resistance.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { MOST_EMISSIVITY } from '../trade/heat/emissivity.ts'
import { type JobItem, unsaidAlong } from './circuit-names.ts'
import type { Path } from './field.ts'
import type { Job } from './read-job.ts'

type Circuit = NonNullable<Job['circuit']>
type JobRun = Circuit['runs'][number]
type JobWire = NonNullable<JobRun['wire']>
type JobWarm = NonNullable<Job['warm']>

/** What is taken for a field in place of its default, because something else that is told says more; null where nothing takes it. */
type Taken = readonly [path: string, given: Given | null, unit: string]

/** Of every quantity that was left out and is not taken as its default. */
export function takenOf(job: Job): readonly Taken[] {
  const { circuit, holes } = job
  const bottoms = Object.values(holes).map(({ found }) => unless(found.bottom === 'cone', found['bottom-angle']))
  const others = [...bottoms, ofWarm(job)]
  if (circuit === null) return others.flat()
  const runs = circuit.runs.map(({ wire, through }) => [
    ...(wire === null ? [] : ofWire(wire)),
    ...through.flatMap(item => ofItem(item, wire))
  ])
  return [...others, ...runs, unless(altitudeOf(job, circuit) === circuit.altitude, circuit.altitude)].flat()
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

/** Of the loss by the surface, where that is reckoned with at all. */
function ofWarm({ warm, surroundings }: Job): readonly Taken[] {
  if (warm === null) return []
  const bySurface = isLostBySurface(warm, surroundings)
  const { emissivity, path } = warm
  return [
    ...(emissivity === null && bySurface ? [taken([...path, 'emissivity'], UNTOLD_SURFACE, '')] : []),
    ...unless(bySurface, warm.machine)
  ]
}

/** A heat test gives the loss in air of its own kind; in the other kind the surface is what is left. */
function isLostBySurface({ 'heat-test': test, area }: JobWarm, surroundings: Job['surroundings']): boolean {
  if (test === null) return true
  return area !== null && (test['air-was'] === 'still' || (surroundings?.hot ?? null) !== null)
}

/** What a surface radiates of which nobody told what it is: from nothing to as much as the blackest. One for every air, as it is one surface. */
export const UNTOLD_SURFACE = new Given(0, {
  low: 0,
  high: MOST_EMISSIVITY,
  assumed: 'default: the surface is not told',
  at: ['warm', 'emissivity']
})

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

/** In the unit of its field; told where that is no quantity, or where nothing stands in it. */
function taken(path: Path, given: Given | null, unit: string = KINDS.run.house): Taken {
  return [path.join('.'), given, unit]
}
