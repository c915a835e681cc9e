// example: arithmetic by hand.
import { expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { enduranceS, labelCapacityAh, peukertFactor } from '../../../src/trade/supply/peukert.ts'

const AT = { rateS: 72_000, currentA: 5, peukertFactor: 1.2 }

it('does not take the one-ampere figure for a label', () => {
  // 100, k 1.2, 5 A: 20 h by the label, 100/5^1.2 = 14.496 h by the one-ampere form.
  expect(enduranceS({ ...AT, capacityAh: 100 }) / 3600).toBeCloseTo(20, 9)
  const capacityAh = labelCapacityAh({ oneAmpereAh: 100, rateS: 72_000, peukertFactor: 1.2 })
  expect(enduranceS({ ...AT, capacityAh }) / 3600).toBeCloseTo(100 / 5 ** 1.2, 9)
})

it('finds the exponent back from two discharges', () => {
  const at = (currentA: number) => enduranceS({ ...AT, currentA, capacityAh: 100 })
  expect(peukertFactor({ firstA: 5, firstS: at(5), secondA: 40, secondS: at(40) })).toBeCloseTo(1.2, 9)
})

it('finds none from two discharges at one current', () => {
  expect(() => peukertFactor({ firstA: 5, firstS: 100, secondA: 5, secondS: 90 })).toThrow(NoAnswer)
})
