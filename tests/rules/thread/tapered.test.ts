// example: a taper that was found fails, in the words of the trade room
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { tapered } from '../../../src/rules/thread/tapered.ts'
import { expectNotJudged } from '../bounded.ts'

it('parallel passes', () => {
  expect(asked(tapered, { taperRatio: 0.005, tapered: null })).toMatchObject({ verdict: 'pass', at: ['taper'] })
})

it('tapered fails, and says what it is and what to take', () => {
  const words = { says: 'the thread tapers 1:16', change: 'take another part' }
  expect(asked(tapered, { taperRatio: 1 / 16, tapered: words })).toMatchObject({ verdict: 'fail', ...words })
})

it('nothing measured is not judged', () => {
  expectNotJudged(tapered, { taperRatio: null, tapered: null }, 'taper', 'both ends of the thread')
})
