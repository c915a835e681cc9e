import type { Plain } from '../../../src/formula/given.ts'
import { type Fault, HEALTHY } from '../../../src/trade/proof/fault.ts'
import type { Predictor, TestPoint } from '../../../src/trade/proof/predictor.ts'
import type { Tested } from '../../../src/trade/proof/probe.ts'

/** Volts at each point. */
export type Volts = readonly number[]

/** A fault that adds its volts, times its size where it has one. */
export function adding(id: string, volts: Volts, more: Partial<Fault> = {}): Fault {
  const times = (size: number) => (more.sizes === undefined ? 1 : size)
  return {
    ...HEALTHY,
    id,
    at: id,
    kind: 'open',
    changes: (shown, size) => asTested(asVolts(shown).map((v, i) => v + times(size) * volts[i]!)),
    ...more
  }
}

/** Every point shows nought in order, each meter is off by a deviation of one volt, and no input is uncertain. */
export function addingUp(count: number): { readonly first: Predictor; readonly again: Predictor } {
  const points = Array.from({ length: count }, (_, i) => pointAt(`point ${i}`))
  const valuesOf = ({ changes }: Fault, size: number) => asVolts(changes(asTested(points.map(() => 0)), size))
  const again: Predictor = { points, told: [], valuesOf, slopesOf: () => [], settled: ({ values }) => values, drawnTo: () => again }
  return { first: { ...again }, again }
}

/** Off evenly by at most √3 V. */
function pointAt(red: string): TestPoint {
  return { takes: 'volts', red, black: 'chassis', passingA: null, meter: { accuracyPercent: 0, digitsCount: 1, resolution: Math.sqrt(3) } }
}

/** The circuit is here nothing but what it shows. */
const asTested = (volts: Volts) => volts as unknown as Plain<Tested>
const asVolts = (tested: Plain<Tested>) => tested as unknown as Volts
