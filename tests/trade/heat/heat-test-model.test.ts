// table: the model of a heat test at a time that needs no program
import { expect, it } from 'vitest'
import { riseK } from '../../../src/trade/heat/heat-test-model.ts'

it('half way after ln 2 time constants', () => {
  expect(riseK([Math.log(400), Math.log(0.5), 0], 800 * Math.LN2)).toBeCloseTo(1, 12)
})
