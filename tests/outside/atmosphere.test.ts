// Table: temperature, pressure and density of the standard atmosphere.
import { describe, expect, test } from 'vitest'
import { atmosphereC, atmospherePa, densityKgPerM3 } from '../../src/trade/heat/atmosphere.ts'
import { ATMOSPHERE } from './rows/thermal-atmosphere.ts'
import { allowance, given, named } from './rows/thermal-row.ts'

describe('ISO 2533, geopotential altitude', () => {
  test.each(named(ATMOSPHERE, 'isa-T-'))('$id', row => {
    expect(Math.abs(atmosphereC({ altitudeM: given(row, 'H') }) - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(ATMOSPHERE, 'isa-p-'))('$id', row => {
    expect(Math.abs(atmospherePa({ altitudeM: given(row, 'H') }) / 100 - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
  test.each(named(ATMOSPHERE, 'isa-rho-'))('$id', row => {
    const altitudeM = given(row, 'H')
    const density = densityKgPerM3({ pressurePa: atmospherePa({ altitudeM }), airC: atmosphereC({ altitudeM }) })
    expect(Math.abs(density - Number(row.value))).toBeLessThanOrEqual(allowance(row))
  })
})

test.each(named(ATMOSPHERE, 'isa-ashrae-'))('$id, pressure of another table', row => {
  expect(Math.abs(atmospherePa({ altitudeM: given(row, 'altitude') }) - Number(row.value))).toBeLessThanOrEqual(allowance(row))
})
