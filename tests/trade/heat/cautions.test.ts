// Example: the cautions say what they must and nothing more.
import { expect, it } from 'vitest'
import * as cautions from '../../../src/trade/heat/cautions.ts'

it.each(Object.entries(cautions))('%s does not promise', (_, text) => {
  expect(text).not.toMatch(/\bsafe/i)
  expect(text).not.toMatch(/protects|prevents ice|keeps? ice/i)
})

it('a heater of tens of watts is said to be no icing protection', () => {
  expect(cautions.ICING).toMatch(/^this is no icing protection/)
})
