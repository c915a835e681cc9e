// example: air at a part by a fall, and by fuel and throat (energy balance by hand: 350 kJ/kg at 1:12.5 is 24.5 K; 100 m/s is 4.98 K)
import { expect, it } from 'vitest'
import { airAtPartC } from '../../../src/trade/heat/cooling.ts'

const flow = { by: 'flow', latentJPerKg: 350000, fuelHeatJPerKgK: 1700, airHeatJPerKgK: 1005 } as const

it('a fall is taken off', () => {
  expect(airAtPartC(5, { by: 'fall', fallK: 20 })).toBe(-15)
  expect(airAtPartC(5, { by: 'fall', fallK: 0 })).toBe(5)
})

it('fuel and throat add up', () => {
  expect(5 - airAtPartC(5, { ...flow, fuelAirRatio: 1 / 12.5, throatMPerS: 0 })).toBeCloseTo(24.5, 1)
  expect(5 - airAtPartC(5, { ...flow, fuelAirRatio: 0, throatMPerS: 100 })).toBeCloseTo(4.98, 2)
  expect(5 - airAtPartC(5, { ...flow, fuelAirRatio: 1 / 12.5, throatMPerS: 100 })).toBeCloseTo(29.5, 1)
})
