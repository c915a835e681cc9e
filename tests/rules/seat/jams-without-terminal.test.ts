// table: the least gap without the stack against nought, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { jamsWithoutTerminal } from '../../../src/rules/seat/jams-without-terminal.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const gap = (low: number, high: number) => ({ withoutStackMm: between(low, high) })
const seat = (low: number, high: number, floor: ReturnType<typeof gap> | null = gap(8, 9)) => ({ runOut: gap(low, high), floor, rim: null })

it.each([
  ['room everywhere', seat(0.01, 0.6), 'pass'],
  ['it is stopped', seat(-0.01, 0.6), 'caution'],
  ['it bottoms on the floor', { ...seat(0.2, 0.6), floor: gap(-0.01, 0.6) }, 'caution'],
  ['its neck stands on the rim', { ...seat(0.2, 0.6), rim: gap(-0.01, 0.6) }, 'caution'],
  ['its neck stands on the rim, whatever the floor', { ...seat(0.2, 0.6, null), rim: gap(-0.01, 0.6) }, 'caution'],
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
  expectDoubted(jamsWithoutTerminal, { ...seat(2, 3), runOut: { withoutStackMm: assumed(between(2, 3)) } })
})

it('without the length of the thread is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, { runOut: null, floor: null, rim: null }, 'thread-length', 'last full thread')
})

it('with room before the run-out and no floor known is not judged', () => {
  expectNotJudged(jamsWithoutTerminal, seat(0.01, 0.6, null), 'overall', 'end of the part')
})
