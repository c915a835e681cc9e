// table: what the breaker table of the aircraft practice rests on (memory), at its edges
import { expect, it } from 'vitest'
import { aircraftOutsideCount } from '../../../src/trade/circuit/protection-aircraft.ts'

const AT_EDGES = { ambientC: 57, altitudeM: 9144, insulationC: 105 }

it.each([
  ['at every edge', AT_EDGES, 0],
  ['warmer', { ...AT_EDGES, ambientC: 57.1 }, 1],
  ['higher', { ...AT_EDGES, altitudeM: 9150 }, 1],
  ['of lesser insulation', { ...AT_EDGES, insulationC: 104 }, 1],
  ['all of it', { ambientC: 70, altitudeM: 10_000, insulationC: 90 }, 3]
])('%s', (_, lies, count) => {
  expect(aircraftOutsideCount(lies)).toBe(count)
})
