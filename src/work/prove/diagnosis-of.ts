import { type Given, plainOf } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { solveNetwork } from '../../trade/circuit/solve-network.ts'
import { type Diagnosis, diagnosed } from '../../trade/proof/diagnosis.ts'
import { everyFault } from '../../trade/proof/every-fault.ts'
import type { Fault } from '../../trade/proof/fault.ts'
import { type Predictor, predictorOf } from '../../trade/proof/predictor.ts'
import { isLive, type Tested } from '../../trade/proof/probe.ts'
import { drawnOf } from './drawn-of.ts'
import type { TakenReading } from './taken-readings.ts'

type Circuit = NonNullable<Job['circuit']>

export interface Measured {
  readonly tested: Tested
  readonly circuit: Circuit
  /** Runs that are open while it is measured. */
  readonly open: Opened
  readonly readings: readonly TakenReading[]
}

export interface Diagnosed {
  readonly faults: readonly Fault[]
  readonly predictor: Predictor
  /** Inputs that the readings settle at once: where slopes are taken. */
  readonly middle: ReadonlyMap<Given, number>
  readonly diagnosis: Diagnosis
}

/** Every single fault of a circuit held against its readings. */
export function diagnosisOf({ tested, circuit, open, readings }: Measured): Diagnosed {
  const faults = everyFault(tested, plainOf(tested).plain, drawnOf(circuit, open), readings)
  const middle = measuredMiddle(tested, circuit, busReading(circuit, readings))
  const predictor = predictorOf(tested, readings, middle)
  const values = readings.map(({ value }) => value)
  return { faults, predictor, middle, diagnosis: diagnosed(predictor, faults, values) }
}

/** A reading of the bus that can be one: the others are held against it, not against all that the source may give. */
export function busReading({ source }: Circuit, readings: readonly TakenReading[]): TakenReading | undefined {
  const at = readings.flatMap(reading => {
    if (reading.takes !== 'volts' || !isLive(reading)) return []
    if (reading.red === 'bus' && reading.black === source.ground) return [reading]
    return reading.red === source.ground && reading.black === 'bus' ? [{ ...reading, value: -reading.value }] : []
  })
  const near = at.filter(({ value }) => value > 0.5 * source.bus.value && value < 1.5 * source.bus.value)
  return near.sort((a, b) => a.error - b.error)[0]
}

/** Where the bus was measured, slopes are taken there. */
function measuredMiddle(tested: Tested, { source: { bus } }: Circuit, reading: TakenReading | undefined): ReadonlyMap<Given, number> {
  const source = tested.network.elements.find(({ kind }) => kind === 'source')
  if (reading === undefined || source?.kind !== 'source') return new Map()
  const { nodeV } = solveNetwork(plainOf(tested).plain.network)
  return new Map([[source.sourceV, (reading.value * bus.value) / nodeV['bus']!]])
}
