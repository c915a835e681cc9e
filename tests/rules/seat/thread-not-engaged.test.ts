// table: full thread engaged against one turn; the numbers are invented
import { expect, it } from 'vitest'
import { threadNotEngaged } from '../../../src/rules/seat/thread-not-engaged.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['more than a turn at the worst end', between(1.51, 8), 'pass'],
  ['less than a turn at the worst end', between(1.49, 8), 'fail'],
  ['just a turn', between(1.5, 8), 'caution'],
  ['far above the face', between(-6, -5), 'fail']
])('%s', (_, engagedMm, verdict) => {
  expect(verdictOf(threadNotEngaged, { engagedMm, pitchMm: 1.5 })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(threadNotEngaged, { engagedMm: assumed(between(5, 6)), pitchMm: 1.5 })
})

it('without the length of the thread is not judged', () => {
  expectNotJudged(threadNotEngaged, { engagedMm: null, pitchMm: 1.5 }, 'thread-length', 'last full thread')
})
