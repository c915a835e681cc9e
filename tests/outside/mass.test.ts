// Table: mass and moment against a published worked example, an FAA limit, and an invented example by hand.
import { describe, expect, test } from 'vitest'
import { mass } from '../../src/trade/mass/mass.ts'
import { negligibleChangeKg } from '../../src/trade/mass/negligible.ts'
import { MASS } from './rows/thermal-mass.ts'
import { allowance, rowOf } from './rows/thermal-row.ts'

const KG = 0.45359237 // pound, exact by definition (memory)
const M = 0.0254 // inch, exact by definition

function agrees(id: string, ours: number) {
  const row = rowOf(MASS, id)
  expect(Math.abs(ours - Number(row.value))).toBeLessThanOrEqual(allowance(row) + 1e-9)
}

describe('two seats out; a cabinet, a seat and a radio in', () => {
  const item = (pounds: number, inches: number) => ({ massKg: pounds * KG, armM: inches * M })
  const before = item(2886, 101673.78 / 2886)
  const adds = [item(-30, 71), item(97, 71), item(20, 71), item(30, 94)]
  const found = mass({ before, adds, limits: null })
  test('weight', () => agrees('mb1-0', found.massKg / KG))
  test('moment', () => agrees('mb1-1', found.momentKgM / KG / M))
  test('old centre', () => agrees('mb1-2', before.armM / M))
  test('new centre', () => agrees('mb1-3', found.centreM / M))
  test('shift', () => agrees('mb1-4', found.changeM / M))
})

test.each([
  ['neg-1', 4999],
  ['neg-2', 5001]
])('%s: negligible change at %d lb empty', (id, pounds) => {
  expect(negligibleChangeKg(pounds * KG)).toBeCloseTo(Number(rowOf(MASS, id).value) * KG, 12)
})

// Invented inputs, hand arithmetic to the digits shown.
test('a heater forward of the datum', () => {
  const found = mass({ before: { massKg: 742, armM: 0.913 }, adds: [{ massKg: 0.31, armM: -0.42 }], limits: null })
  expect(found.massKg).toBeCloseTo(742.31, 9)
  expect(found.momentKgM.toFixed(3)).toBe('677.316')
  expect(found.centreM.toFixed(5)).toBe('0.91244')
  expect((found.changeM * 1000).toFixed(2)).toBe('-0.56')
})
