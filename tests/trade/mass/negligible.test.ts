// Example: the edges of the table.
import { expect, it } from 'vitest'
import { withWorking } from '../../../src/formula/working.ts'
import { negligibleChangeKg } from '../../../src/trade/mass/negligible.ts'

const KG = 0.45359237

it('one pound below 5000 lb, two from there to 50000 lb, nothing above', () => {
  expect(negligibleChangeKg(4999.9 * KG)).toBe(KG)
  expect(negligibleChangeKg(5000 * KG)).toBe(2 * KG)
  expect(negligibleChangeKg(49999 * KG)).toBe(2 * KG)
  expect(negligibleChangeKg(50000 * KG)).toBeNull()
})

it('shows in the working which row it was, in whole kilograms', () => {
  // 5000 lb are 2267.96 kg.
  const { working } = withWorking(() => negligibleChangeKg(700))
  expect(working.map(({ putIn }) => putIn)).toEqual(['empty mass below 2268 kg'])
})
