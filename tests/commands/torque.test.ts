// example: an adapter that leaves the pull no lever, an accuracy with a sign
import { expect, it } from 'vitest'
import { ran } from './run.ts'

it.each(['250 mm', '300 mm'])('an adapter of %s turned back along 250 mm has no answer', async adapter => {
  const { exit, out } = await ran(['torque', '10 N·m', '--lever', '250 mm', '--adapter', adapter, '--angle', '180°'])
  expect(exit).toBe(1)
  expect(out).toContain('gives the pull no lever')
})

it('an accuracy meant as ± has no sign', async () => {
  const { exit, err } = await ran(['torque', '10 N·m', '--tool', '5..30 N·m', '--tool-accuracy', '-4 %'])
  expect(exit).toBe(2)
  expect(err).toContain('--tool-accuracy: error: found "-4 %"; accepted: 0 % and more')
})
