// table: how a heater comes back, and what is on its threads
import { expect, it } from 'vitest'
import { throughBody } from '../../../src/rules/ground/through-body.ts'
import { asked } from '../../../src/rules/rule.ts'

it.each([
  ['by wire', 'nothing', 'pass'],
  ['by wire', 'sealant', 'pass'],
  ['by a joint', 'nothing', 'pass'],
  ['by a joint', null, 'pass'],
  ['by a joint', 'thermal-compound', 'caution'],
  ['by its body', 'nothing', 'caution'],
  ['by its body', 'oil', 'caution'],
  ['by its body', null, 'caution'],
  ['by its body', 'sealant', 'fail'],
  ['by its body', 'locking-compound', 'fail'],
  ['by its body', 'thermal-compound', 'fail']
] as const)('%s, with %s on its threads: %s', (leaves, threadsWith, verdict) => {
  const judged = asked(throughBody, { load: 'front', point: 'block', leaves, threadsWith })
  expect(judged.verdict).toBe(verdict)
  expect(judged.says).toMatch(/front.*/)
  expect(judged.change).toContain('draw its way back')
})
