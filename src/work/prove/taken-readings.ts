import type { Path } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import { takesOf } from '../../job/reading-links.ts'
import { type Meter, meterError } from '../../trade/proof/meter.ts'
import { readPoints } from '../../trade/proof/points.ts'
import type { TestPoint } from '../../trade/proof/predictor.ts'
import type { TypedReading } from '../../trade/proof/read-reading.ts'
import { benchMeter, meterOf } from './meter-of.ts'

/** A reading that was taken, with what it may be off. */
export interface TakenReading extends TestPoint {
  readonly value: number
  readonly error: number
  readonly path: Path
}

interface Amount {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** The readings of a job, then those of the command line. */
export function takenReadings(job: Job, points: readonly string[], typed: readonly TypedReading[]): readonly TakenReading[] {
  return [
    ...job.readings.map(reading => fromJob(job, reading, points)),
    ...typed.map(({ amount, red, black, takes, passingA }, i) =>
      taken({ red, black, takes, passingA, meter: boundedMeter(amount) ?? benchMeter(job, takes) }, amount, ['--reading', i])
    )
  ]
}

function fromJob(job: Job, reading: Job['readings'][number], points: readonly string[]): TakenReading {
  const [takes] = takesOf(reading)
  const places = readPoints(reading.at, points)
  if (takes === undefined || !places.ok) throw new Error('a job with a broken reading came to be proved')
  const amount = reading[takes]!
  const meter = boundedMeter(amount) ?? (reading.meter === null ? benchMeter(job, takes) : meterOf(reading.meter))
  return taken({ ...places.value, takes, passingA: reading.passing?.value ?? null, meter }, amount, [...reading.path, takes])
}

function taken(point: TestPoint, { value }: Amount, path: Path): TakenReading {
  return { ...point, value, error: meterError(point.takes, point.meter, value), path }
}

/** A reading with bounds of its own says itself how far it may be off. */
function boundedMeter({ value, low, high }: Amount): Meter | null {
  return low < high ? { accuracyPercent: 0, digitsCount: 1, resolution: Math.max(value - low, high - value) } : null
}
