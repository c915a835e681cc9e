// table: how far beyond its bounds readings put a source, by hand on meters that are off by one volt
import { describe, expect, it } from 'vitest'
import { type FaultKind, HEALTHY } from '../../../src/trade/proof/fault.ts'
import type { Predicted } from '../../../src/trade/proof/predictor.ts'
import { farOff, logLikelihoodOf, type Told } from '../../../src/trade/proof/told-bounds.ts'
import { addingUp } from './adding-up.ts'

const asked = (
  told: readonly Told[],
  slopes: Predicted['slopes'],
  readings: readonly number[],
  kind: FaultKind | 'healthy' = 'healthy'
) => {
  const predictor = { ...addingUp(readings.length).first, told }
  const predicted = { values: readings.map(() => 0), slopes }
  return { far: farOff(predictor, predicted, readings), log: logLikelihoodOf(predictor, predicted, readings, kind) }
}

// A deviation of the source moves the reading by 2 V, the meter by 1 V: a variance of 4 + 1. Of x volts the source has 2x/5 deviations,
// and a fifth of its variance is left open. Even bounds end √3 deviations from their middle.
describe('one reading, which the source moves twice as much as the meter', () => {
  const SOURCE = [{ row: 0, roundingDeviations: 0.1 }]
  const EDGE = Math.sqrt(3)

  it.each([0, 4, -4.3])('%d V lie within its bounds: as far off as a bell curve has it', volts => {
    const { far, log } = asked(SOURCE, [[2]], [volts])
    expect(far).toBeCloseTo(volts ** 2 / 5, 12)
    expect(log).toBeCloseTo(-(volts ** 2) / 10 - 0.5 * Math.log(5) - 0.5 * Math.log(2 * Math.PI), 12)
  })

  it.each([5, -5, 12])('%d V lie beyond: farther off by what is beyond, in what is left open and the rounding', volts => {
    const more = ((2 * Math.abs(volts)) / 5 - EDGE) ** 2 / (0.2 + 0.01)
    const { far, log } = asked(SOURCE, [[2]], [volts])
    expect(far).toBeCloseTo(volts ** 2 / 5 + more, 10)
    expect(log).toBeCloseTo(-0.5 * (volts ** 2 / 5 + more) - 0.5 * Math.log(5) - 0.5 * Math.log(2 * Math.PI), 10)
  })

  it('beside another fault it speaks no more against it than a source that is off beside it does: 3 of 100, and one of 100 voltages', () => {
    const plain = (volts: number) => -(volts ** 2) / 10 - 0.5 * Math.log(5) - 0.5 * Math.log(2 * Math.PI)
    expect(asked(SOURCE, [[2]], [12], 'bad-ground').log).toBeCloseTo(plain(12) + Math.log(0.0003), 10)
    expect(asked(SOURCE, [[2]], [5], 'bad-ground').log).toBe(asked(SOURCE, [[2]], [5]).log)
  })

  it('what is no source keeps its tails', () => {
    expect(asked([], [[2]], [12]).far).toBeCloseTo(144 / 5, 12)
  })

  it('and so does what the fault puts in place of the source', () => {
    expect(asked(SOURCE, [[0]], [12]).far).toBeCloseTo(144, 12)
  })
})

it('each of two sources for itself', () => {
  // Each moves its own reading twice as much as the meter.
  const told = [0, 1].map(row => ({ row, roundingDeviations: 0 }))
  const apart = [
    [2, 0],
    [0, 2]
  ]
  const one = (volts: number) => (volts * 0.4 > Math.sqrt(3) ? (0.4 * volts - Math.sqrt(3)) ** 2 / 0.2 : 0)
  expect(asked(told, apart, [6, 1]).far).toBeCloseTo(36 / 5 + 1 / 5 + one(6), 10)
  expect(asked(told, apart, [6, 7]).far).toBeCloseTo(36 / 5 + 49 / 5 + one(6) + one(7), 10)
})

it('readings that say nothing of the source put it nowhere', () => {
  const { first } = addingUp(1)
  const told = [{ row: 0, roundingDeviations: 0 }]
  const values = first.valuesOf(HEALTHY, 0)
  expect(farOff({ ...first, told }, { values, slopes: [[1e-6]] }, [5])).toBeCloseTo(25, 6)
})
