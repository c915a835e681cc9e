// Example: conductances by hand; ranges.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { jointWPerK, outC, wholeWPerM2K } from '../../../src/trade/heat/conduction.ts'

describe('by hand', () => {
  it('300 mm² at 1e-4 m²·K/W carry 3 W/K', () => {
    expect(jointWPerK({ contactMm2: 300, contactM2KPerW: 1e-4 })).toBeCloseTo(3, 12)
  })
  it('film and radiation add', () => {
    expect(wholeWPerM2K({ filmWPerM2K: 10, radiationWPerM2K: 3.25 })).toBeCloseTo(13.25, 12)
  })
  it('0.4 W/K to air of -10 °C and 0.1 W/K to a machine of 20 °C: together as -4 °C', () => {
    expect(outC({ lossWPerK: 0.4, airC: -10, machineWPerK: 0.1, machineC: 20 })).toBeCloseTo(-4, 12)
  })
})

it('refuses a joint better than metal', () => {
  expect(() => jointWPerK({ contactMm2: 300, contactM2KPerW: 9e-8 })).toThrow(OutsideRange)
})
