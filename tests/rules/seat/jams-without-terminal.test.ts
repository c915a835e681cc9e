// table: the lesser gap without the stack against nought, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { jamsWithoutTerminal } from '../../../src/rules/seat/jams-without-terminal.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const gap = (low: number, high: number) => ({ withoutStackMm: between(low, high) })

it.each([
  ['room at both', gap(0.01, 0.6), gap(0.2, 0.6), 'pass'],
  ['it jams in the run-out', gap(-0.01, 0.6), gap(0.2, 0.6), 'caution'],
  ['it bottoms on the floor', gap(0.2, 0.6), gap(-0.01, 0.6), 'caution'],
  ['nought at the worst end', gap(0, 0.6), gap(0.2, 0.6), 'caution'],
  ['far too long', gap(-9, -8), gap(-9, -8), 'caution'],
  ['it jams in the run-out, whatever the floor', gap(-0.01, 0.6), null, 'caution']
])('%s', (_, runOut, floor, verdict) => {
  expect(verdictOf(jamsWithoutTerminal, { runOut, floor })).toBe(verdict)
})

it('says the gap that is left, as a length', () => {
  const finding = asked(jamsWithoutTerminal, { runOut: gap(-0.75, -0.25), floor: null })
  expect(finding).toMatchObject({ value: -0.75, limit: 0, margin: -0.75, unit: 'mm', at: ['holes', 'left', 'measured'], worstAt: [-0.75] })
  expect(finding.says).toContain('a gap of 0.75 mm left under the shoulder')
})

it('room without the stack is said as room', () => {
  expect(asked(jamsWithoutTerminal, { runOut: gap(0.4, 0.6), floor: gap(0.5, 0.6) }).says).toContain('0.40 mm of room')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(jamsWithoutTerminal, { runOut: { withoutStackMm: assumed(between(2, 3)) }, floor: gap(4, 5) })
})

it('without the length of the thread is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, { runOut: null, floor: null }, 'thread-length', 'last full thread')
})

it('with room before the run-out and no floor known is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, { runOut: gap(0.01, 0.6), floor: null }, 'overall', 'end of the part')
})
