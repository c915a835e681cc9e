// example: the command `explain` for what stands in no list of rules
import { expect, it } from 'vitest'
import { outputOf } from '../docs/example-output.ts'

it.each(['hole/no-answer', 'circuit/no-answer', 'joint/no-answer', 'torque/no-answer'])('%s is known', async id => {
  const { exit, out } = await outputOf(['explain', id])
  expect(exit).toBe(0)
  expect(out).toContain('invention')
})

it('the same for a room that is none is not, and the nearest is named', async () => {
  const { exit, err } = await outputOf(['explain', 'hull/no-answer'])
  expect(exit).toBe(2)
  expect(err).toContain('hole/no-answer')
})
