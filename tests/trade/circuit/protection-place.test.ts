// table: 33 CFR 183.455, 7 in of wire before a protector (read-secondary), the yardstick where a practice has words alone
import { expect, it } from 'vitest'
import { greatestBareMm, PROTECTOR_PLACES } from '../../../src/trade/circuit/protection-place.ts'

it.each(['boat', 'road', 'aircraft', 'general'] as const)('wire before a protector, practice %s', practice => {
  expect(greatestBareMm(PROTECTOR_PLACES[practice].open)).toBeCloseTo(7 * 25.4, 9)
})
