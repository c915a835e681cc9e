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

it.each([
  [
    { off: ['switch S1'], through: ['dropper'], powerW: 23.04 },
    'nothing that is drawn switches left off: with switch S1 off it still takes 23 W through dropper'
  ],
  [{ off: [], through: ['one', 'two'], powerW: null }, 'nothing that is drawn switches left off: it takes current through one and two']
])('what is left through others is told: %j', (left, says) => {
  expect(asked(none, { load: 'left', switchedBy: [], left })).toMatchObject({ verdict: 'caution', says })
})
