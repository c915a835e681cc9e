import { showNumber } from '../../quantity/show.ts'
import { type Parameters, type Reading, riseK, slopesOf } from './heat-test-model.ts'

export interface Fitted {
  readonly parameters: Parameters
  /** By their time. */
  readonly readings: readonly Reading[]
  readonly airC: number
  readonly readingK: number
  /** The inverse of the normal equations. */
  readonly spread: Squares
  readonly curveThrough: (readings: readonly Reading[]) => { readonly parameters: Parameters; readonly spread: Squares | null } | null
}

type Three = readonly [number, number, number]
/** Three by three. */
export type Squares = readonly [Three, Three, Three]

/** Rounding. */
const NOTHING_K = 1e-6

interface Contradiction {
  readonly says: string
  /** Furthest off the curve through the others. */
  readonly worst: Reading | null
}

/** Why the readings cannot all be sound, where they contradict each other; names the one that is worst. */
export function contradiction(fitted: Fitted): Contradiction | undefined {
  const worst = farOff(fitted)
  const says = [...(worst === null ? [] : [offText(worst, fitted)]), ...fallen(fitted)]
  if (says.length === 0) return undefined
  return { worst, says: `${says.join('; ')}: more than readings good to ± ${kelvin(fitted.readingK)} can` }
}

/** The worst, where some reading lies further off than readings off by their accuracy, each the worse way, could leave it. */
function farOff({ parameters, readings, readingK, spread }: Fitted): Reading | null {
  const slopes = readings.map(({ timeS }) => slopesOf(parameters, timeS))
  const seen = slopes.map((one, i) => {
    const toward = spread.map(row => dot(row, one)) as unknown as Three
    const own = dot(toward, one)
    // A reading pulls the curve to itself and every other reading pulls it too, by these shares of what each is off.
    const pulled = slopes.reduce((sum, other) => sum + Math.abs(dot(toward, other)), 0) - Math.abs(own)
    const off = Math.abs(offK(parameters, readings[i]!))
    // A curve that passes every reading within its accuracy explains them all, however it came about.
    return {
      beyond: off > readingK * Math.max(1, Math.abs(1 - own) + pulled) + NOTHING_K,
      telling: off ** 2 / Math.max(1 - own, Number.EPSILON)
    }
  })
  if (!seen.some(({ beyond }) => beyond)) return null
  // Without this one most would be gone of what the fit leaves over.
  const most = Math.max(...seen.map(({ telling }) => telling))
  return readings[seen.findIndex(({ telling }) => telling === most)]!
}

function offText(worst: Reading, { readings, airC, curveThrough }: Fitted): string {
  const others = curveThrough(readings.filter(one => one !== worst))
  const apart = others === null ? Number.NaN : Math.abs(offK(others.parameters, worst))
  const by = Number.isFinite(apart) ? `, by ${kelvin(apart)}` : ''
  return `${named(worst, airC)} lies furthest off the curve through the others${by}`
}

/** Told where two readings off by their accuracy, each the other way, do not explain it. */
function fallen({ readings, airC, readingK }: Fitted): readonly string[] {
  let from = readings[0]!
  let fall = { from, to: from, byK: 0 }
  for (const to of readings) {
    if (to.riseK > from.riseK) from = to
    if (from.riseK - to.riseK > fall.byK) fall = { from, to, byK: from.riseK - to.riseK }
  }
  if (fall.byK <= 2 * readingK + NOTHING_K) return []
  return [`with the heater on it fell from ${named(fall.from, airC)} to ${named(fall.to, airC)}, by ${kelvin(fall.byK)}`]
}

function named({ timeS, riseK: rise }: Reading, airC: number): string {
  return `${showNumber(airC + rise, 'temperature')} °C at ${showNumber(timeS / 60, 'plain')} min`
}

function kelvin(byK: number): string {
  return `${showNumber(byK, 'difference')} K`
}

export function offK(parameters: Parameters, { timeS, riseK: rise }: Reading): number {
  return rise - riseK(parameters, timeS)
}

function dot(a: Three, b: Three): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}
