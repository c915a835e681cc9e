// table: a thermostat against the target, by hand
import { expect, it } from 'vitest'
import { cutMarginK, onMarginK } from '../../../src/trade/heat/thermostat.ts'

it('one that opens at 60 °C leaves 20 K above 40 °C', () => {
  expect(cutMarginK({ offC: 60, targetC: 40 })).toBe(20)
})

it('one that closes again at 37 °C lets the metal cool 3 K below 40 °C', () => {
  expect(onMarginK({ onC: 37, targetC: 40 })).toBe(-3)
})
