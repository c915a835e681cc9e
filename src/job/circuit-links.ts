import { showNumber } from '../quantity/show.ts'
import { conductorOf, usualKind } from '../trade/circuit/conductor.ts'
import { loadName, markedItem } from './circuit-names.ts'
import { oneOf, twice } from './link.ts'
import { ratedLinks } from './rated-link.ts'
import type { Job } from './read-job.ts'
import { throughLinks } from './through-links.ts'
import { type LinkFault, unknownName } from './unknown-name.ts'

type Circuit = NonNullable<Job['circuit']>
type JobLoad = Circuit['loads'][number]
type JobRun = Circuit['runs'][number]

export function circuitLinks(job: Job): readonly LinkFault[] {
  const { circuit } = job
  if (circuit === null) return []
  const { source, 'other-sources': others, loads, runs, cranking, labels, path } = circuit
  const items = runs.flatMap(({ through }) => through.map(item => ({ ...markedItem(item), at: item.path })))
  const marks = items.filter(({ does }) => does !== 'joins').map(({ mark, at }) => [mark, at] as const)
  return [
    ...busLinks(source),
    ...twice(
      others.map(({ what, path: at }) => [what, [...at, 'what']]),
      'source'
    ),
    ...loads.flatMap(load => loadLinks(job, load)),
    ...runs.flatMap(run => runLinks(job.job.practice, run)),
    ...twice(
      loads.map(load => [loadName(load), load.path]),
      'load'
    ),
    ...twice(marks, 'part'),
    ...Object.keys(labels).flatMap(mark =>
      unknownName(
        mark,
        items.map(({ mark: known }) => known),
        { what: 'switch, fuse or breaker', named: 'in a run, as "through: [{ switch: S4, rating: 16 A }]"' },
        [...path, 'labels', mark]
      )
    ),
    ...(cranking === null
      ? []
      : unknownName(cranking.at, [...new Set(runs.flatMap(({ from, to }) => [from, to]))], { what: 'point' }, [...cranking.path, 'at']))
  ]
}

/** Low and high are the bounds of bus: within those that bus has itself, they would make less of what was measured. */
function busLinks({ bus, low, high, path }: Circuit['source']): readonly LinkFault[] {
  const bounds = bus.low < bus.value || bus.high > bus.value
  const [lowest, highest] = bounds ? [`the low end of bus, ${volts(bus.low)},`, `the high end of bus, ${volts(bus.high)},`] : ['bus', 'bus']
  if (low !== null && low.low > bus.low + ROUNDING_V)
    return [
      {
        found: `a lowest bus above ${bounds ? `what bus may be, ${volts(bus.low)}` : 'the bus'}`,
        accepted: `low at ${lowest} or below`,
        path: [...path, 'low']
      }
    ]
  if (high !== null && high.high < bus.high - ROUNDING_V)
    return [
      {
        found: `a highest bus below ${bounds ? `what bus may be, ${volts(bus.high)}` : 'the bus'}`,
        accepted: `high at ${highest} or above`,
        path: [...path, 'high']
      }
    ]
  return []
}

const ROUNDING_V = 1e-9

function volts(busV: number): string {
  return `${showNumber(busV, 'plain')} V`
}

function loadLinks(job: Job, load: JobLoad): readonly LinkFault[] {
  const { heater, load: other, path, current, power, resistance, voltage, 'least-power': leastPower } = load
  const either = oneOf({ heater, load: other }, path)
  if (either.length > 0) return either
  if (heater === null) {
    const takes = oneOf({ current, power, resistance }, path)
    const lone =
      voltage !== null && power === null ? [{ found: 'voltage without power', accepted: 'the power at that voltage as well', path }] : []
    return [...takes, ...lone]
  }
  const given = Object.entries({ current, power, resistance, voltage }).flatMap(([field, value]) => (value === null ? [] : [field]))
  if (given.length > 0)
    return [{ found: `${given.join(' and ')} of a heater`, accepted: 'rated: { power, voltage } of its part alone', path }]
  if (leastPower !== null)
    return [{ found: 'least-power of a heater in the circuit', accepted: 'least-power of its part alone', path: [...path, 'least-power'] }]
  return ratedLinks(job, heater, [...path, 'heater'])
}

function runLinks(practice: Job['job']['practice'], { wire, bond, through, path }: JobRun): readonly LinkFault[] {
  const items = through.flatMap(({ what, fuse, breaker, switch: switched, thermostat, path: at }) =>
    oneOf({ what, fuse, breaker, switch: switched, thermostat }, at)
  )
  if (wire === null && bond === null && through.length === 0)
    return [{ found: 'a run of nothing', accepted: 'wire, bond or through', path }]
  const places = through.flatMap(item => throughLinks(item, wire))
  if (wire === null) return [...items, ...places]
  const conductor = conductorOf({ size: wire.size, kind: wire.conductor ?? usualKind(wire.size, practice) })
  const made = conductor.ok ? [] : [{ ...conductor.fault, path: [...wire.path, 'size'] }]
  return [...items, ...places, ...made]
}

/** Loads of the circuit are counted by themselves: one of the same name would be counted twice. */
export function supplyLinks({ circuit, supply }: Job): readonly LinkFault[] {
  if (supply === null) return []
  const wired = (circuit?.loads ?? []).map(load => [loadName(load), load.path] as const)
  const all = [...wired, ...supply.loads.map(load => [load.load, load.path] as const)]
  // Of the loads that are wired it is told with the circuit.
  return twice(all, 'load').filter(({ path }) => path[0] === 'supply')
}
