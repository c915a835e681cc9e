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

it('what leads round a switch is told, and where the switch belongs', () => {
  const gone = { round: ['h--block', 'block-frame'], items: ['switch S1'] }
  expect(asked(none, { load: 'left', switchedBy: [], gone })).toMatchObject({
    verdict: 'caution',
    says: 'nothing that is drawn switches left off: h--block and block-frame lead round switch S1',
    change: 'put switch S1 into the feed, where nothing leads round, or take out h--block and block-frame'
  })
  expect(asked(none, { load: 'left', switchedBy: [], gone: { ...gone, round: ['bond'] } }).says).toContain('bond leads round')
})
