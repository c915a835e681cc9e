import { SOURCES, type Source } from '../../formula/source.ts'
import * as error from './meter-error.ts'
import type { Takes } from './reading-unit.ts'

/** What the sheet of a meter says: ± (percent of the reading + digits of the last figure). */
export interface Meter {
  readonly accuracyPercent: number
  readonly digitsCount: number
  /** One step of the last figure, in V, A or ohm; null where the meter picks its range by itself. */
  readonly resolution: number | null
  /** Why it was assumed, where nobody gave it. */
  readonly assumed?: string
  readonly source?: Source
}

/** A meter of 6000 counts goes up a range by tens: 0.6, 6, 60 of them. Below the lowest range it gets no finer. */
const COUNTS = 6000
const LOWEST_RANGE: { readonly [T in Takes]: number } = { volts: 0.6, amps: 60, ohms: 600 }

const SOURCE: { readonly [T in Takes]: Source } = {
  volts: SOURCES['hand-meter-volts'],
  amps: SOURCES['dc-clamp'],
  ohms: SOURCES['hand-meter-ohms']
}
const ACCURACY: { readonly [T in Takes]: readonly [percent: number, digits: number] } = { volts: [0.5, 2], amps: [2, 5], ohms: [0.9, 1] }

/** What is taken where nobody says which meter it is. */
export function usualMeter(takes: Takes): Meter {
  const [accuracyPercent, digitsCount] = ACCURACY[takes]
  const source = SOURCE[takes]
  return { accuracyPercent, digitsCount, resolution: null, assumed: `default: ${source.title.split(',')[0]}`, source }
}

/** How far a reading may be off to either side. */
export function meterError(takes: Takes, { accuracyPercent, digitsCount, resolution }: Meter, shown: number): number {
  const size = Math.abs(shown)
  const step = resolution ?? stepOf(takes, size)
  switch (takes) {
    case 'volts':
      return error.meterErrorV({ shownV: size, accuracyPercent, digitsCount, resolutionV: step })
    case 'amps':
      return error.meterErrorA({ shownA: size, accuracyPercent, digitsCount, resolutionA: step })
    case 'ohms':
      return error.meterErrorOhm({ shownOhm: size, accuracyPercent, digitsCount, resolutionOhm: step })
  }
}

/** One step of the last figure, in the lowest range that holds the reading. */
export function stepOf(takes: Takes, size: number): number {
  const lowest = LOWEST_RANGE[takes]
  const tens = Math.max(0, Math.ceil(Math.log10(size / lowest) - 1e-12))
  return (lowest * 10 ** tens) / COUNTS
}

/** `± (0.5 % + 2 digits)`. */
export function meterText({ accuracyPercent, digitsCount }: Meter): string {
  return `± (${accuracyPercent} % + ${digitsCount} ${digitsCount === 1 ? 'digit' : 'digits'})`
}
