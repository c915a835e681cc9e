// property: mutated jobs and quantities are read or refused in words, without a stack trace, a number that is none or a hang
import { expect, it } from 'vitest'
import { basesIn } from './bases.ts'
import { fuzzJobs } from './fuzz-jobs.ts'
import { fuzzQuantities } from './fuzz-quantities.ts'
import { flawIn } from './fuzzed.ts'

const SEED = 4_000_000

it('jobs', () => {
  const { flaws, outcomes } = fuzzJobs(400, SEED, basesIn('.'))
  expect(flaws).toEqual([])
  expect(Object.keys(outcomes).length).toBeGreaterThan(2)
})

it('quantities', () => {
  const { flaws, outcomes } = fuzzQuantities(10_000, SEED)
  expect(flaws).toEqual([])
  expect(outcomes['read']).toBeGreaterThan(500)
  expect(outcomes['refused']).toBeGreaterThan(500)
})

it.each([
  [{ a: [1, { b: Number.NaN }] }, 'the number NaN'],
  [{ says: 'metal left undefined mm' }, 'undefined'],
  [{ says: 'Error at judge (rules.ts:1:2)' }, null],
  [{ says: 'at /x/rules.ts:10:2' }, 'at /x/rules.ts:10:2'],
  [{ says: 'the part "NaN" is there' }, null],
  [{ says: '[object Object]' }, '[object ']
])('%j is a flaw or none: %j', (node, flaw) => {
  expect(flawIn(node)).toBe(flaw)
})
