// table: how a harness is carried, against the circulars (rows/wiring-practice.ts; source and label on every row)
import { expect, it } from 'vitest'
import { WIRING } from '../../src/rules/practice/wiring.ts'
import { AIRCRAFT_HARNESS, SMALL_HARNESS } from './rows/wiring-practice.ts'

/** Exact by definition. */
const MM_PER_IN = 25.4
const { aircraft, general, road } = WIRING

it.each([
  ['support', aircraft.support.lengthMm, AIRCRAFT_HARNESS.supportIn],
  ['deflection', aircraft.deflection?.lengthMm, AIRCRAFT_HARNESS.deflectionIn],
  ['fuel line', aircraft.fuelLine?.lengthMm, AIRCRAFT_HARNESS.fuelLineIn],
  ['fuel line, least', aircraft.fuelLine?.leastMm, AIRCRAFT_HARNESS.fuelLineLeastIn]
] as const)('aircraft: %s', (_, mm, { printed }) => {
  expect(mm).toBeCloseTo(printed * MM_PER_IN, 9)
})

it('aircraft: ground joints', () => {
  expect(aircraft.groundJoint?.jointOhm).toBe(AIRCRAFT_HARNESS.groundJointOhm.printed)
  expect(aircraft.refinish?.hours).toBe(AIRCRAFT_HARNESS.refinishH.printed)
})

it.each([general, road])('a small harness elsewhere', ({ support }) => {
  expect([support.leastMm, support.lengthMm]).toEqual([SMALL_HARNESS.leastMm, SMALL_HARNESS.mostMm])
  expect(support.source.label).toBe(SMALL_HARNESS.label)
})

it('boat: 18 in (ABYC E-11, memory)', () => {
  expect(WIRING.boat.support.lengthMm).toBeCloseTo(18 * MM_PER_IN, 9)
  expect(WIRING.boat.support.source.label).toBe('memory')
})
