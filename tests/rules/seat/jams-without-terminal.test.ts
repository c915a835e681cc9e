// table: the least gap without the stack against nought, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { jamsWithoutTerminal } from '../../../src/rules/seat/jams-without-terminal.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const seat = (low: number, high: number, floor: object | null = {}) => ({ runOut: {}, floor, bareGapMm: between(low, high) })

it.each([
  ['room everywhere', seat(0.01, 0.6), 'pass'],
  ['it is stopped', seat(-0.01, 0.6), 'caution'],
  ['nought at the worst end', seat(0, 0.6), 'caution'],
  ['far too long', seat(-9, -8), 'caution'],
  ['it is stopped, whatever the floor', seat(-0.01, 0.6, null), 'caution']
])('%s', (_, subject, verdict) => {
  expect(verdictOf(jamsWithoutTerminal, subject)).toBe(verdict)
})

it('says the gap that is left, as a length', () => {
  const finding = asked(jamsWithoutTerminal, seat(-0.75, -0.25, null))
  expect(finding).toMatchObject({ value: -0.75, limit: 0, margin: -0.75, unit: 'mm', at: ['holes', 'left', 'measured'], worstAt: [-0.75] })
  expect(finding.says).toContain('a gap of 0.75 mm left under the shoulder')
})

it('room without the stack is said as room', () => {
  expect(asked(jamsWithoutTerminal, seat(0.4, 0.6)).says).toContain('0.40 mm of room')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(jamsWithoutTerminal, { ...seat(2, 3), bareGapMm: assumed(between(2, 3)) })
})

it('without the length of the thread is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, { runOut: null, floor: null, bareGapMm: null }, 'thread-length', 'last full thread')
})

it('with room before the run-out and no floor known is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, seat(0.01, 0.6, null), 'overall', 'end of the part')
})
