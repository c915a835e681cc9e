// Table: heating of one node and of two against closed forms and a matrix exponential (invented inputs).
import { describe, expect, test } from 'vitest'
import { type Coupled, coupledAt } from '../../src/trade/heat/coupled.ts'
import { dew } from '../../src/trade/heat/dew.ts'
import * as heating from '../../src/trade/heat/heating.ts'
import { settledPair } from '../../src/trade/heat/two-node.ts'
import { warm } from '../../src/trade/heat/warm.ts'
import { HEAT_TRANSFER } from './rows/thermal-heat-transfer.ts'
import { allowance, given, named } from './rows/thermal-row.ts'

describe('one node', () => {
  test.each(named(HEAT_TRANSFER, 'lump-'))('$id', row => {
    const lossWPerK = heating.lossWPerK({ filmWPerM2K: given(row, 'h'), areaM2: given(row, 'A') })
    const capacityJPerK = heating.capacityJPerK({ massKg: given(row, 'm'), heatJPerKgK: given(row, 'c') })
    const timeConstantS = heating.timeConstantS({ capacityJPerK, lossWPerK })
    const steadyC = heating.steadyC({ airC: 0, powerW: given(row, 'P'), lossWPerK })
    const riseK = heating.blockC({ steadyC, startC: 0, timeS: given(row, 't'), timeConstantS })
    expect(Math.abs(riseK - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
})

describe('two nodes', () => {
  const pair: Coupled = { powerW: 50, bodyJPerK: 20, castingJPerK: 400, jointWPerK: 1.5, outWPerK: 0.4, outC: 0, startC: 0 }
  const settled = settledPair(pair)
  test.each(named(HEAT_TRANSFER, 'two-1-'))('$id', row => {
    expect(Math.abs(coupledAt(pair, settled, given(row, 't')).bodyC - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(HEAT_TRANSFER, 'two-2-'))('$id', row => {
    expect(Math.abs(coupledAt(pair, settled, given(row, 't')).castingC - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(HEAT_TRANSFER, 'two-ss1'))('$id', row => {
    expect(Math.abs(settled.bodyC - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test('the casting settles at 125 K', () => {
    expect(settled.castingC).toBeCloseTo(125, 9) // P/G2 = 50/0.4
  })
})

// A sensor block after a cold night: invented inputs, hand arithmetic to the digits shown.
describe('a sensor block after a cold night', () => {
  const air = dew({ airC: 4, moisture: { by: 'humidity', humidityPercent: 78 }, altitudeM: 0, surfaceC: -6 })
  const targetC = heating.targetC({ pointC: air.pointC, aboveK: 3 })
  const block = warm({
    powerW: 18,
    massKg: 0.45,
    heatJPerKgK: 900,
    areaM2: 0.03,
    airC: 4,
    altitudeM: 0,
    startC: -6,
    film: { by: 'value', filmWPerM2K: 20 },
    targetC,
    metal: null
  })
  test('moist air', () => {
    expect((air.vapourPressurePa / 100).toFixed(3)).toBe('6.341')
    expect(air.dewPointC.toFixed(2)).toBe('0.51')
    expect(air.frostPointC).toBeNull()
    expect(air.governs).toBe('dew point')
    expect(air.surfaceMarginK!.toFixed(1)).toBe('-6.5')
    expect(targetC.toFixed(2)).toBe('3.51')
  })
  test('warm-up', () => {
    expect(heating.lossWPerK({ filmWPerM2K: 20, areaM2: 0.03 })).toBeCloseTo(0.6, 12)
    expect(block.steadyC).toBeCloseTo(34, 9)
    expect(block.timeConstantS).toBeCloseTo(675, 9)
    expect(block.timeToTargetS!.toFixed(0)).toBe('183')
  })
})
