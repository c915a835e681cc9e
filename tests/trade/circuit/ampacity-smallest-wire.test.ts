// example: each side of the smallest size.
import { expect, it } from 'vitest'
import { smallestAllowed } from '../../../src/trade/circuit/ampacity-smallest-wire.ts'

it.each([
  ['boat', 'single', { standard: 'awg', awg: 16 }, 'yes'],
  ['boat', 'single', { standard: 'awg', awg: 18 }, 'no'],
  ['boat', 'sheathed', { standard: 'awg', awg: 18 }, 'yes'],
  ['boat', 'single', { standard: 'mm2', areaMm2: 1 }, 'yes'],
  ['boat', 'single', { standard: 'mm2', areaMm2: 0.75 }, 'no'],
  ['aircraft', 'single', { standard: 'awg', awg: 20 }, 'yes'],
  ['aircraft', 'single', { standard: 'awg', awg: 22 }, 'no'],
  ['road', 'single', { standard: 'mm2', areaMm2: 0.5 }, 'yes'],
  ['general', 'single', { standard: 'mm2', areaMm2: 0.35 }, 'no']
] as const)('%s, %s, %o: %s', (practice, run, conductor, allowed) => {
  expect(smallestAllowed({ practice, run, conductor }).allowed).toBe(allowed)
})
