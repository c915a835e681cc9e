import { contradiction, type Fitted, offK } from './heat-test-doubts.ts'
import type { Parameters, Reading } from './heat-test-model.ts'

interface Doubt {
  /** What is wrong with the readings. */
  readonly found: string
  /** What is assumed where they are gone on with all the same. */
  readonly says: string
  /** What to do about it. */
  readonly change: string
}

/** A curve of three figures needs one reading more to be doubted. */
const LEAST_LEFT = 4

const MEASURE_AGAIN = 'look at the reading that is named, and measure again'
const LEAVE_OUT =
  'leave out the first minutes of the heat test, the times still counted from switch-on, with five readings or more after them'

/** Whether its readings contradict each other, and whether the one thing that is wrong is that the first of them lag behind. */
export function doubtOf(fitted: Fitted, airK: number): Doubt | undefined {
  const all = contradiction(fitted)
  if (all === undefined) return undefined
  const late = lagging(fitted, all.worst, airK)
  if (late === 0) return { found: all.says, says: `that all of them are sound, though ${all.says}`, change: MEASURE_AGAIN }
  const first = late === 1 ? 'the first reading lags' : `the first ${late} readings lag`
  const found = `${first} behind (the heat is on its way from the heater to the thermometer)`
  return { found, says: `that the metal warms at once, though ${found}`, change: LEAVE_OUT }
}

/** How many of the first readings lag behind, where the others without them agree; none where something else is wrong. */
function lagging(fitted: Fitted, worst: Reading | null, airK: number): number {
  const { readings } = fitted
  const most = Math.min(Math.floor(readings.length / 3), readings.length - LEAST_LEFT)
  for (let count = 1; count <= most; count++) {
    const rest = readings.slice(count)
    const parameters = agreeing(fitted, rest)
    if (parameters === null) continue
    const first = readings.slice(0, count)
    const isOther = worst !== null && !first.includes(worst) && agreeing(fitted, without(readings, worst)) !== null
    return !isOther && areLate(first, parameters, fitted.readingK, airK) ? count : 0
  }
  return 0
}

function without(readings: readonly Reading[], one: Reading): readonly Reading[] {
  return readings.filter(other => other !== one)
}

/** The curve through readings that do not contradict each other. */
function agreeing(fitted: Fitted, readings: readonly Reading[]): Parameters | null {
  const { parameters, spread } = fitted.curveThrough(readings) ?? {}
  if (parameters === undefined || spread === undefined || spread === null) return null
  return contradiction({ ...fitted, parameters, spread, readings }) === undefined ? parameters : null
}

/**
 * What lags follows a curve that begins late: drawn back to switch-on it is below the air. The first readings, which began as the air,
 * lie above it, and by no more than it is below the air at switch-on.
 */
function areLate(first: readonly Reading[], parameters: Parameters, readingK: number, airK: number): boolean {
  const [, , startRiseK] = parameters
  return first.every(one => {
    const off = offK(parameters, one)
    return off >= -readingK && off <= readingK + airK - startRiseK
  })
}
