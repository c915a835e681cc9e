// table: output against the loads; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { short } from '../../../src/rules/supply/short.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const subject = { phase: 'idle', outputA: between(17, 19), loadA: sharp(15), marginA: between(2, 4), shed: '' }

it.each([
  ['something left at the worst end', between(0.1, 3), 'pass'],
  ['nothing left at the worst end, though some at the nominal', between(-0.1, 3), 'fail'],
  ['just nothing', between(0, 3), 'caution']
])('%s', (_, marginA, verdict) => {
  expect(verdictOf(short, { ...subject, marginA })).toBe(verdict)
})

it('says both, and what to switch off where it is short', () => {
  expect(asked(short, subject).says).toBe('idle: the generator gives 17.00 A, the loads take 15.00 A')
  expect(asked(short, { ...subject, marginA: sharp(-1), shed: 'lights (3.6 A)' }).change).toBe('switch off first: lights (3.6 A)')
  expect(asked(short, { ...subject, marginA: sharp(-1) }).change).toBe(short.change)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(short, { ...subject, marginA: assumed(between(1, 2)) })
})

it('without the output is not judged', () => {
  expectNotJudged(short, { ...subject, outputA: null, marginA: null }, 'output', 'clamp meter')
})

it('where nobody knows what a load takes it may fail, but not pass', () => {
  const unsure = { says: 'lamp gets nothing behind switch S1, drawn open: what it gets is not known', change: 'close it' }
  expect(asked(short, { ...subject, unsure })).toMatchObject({ verdict: 'not-judged', ...unsure })
  expect(verdictOf(short, { ...subject, marginA: sharp(-1), unsure })).toBe('fail')
})
