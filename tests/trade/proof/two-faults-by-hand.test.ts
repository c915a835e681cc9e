// table: two faults at once where each adds its volts, by hand; every reading is off by one volt
import { describe, expect, it } from 'vitest'
import { diagnosed } from '../../../src/trade/proof/diagnosis.ts'
import { type Fault, HEALTHY } from '../../../src/trade/proof/fault.ts'
import { beyond } from '../../../src/trade/proof/gaussian.ts'
import { twoFaults } from '../../../src/trade/proof/two-faults.ts'
import { adding, addingUp, type Volts } from './adding-up.ts'

/** Asked about where no single fault explains the readings. */
function found(faults: readonly Fault[], readings: Volts) {
  const { first } = addingUp(readings.length)
  return twoFaults(first, { ...diagnosed(first, faults, readings), fitRatio: 0 }, readings)
}

const [a, b, c] = [adding('a', [9, 0, 0, 0]), adding('b', [0, 9, 0, 0]), adding('c', [0, 0, 9, 0])]
const idsOf = (two: ReturnType<typeof found>) => two?.faults.map(({ id }) => id).sort()

it('the two that add up to the readings are named, whatever else there is', () => {
  // A volt off at two points: 2 in squared distance, four readings free.
  const two = found([HEALTHY, a, b, c], [10, 9, 0, 1])
  expect(idsOf(two)).toEqual(['a', 'b'])
  expect(two!.sizes).toEqual([0, 0])
  expect(two!.fitRatio).toBeCloseTo(beyond(2, 4), 12)
  expect(idsOf(found([HEALTHY, a, b, c], [0, 9, 9, 0]))).toEqual(['b', 'c'])
})

it('nothing where a third would be needed', () => {
  expect(found([HEALTHY, a, b, c], [9, 9, 9, 0])).toBeNull()
})

it('neither a circuit in order nor a fault beside itself makes two', () => {
  expect(found([HEALTHY, a], [18, 0, 0, 0])).toBeNull()
  expect(found([HEALTHY], [9, 9, 0, 0])).toBeNull()
})

it('two faults of one place are one', () => {
  expect(found([HEALTHY, a, { ...b, at: 'a' }], [9, 9, 0, 0])).toBeNull()
  expect(found([HEALTHY, a, { ...b, id: 'a' }], [9, 9, 0, 0])).toBeNull()
})

describe('with sizes', () => {
  const sizes = { by: 'range', low: 1, high: 100 } as const
  const [wide, tall] = [adding('wide', [1, 0.2, 0, 0], { sizes }), adding('tall', [0.2, 1, 0, 0], { sizes })]

  // 60 and 40: 60 + 8 and 12 + 40. Alone, each would be taken for more.
  it('each is found beside the other', () => {
    const two = found([HEALTHY, wide, tall, c], [68, 52, 0, 0])
    expect(idsOf(two)).toEqual(['tall', 'wide'])
    const sizeOf = (id: string) => two!.sizes[two!.faults.findIndex(fault => fault.id === id)]!
    expect(Math.abs(sizeOf('wide') - 60)).toBeLessThan(3)
    expect(Math.abs(sizeOf('tall') - 40)).toBeLessThan(3)
    expect(two!.fitRatio).toBeGreaterThan(0.3)
  })
})
