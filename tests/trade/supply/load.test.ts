// example: arithmetic by hand.
import { expect, it } from 'vitest'
import { withWorking } from '../../../src/formula/working.ts'
import { loadA } from '../../../src/trade/supply/load.ts'

it('adds loads, each with its duty, and shows five digits of each', () => {
  // 20 A over a third of the time are 6.6666 A.
  const heater = { name: 'heater', currentA: 20, dutyPercent: 33.333, priority: 'useful' } as const
  const lamps = { name: 'lamps', currentA: 9, dutyPercent: 100, priority: 'essential' } as const
  const { value, working } = withWorking(() => loadA([heater, lamps]))
  expect(value).toBeCloseTo(15.6666, 12)
  expect(working.at(-1)!.putIn).toBe('6.6666 + 9')
})
