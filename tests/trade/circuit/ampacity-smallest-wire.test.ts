// example: each side of the smallest size.
import { expect, it } from 'vitest'
import { smallestAllowed } from '../../../src/trade/circuit/ampacity-smallest-wire.ts'

it.each([
  ['boat', 'single', { standard: 'awg', awg: 16 }, 'yes'],
  ['boat', 'single', { standard: 'awg', awg: 18 }, 'no'],
  ['boat', 'sheathed', { standard: 'awg', awg: 18 }, 'yes'],
  ['boat', 'single', { standard: 'mm2', areaMm2: 1 }, 'yes'],
  ['boat', 'single', { standard: 'mm2', areaMm2: 0.75 }, 'no'],
  ['boat', 'sheathed', { standard: 'awg', awg: 20 }, 'no'],
  ['boat', 'sheathed', { standard: 'mm2', areaMm2: 0.75 }, 'yes'],
  ['boat', 'sheathed', { standard: 'mm2', areaMm2: 0.745 }, 'no'],
  ['boat', 'single', { standard: 'mm2', areaMm2: 0.995 }, 'no'],
  ['aircraft', 'single', { standard: 'awg', awg: 20 }, 'yes'],
  ['aircraft', 'sheathed', { standard: 'awg', awg: 20 }, 'yes'],
  ['aircraft', 'sheathed', { standard: 'awg', awg: 21 }, 'no'],
  // AWG 20 is 0.52 mm².
  ['aircraft', 'single', { standard: 'mm2', areaMm2: 0.52 }, 'yes'],
  ['aircraft', 'single', { standard: 'mm2', areaMm2: 0.518 }, 'no'],
  ['aircraft', 'sheathed', { standard: 'mm2', areaMm2: 0.52 }, 'yes'],
  ['aircraft', 'sheathed', { standard: 'mm2', areaMm2: 0.518 }, 'no'],
  ['road', 'single', { standard: 'awg', awg: 20 }, 'yes'],
  ['general', 'single', { standard: 'awg', awg: 21 }, 'no'],
  ['road', 'sheathed', { standard: 'awg', awg: 22 }, 'yes'],
  ['general', 'sheathed', { standard: 'awg', awg: 23 }, 'no'],
  ['road', 'sheathed', { standard: 'mm2', areaMm2: 0.35 }, 'yes'],
  ['general', 'sheathed', { standard: 'mm2', areaMm2: 0.348 }, 'no'],
  ['general', 'single', { standard: 'mm2', areaMm2: 0.498 }, 'no'],
  ['aircraft', 'single', { standard: 'awg', awg: 22 }, 'no'],
  ['road', 'single', { standard: 'mm2', areaMm2: 0.5 }, 'yes'],
  ['general', 'single', { standard: 'mm2', areaMm2: 0.35 }, 'no']
] as const)('%s, %s, %o: %s', (practice, run, conductor, allowed) => {
  expect(smallestAllowed({ practice, run, conductor }).allowed).toBe(allowed)
})
