// table: the crush as a share of the stack at its thinnest, against half of it; the numbers are invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { asked } from '../../../src/rules/rule.ts'
import { stackCrushes } from '../../../src/rules/seat/stack-crushes.ts'

const mm = (value: number, spread = 0) => new Given(value, { low: value - spread, high: value + spread })

it.each([
  ['a tenth', [mm(1.5)], mm(0.15), 'pass', 10],
  ['just half', [mm(1.5)], mm(0.75), 'caution', 50],
  ['more than half', [mm(1.5)], mm(0.8), 'caution', 80 / 1.5],
  // 0.7 + 0.05 of 1.5 − 0.1: 0.75/1.4.
  ['more than half of the thinnest, at the most', [mm(1.5, 0.1)], mm(0.7, 0.05), 'caution', 75 / 1.4],
  ['half of one of two', [mm(1), mm(0.5)], mm(0.5), 'pass', 50 / 1.5],
  ['nothing', [mm(1)], mm(0), 'pass', 0],
  ['nothing of nothing', [mm(0)], mm(0), 'pass', 0]
])('%s', (_, stack, crushMm, verdict, value) => {
  const finding = asked(stackCrushes, { stack, crushMm })
  expect(finding).toMatchObject({ verdict, unit: '%', limit: 50 })
  expect(finding.value).toBeCloseTo(value, 9)
})

it('with nothing under the shoulder there is nothing to lose', () => {
  expect(asked(stackCrushes, { stack: [], crushMm: new Given(0, { assumed: 'default: no stack' }) }).verdict).toBe('pass')
})

it('a crush that nobody gave is a caution at best', () => {
  const crushMm = new Given(0, { assumed: 'default: none', at: ['holes', 'left', 'crush'] })
  expect(asked(stackCrushes, { stack: [mm(1)], crushMm })).toMatchObject({ verdict: 'caution', says: expect.stringContaining('assumed') })
})
