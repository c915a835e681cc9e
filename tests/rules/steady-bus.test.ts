// table: what hangs on an end of the bus that nobody told is a caution at best, and names the field; the numbers are invented
import { describe, expect, it } from 'vitest'
import { surfaceWet } from '../../src/rules/dew/surface-wet.ts'
import { plainly } from '../../src/rules/judge.ts'
import { farEndShort } from '../../src/rules/protect/far-end-short.ts'
import { interrupting } from '../../src/rules/protect/interrupting.ts'
import { asked, type Rule } from '../../src/rules/rule.ts'
import { cutBelow, steadily } from '../../src/rules/steady-bus.ts'
import { metalSoftens } from '../../src/rules/warm/metal-softens.ts'
import { needsThermostat } from '../../src/rules/warm/needs-thermostat.ts'
import { neverReaches } from '../../src/rules/warm/never-reaches.ts'
import { tooHot } from '../../src/rules/warm/too-hot.ts'
import { tooSlow } from '../../src/rules/warm/too-slow.ts'
import { sharp } from './bounded.ts'

const LOW = ['circuit', 'source', 'low']
const HIGH = ['circuit', 'source', 'high']

describe('a finding at an end of the bus', () => {
  it('that nobody told is no pass, and asks for the field', () => {
    expect(steadily(plainly('pass', 'enough'), { steadyBus: true })).toMatchObject({
      verdict: 'caution',
      says: 'enough; source.low is not given: this is reckoned at the bus as given',
      change: 'give circuit.source.low',
      assumes: [LOW]
    })
  })
  it('at both ends names both', () => {
    const { says, assumes } = steadily(plainly('pass', 'enough'), { steadyBus: true, steadyHigh: true })
    expect(says).toContain('source.low and source.high are not given')
    expect(assumes).toEqual([LOW, HIGH])
  })
  it('that is a caution already keeps what it wants changed', () => {
    expect(steadily(plainly('caution', 'near'), { steadyHigh: true }).change).toBeUndefined()
  })
  it.each(['fail', 'not-judged'] as const)('that is %s stays as it is', verdict => {
    expect(steadily(plainly(verdict, 'so'), { steadyBus: true, steadyHigh: true })).toEqual(plainly(verdict, 'so'))
  })
  it('that was told stays as it is', () => {
    expect(steadily(plainly('pass', 'enough'), {})).toEqual(plainly('pass', 'enough'))
  })
})

const limit = { value: 110, reason: 'card of the seal' }
const hot = { hot: { hottestC: sharp(90) }, limit, thermostatC: null, heldC: null, hotAirC: 40 }
const cut = { thermostatC: 80, heldC: sharp(80) }
const metal = { metal: { settlesC: sharp(90), meltsC: 540, of: 'A380' } }
const window = { window: { leastPowerW: sharp(20), greatestPowerW: sharp(30), spanW: sharp(10) }, thermostatC: null, heldC: null, limit }
const fuse = { protector: 'fuse', faultA: sharp(500) }
const breaking = {
  where: 'right behind it',
  breakingA: 1000,
  breakingSays: '',
  breakingV: { sureV: 32, mostV: 32 },
  busV: sharp(14)
} as const
const opens = { longestS: sharp(0.6), edge: 'published' } as const
const margin = { surfaceMarginK: sharp(5), of: 'the metal', governs: 'dew point' }

/** Each rule with a subject that it passes, and the end of the bus it rests on. */
const RESTING: readonly (readonly [Rule<never>, object, readonly string[]])[] = [
  [tooHot as Rule<never>, hot, ['steadyHigh']],
  [metalSoftens as Rule<never>, metal, ['steadyHigh']],
  [needsThermostat as Rule<never>, window, ['steadyBus', 'steadyHigh']],
  [neverReaches as Rule<never>, { hold: { holdMarginK: sharp(5) } }, ['steadyBus']],
  [tooSlow as Rule<never>, { reach: { timeToTargetS: sharp(300) }, within: { value: 600 } }, ['steadyBus']],
  [interrupting as Rule<never>, { ...fuse, ...breaking }, ['steadyHigh']],
  [farEndShort as Rule<never>, { ...fuse, ...opens }, ['steadyBus']]
]

describe.each(RESTING)('%#', (rule, subject, ends) => {
  const verdict = (steady: object) => asked(rule, { ...subject, ...steady } as never).verdict
  it(`${rule.id} passes with both ends told`, () => {
    expect(verdict({ steadyBus: false, steadyHigh: false })).toBe('pass')
  })
  it.each(['steadyBus', 'steadyHigh'])(`${rule.id} without %s`, end => {
    expect(verdict({ [end]: true })).toBe(ends.includes(end) ? 'caution' : 'pass')
  })
})

it('dew is held against what the low bus warms', () => {
  expect(asked(surfaceWet, { surface: { ...margin, steadyBus: true } }).verdict).toBe('caution')
  expect(asked(surfaceWet, { surface: margin }).verdict).toBe('pass')
})

describe('a thermostat that opens below the limit holds at any bus', () => {
  it.each([
    [80, 40, true],
    [110, 40, true],
    [111, 40, false],
    [80, 115, false]
  ])('opening at %d °C in air of %d °C: %s', (thermostatC, hotAirC, holds) => {
    expect(cutBelow(110, { thermostatC, hotAirC })).toBe(holds)
  })
  it('none holds nothing', () => {
    expect(cutBelow(110, { thermostatC: null, hotAirC: 40 })).toBe(false)
    expect(cutBelow(110, {})).toBe(false)
  })
  it('so that too hot and too soft pass', () => {
    expect(asked(tooHot, { ...hot, hot: { hottestC: sharp(70) }, ...cut, steadyHigh: true }).verdict).toBe('pass')
    // Of a part 20 K above the casting a higher bus makes more.
    expect(asked(tooHot, { ...hot, hot: { hottestC: sharp(70) }, ...cut, heldC: sharp(100), steadyHigh: true }).verdict).toBe('caution')
    expect(asked(metalSoftens, { ...metal, thermostatC: 80, hotAirC: 40, steadyHigh: true }).verdict).toBe('pass')
  })
})
