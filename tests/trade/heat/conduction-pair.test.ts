// example: the two time constants of a pair by hand; still air by hand; a casting colder or hotter than its air.
import { describe, expect, it } from 'vitest'
import { castingLostW } from '../../../src/trade/heat/casting-loss.ts'
import { fastS, slowS } from '../../../src/trade/heat/conduction.ts'
import { compactSizeMm } from '../../../src/trade/heat/heating.ts'
import { horizontalCylinderNusseltRatio, verticalPlateNusseltRatio } from '../../../src/trade/heat/still-air.ts'
import { twoNode } from '../../../src/trade/heat/two-node.ts'

it('the part settles against the casting sooner than both do together', () => {
  // Gj/C1 + (Gj + Go)/C2 = 3 + 7/3 and Gj·Go/(C1·C2) = 1: s² + 16/3·s + 1 = 0, s = 8/3 ± √(55/9).
  const pair = { bodyJPerK: 2, castingJPerK: 3, jointWPerK: 6, outWPerK: 1 }
  const fast = fastS(pair)
  expect(fast).toBeCloseTo(1 / (8 / 3 + Math.sqrt(55) / 3), 12)
  expect(slowS({ ...pair, fastS: fast })).toBeCloseTo(1 / (8 / 3 - Math.sqrt(55) / 3), 12)
})

it('a cylinder and a plate in still air at Ra 10⁶, of which the sixth root is 10', () => {
  // (0.559/0.7)^(9/16) = 0.88115, 1.88115^(8/27) = 1.20590: (0.60 + 3.87/1.20590)² = 14.510.
  expect(horizontalCylinderNusseltRatio({ rayleighRatio: 1e6, prandtlRatio: 0.7 })).toBeCloseTo(14.51, 2)
  // (0.492/0.7)^(9/16) = 0.82007, 1.82007^(8/27) = 1.19417: (0.825 + 3.87/1.19417)² = 16.530.
  expect(verticalPlateNusseltRatio({ rayleighRatio: 1e6, prandtlRatio: 0.7 })).toBeCloseTo(16.53, 2)
})

it('a cylinder of 100 mm by 100 mm has a surface of 1.5·π·0.1²', () => {
  expect(compactSizeMm({ areaM2: 1.5 * Math.PI * 0.01 })).toBeCloseTo(100, 9)
})

describe('what comes in leaves', () => {
  const loss = {
    areaM2: 0.042,
    film: { by: 'horizontal-cylinder', sizeMm: 80 },
    emissivityRatio: 0.46,
    altitudeM: 420
  } as const
  const fitting = {
    body: { massKg: 0.041, heatJPerKgK: 380 },
    casting: { massKg: 1.9, heatJPerKgK: 900 },
    joint: { contactMm2: 300, contactM2KPerW: 2.75e-4 },
    startC: -18,
    targetC: null
  }
  it.each([
    ['a machine colder than the air', 3, 20, -30],
    ['a machine hotter than the air', 3, -30, 60]
  ])('%s', (_, powerW, airC, machineC) => {
    const whole = { ...loss, airC, machine: { machineWPerK: 1.5, machineC } }
    const { castingC } = twoNode({ ...fitting, powerW, loss: whole })
    expect(castingLostW(whole, castingC)).toBeCloseTo(powerW, 8)
    expect(castingC).toBeGreaterThan(Math.min(airC, machineC))
    expect(castingC).toBeLessThan(Math.max(airC, machineC))
  })

  it('with a film that stays, radiation still grows with the gap', () => {
    const whole = { ...loss, film: { by: 'value', filmWPerM2K: 8 }, airC: -18, machine: null } as const
    const { castingC } = twoNode({ ...fitting, powerW: 45, loss: whole })
    expect(castingLostW(whole, castingC)).toBeCloseTo(45, 8)
  })
})
