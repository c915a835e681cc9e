// table: what takes the power off a heater, and nothing that does; invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { none } from '../../../src/rules/switch/none.ts'

it('a heater that nothing switches off is told, and the way out', () => {
  const { verdict, says, change } = asked(none, { load: 'left', switchedBy: [] })
  expect(verdict).toBe('caution')
  expect(says).toContain('switches left off')
  expect(change).toContain('through: [{ switch: S4')
})

it('what does is named', () => {
  expect(asked(none, { load: 'left', switchedBy: ['switch S1', 'thermostat T1'] })).toMatchObject({
    verdict: 'pass',
    says: 'switch S1, thermostat T1: the power of left can be taken off'
  })
})
