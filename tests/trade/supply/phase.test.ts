// example: invented phases, arithmetic by hand.
import { expect, it } from 'vitest'
import { phases } from '../../../src/trade/supply/phase.ts'

const heater = { name: 'heater', currentA: 10, dutyPercent: 100, priority: 'useful' } as const
const lamps = { name: 'lamps', currentA: 4, dutyPercent: 50, priority: 'essential' } as const

it('draws on the battery where a phase gives less than it takes, and counts nothing as put back', () => {
  const { phases: list, drawnAh } = phases([
    { name: 'idle', outputA: 6, durationS: 1800, loads: [heater, lamps] },
    { name: 'work', outputA: 30, durationS: 3600, loads: [heater, lamps] },
    { name: 'stopped', outputA: 0, durationS: 360, loads: [lamps] }
  ])
  expect(list.map(({ loadA }) => loadA)).toEqual([12, 12, 2])
  expect(list.map(({ marginA }) => marginA)).toEqual([-6, 18, -2])
  expect(list.map(({ loadPercent }) => loadPercent)).toEqual([200, 40, null])
  expect(drawnAh).toBeCloseTo(6 * 0.5 + 2 * 0.1, 12)
})
