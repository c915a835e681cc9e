// table: the chamfer of the first tap; common practice, no published source: a bottoming tap has one to two pitches
import { expect, it } from 'vitest'
import { startsCrooked } from '../../../src/rules/hole/starts-crooked.ts'
import { asked } from '../../../src/rules/rule.ts'

it.each([
  ['taper', 8, 'pass'],
  ['second', 4, 'pass'],
  ['spiral', 2.5, 'pass'],
  ['spiral', 2.01, 'pass'],
  ['bottoming', 2, 'caution'],
  ['bottoming', 1.5, 'caution']
])('%s of %s pitches: %s', (name, chamferTurns, verdict) => {
  expect(asked(startsCrooked, { first: { name, chamferTurns } }).verdict).toBe(verdict)
})

it('names the tap and what to begin with', () => {
  expect(asked(startsCrooked, { first: { name: 'bottoming', chamferTurns: 1.5 } })).toMatchObject({
    says: 'the first tap, bottoming, has a chamfer of 1.5 pitches: that of one that finishes a thread',
    change: expect.stringMatching(/^begin with a taper/)
  })
})
