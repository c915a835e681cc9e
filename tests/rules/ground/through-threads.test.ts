// table: threads that a load relies on for its way back, or not
import { expect, it } from 'vitest'
import { throughThreads } from '../../../src/rules/ground/through-threads.ts'
import { asked } from '../../../src/rules/rule.ts'

it.each([
  ['no load', [], 'pass'],
  ['one load', ['sump'], 'fail'],
  ['two', ['sump', 'lamp'], 'fail']
] as const)('%s hangs on them', (_, loads, verdict) => {
  const judged = asked(throughThreads, { loads })
  expect(judged.verdict).toBe(verdict)
  for (const load of loads) expect(judged.says).toContain(load)
})
