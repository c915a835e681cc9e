// example: what is taken for a tap clearance that nobody gave
import { expect, it } from 'vitest'
import { assumedTapClear } from '../../../src/trade/hole/assumed.ts'
import { about } from './invented.ts'

it('a tap is kept one pitch off where nothing is said', () => {
  expect(assumedTapClear(about(1.75), ['tap-clear'])).toMatchObject({ value: 1.75, assumed: 'one pitch', at: ['tap-clear'] })
})
