import { heldAt, testedCircuit } from '../../fitting/tested-circuit.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import { pointsOf } from '../../job/reading-links.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import type { Diagnosis, RankedFault } from '../../trade/proof/diagnosis.ts'
import type { Fault } from '../../trade/proof/fault.ts'
import { type ProbeGain, probeGains } from '../../trade/proof/next-probe.ts'
import { type Predictor, predictorOf } from '../../trade/proof/predictor.ts'
import type { Tested } from '../../trade/proof/probe.ts'
import type { TypedReading } from '../../trade/proof/read-reading.ts'
import { type ReadingLoop, readingLoops } from '../../trade/proof/reading-loops.ts'
import { type TwoFaults, twoFaults } from '../../trade/proof/two-faults.ts'
import { openRuns } from '../job/guards-in.ts'
import { onFitOf } from '../job/on-fit-of.ts'
import { type Band, bandsOf } from './bands.ts'
import { benchOf } from './bench-of.ts'
import { busReading, diagnosisOf, type Measured } from './diagnosis-of.ts'
import { type TakenReading, takenReadings } from './taken-readings.ts'
import { type NamedPoint, samePlace, testPoints } from './test-points.ts'

type Circuit = NonNullable<Job['circuit']>

/** All that is said of one circuit and its readings. */
export interface Proof {
  /** Runs that are open while it is measured. */
  readonly open: Opened
  readonly tested: Tested
  readonly points: readonly NamedPoint[]
  readonly expected: readonly Band[]
  readonly readings: readonly TakenReading[]
  /** With the bus at what was measured, where it was. */
  readonly bands: readonly Band[]
  readonly loops: readonly ReadingLoop[]
  readonly faults: readonly Fault[]
  readonly predictor: Predictor
  /** Null where nothing was measured. */
  readonly diagnosis: Diagnosis | null
  readonly two: TwoFaults | null
  /** What each point not yet measured would tell, the best first. */
  readonly next: readonly ProbeGain[]
  /** What would tell between the faults of the likeliest suspect. */
  readonly between: ProbeGain | null
}

/** What every test point should show, and what was read so far: nothing is judged yet. */
export function expectedOf(job: Job, circuit: Circuit, typed: readonly TypedReading[] = []) {
  const fit = onFitOf(job, circuit)
  const tested = testedCircuit(fit, benchOf(job).leads)
  const open = openRuns(fit)
  const points = testPoints(job, circuit, open)
  return {
    open,
    tested,
    points,
    expected: bandsOf(tested, points),
    readings: takenReadings(job, pointsOf(circuit), typed)
  }
}

/** Expected readings, and what the readings taken say of the circuit. */
export function proofOf(job: Job, circuit: Circuit, typed: readonly TypedReading[]): Proof {
  const expected = expectedOf(job, circuit, typed)
  const { open, tested, points, readings } = expected
  return {
    ...expected,
    bands: readingBands(tested, readings, busReading(circuit, readings)),
    loops: readingLoops(readings.map(({ error: errorV, ...reading }) => ({ ...reading, errorV }))),
    ...toldBy({ tested, circuit, open, readings }, points)
  }
}

/** The reading of the bus itself is held against what the source may give. */
function readingBands(tested: Tested, readings: readonly TakenReading[], bus: TakenReading | undefined): readonly Band[] {
  if (bus === undefined) return bandsOf(tested, readings)
  const { value, error, path: at } = bus
  const held = heldAt(tested, new Given(value, { low: value - error, high: value + error, at }))
  const own = readings.filter(({ path }) => path === bus.path)
  const [ownBands, bands] = [bandsOf(tested, own), bandsOf(held, readings)]
  return bands.map((band, i) => ownBands[own.indexOf(readings[i]!)] ?? band)
}

type Told = Pick<Proof, 'faults' | 'predictor' | 'diagnosis' | 'two' | 'next' | 'between'>

/** Which fault, what to measure next, and what would tell between faults that look alike. */
function toldBy(measured: Measured, points: readonly NamedPoint[]): Told {
  const { tested, readings } = measured
  const { faults, predictor, middle, diagnosis } = diagnosisOf(measured)
  const left = points.filter(point => !readings.some(reading => samePlace(point, reading) || samePlace(point, turned(reading))))
  const over = predictorOf(tested, [...readings, ...left], middle)
  const values = readings.map(({ value }) => value)
  const gains = (among: readonly RankedFault[]) => probeGains(over, among, values)
  const [suspect] = diagnosis.suspects
  const next = gains(diagnosis.suspects.flatMap(({ members }) => members))
  if (readings.length === 0) return { faults, predictor, diagnosis: null, two: null, next, between: null }
  const between = suspect!.members.length < 2 ? undefined : gains(evenly(suspect!.members))[0]
  return { faults, predictor, diagnosis, two: twoFaults(predictor, diagnosis, values), next, between: between ?? null }
}

function turned(reading: TakenReading): TakenReading {
  return { ...reading, red: reading.black, black: reading.red }
}

function evenly(members: readonly RankedFault[]): readonly RankedFault[] {
  return members.map(one => ({ ...one, probabilityRatio: 1 / members.length }))
}
