import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Unsure } from '../../rules/missing.ts'
import { HOLD_LIMITS } from '../../rules/practice/battery.ts'
import { asked } from '../../rules/rule.ts'
import { endurance } from '../../rules/supply/endurance.ts'
import { short } from '../../rules/supply/short.ts'
import type { LoadGiven } from '../../trade/supply/load.ts'
import { shedText } from '../../trade/supply/shed.ts'
import { supply } from '../../trade/supply/supply.ts'
import { SUPPLY_RESULTS } from '../results/supply-results.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { highestOf, inPosition } from './in-position.ts'
import { prefixed } from './judged-thing.ts'
import type { Placed } from './placed.ts'
import type { Position } from './positions-of.ts'
import { unfedLoads } from './unfed-loads.ts'

type Supply = NonNullable<Job['supply']>

/** Whether the machine can feed it: each thing it does, and the battery alone. */
export function judgeSupply(job: Job, given: Supply, judged: CircuitJudged | null): readonly Placed[] {
  const taken = takenFrom(given, judged)
  const phases = Object.entries(given.output).flatMap(([name, outputA]) => (outputA === null ? [] : [[name, outputA] as const]))
  const named =
    phases.length === 0 ? [nothingGiven(given, taken)] : phases.map(([name, outputA]) => phaseThing(given, name, outputA, taken))
  return [...named, batteryThing(job, given, taken)]
}

/** What all loads take, and with the switches in which position. */
interface TakenLoads {
  readonly loads: readonly LoadGiven[]
  readonly state: Position['state']
  readonly unsure: Unsure | null
}

/** In the position of the switches in which they take most. */
function takenFrom(given: Supply, judged: CircuitJudged | null): TakenLoads {
  const own = given.loads.map(ownLoad)
  if (judged === null) return { loads: own, state: null, unsure: null }
  const { circuit, positions } = judged
  const at = highestOf(positions.worked, position => meanOf(circuitLoads(circuit, position)))
  return { loads: [...circuitLoads(circuit, at), ...own], state: at.state, unsure: unfedLoads(judged) }
}

function meanOf(loads: readonly LoadGiven[]): number {
  return loads.reduce((sum, { currentA, dutyPercent }) => sum + currentA.high * dutyPercent.high, 0)
}

function ownLoad({ load, current, on, needed }: Supply['loads'][number]): LoadGiven {
  return { name: load, currentA: current, dutyPercent: on, priority: needed }
}

/** Loads of the circuit take what they were worked out to take; those in series share one current. */
function circuitLoads({ loads }: CircuitJudged['circuit'], { bounds, fit }: Position): readonly LoadGiven[] {
  return loads.map((load, i) => ({
    name: loadName(load),
    currentA: asGiven(bounds.loads[i]!.currentA, fit.loads[i]!.way?.passes.length ?? 1, load.path),
    dutyPercent: load.on,
    priority: load.needed
  }))
}

function asGiven({ value, low, high, hangsOn }: Bounded, seriesCount: number, at: Given['at']): Given {
  const assumed = hangsOn.map(({ at: from, assumed: why }) => `${from.join('.')}: ${why}`).join('; ')
  return new Given(value / seriesCount, {
    low: low / seriesCount,
    high: high / seriesCount,
    at,
    assumed: assumed === '' ? undefined : assumed
  })
}

function phaseThing({ path }: Supply, name: string, outputA: Given, taken: TakenLoads): Placed {
  const { loads, unsure } = taken
  const found = boundsOf({ outputA, loads, battery: null }, supply)
  const subject = { phase: name, ...found, unsure, shed: shedText(loads, -found.marginA.low) }
  return {
    place: `supply.${name}`,
    path: [...path, 'output', name],
    results: prefixed('supply', resultsBy(SUPPLY_RESULTS, found)),
    findings: [inPosition(asked(short, subject), taken)]
  }
}

/** Without an output nothing is judged, and the finding says how to find it. */
function nothingGiven({ path }: Supply, { loads }: TakenLoads): Placed {
  const { loadA } = boundsOf({ outputA: new Given(0), loads, battery: null }, supply)
  return { place: 'supply', path, results: [], findings: [asked(short, { phase: '', outputA: null, marginA: null, loadA, shed: '' })] }
}

function batteryThing({ job }: Job, { battery, path }: Supply, taken: TakenLoads): Placed {
  const { loads, unsure } = taken
  const given =
    battery === null
      ? null
      : { capacityAh: battery.capacity, rateS: battery.rate, peukertFactor: battery.peukert, coldPercent: battery.cold }
  const found = boundsOf({ outputA: new Given(0), loads, battery: given }, supply)
  const own = battery?.hold ?? null
  const hold = own === null ? HOLD_LIMITS[job.practice] : { timeS: own.high, says: 'as the job has it', source: SOURCES.arithmetic }
  const { marginA: _, loadA, ...rest } = found
  const results = prefixed('supply', resultsBy(SUPPLY_RESULTS, found)).filter(({ id }) =>
    ['supply.endurance', 'supply.capacity', 'supply.delivered-percent'].includes(id)
  )
  const subject = { enduranceS: rest.battery?.enduranceS ?? null, hold, loadA, unsure }
  return { place: 'supply', path, results, findings: [inPosition(asked(endurance, subject), taken)] }
}
