// table: marks with and without the text of a label; the numbers are invented
import { expect, it } from 'vitest'
import { missing } from '../../../src/rules/label/missing.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

const marks = ['F1', 'S1']

it.each([
  ['every one has a text', { F1: 'HEATER 5 A', S1: 'HEATER' }, 'pass'],
  ['one is left out', { F1: 'HEATER 5 A' }, 'fail'],
  ['one is blank', { F1: 'HEATER 5 A', S1: '  ' }, 'fail'],
  ['one is null', { F1: 'HEATER 5 A', S1: null }, 'fail']
])('%s', (_, labels, verdict) => {
  expect(verdictOf(missing, { marks, labels })).toBe(verdict)
})

it('names what is bare', () => {
  expect(asked(missing, { marks, labels: { F1: 'HEATER 5 A' } }).says).toBe('no label for S1')
})

it('a circuit without marks needs none', () => {
  expect(verdictOf(missing, { marks: [], labels: {} })).toBe('pass')
})

it('without any label is not judged', () => {
  expectNotJudged(missing, { marks, labels: {} }, 'circuit.labels', 'F1, S1')
})
