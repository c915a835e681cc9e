// table: where a casting settles against where its metal creeps and melts. A380: 540 °C (memory), half of it in kelvin by hand
// 813.15/2 - 273.15 = 133.4 °C.
import { describe, expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { settledMetal } from '../../../src/rules/settled-metal.ts'
import { metalSoftens } from '../../../src/rules/warm/metal-softens.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const A380 = { says: 'A380', meltsC: 540 }
const settled = (...ends: readonly ReturnType<typeof sharp>[]) => ends.map(steadyC => ({ steadyC }))
const at = (steadyC: ReturnType<typeof sharp>) => ({ metal: settledMetal(A380, settled(steadyC), null) })

describe('without a thermostat', () => {
  it.each([
    ['below the creep', between(20, 133.4), 'pass'],
    ['above it at the worst end', between(20, 133.5), 'caution'],
    ['just below the melting', sharp(539.9), 'caution'],
    ['above it', between(300, 540.1), 'fail']
  ])('%s', (_, settlesC, verdict) => {
    expect(verdictOf(metalSoftens, at(settlesC))).toBe(verdict)
  })

  it('the hotter of two kinds of air counts', () => {
    const metal = settledMetal(A380, settled(sharp(30), sharp(600)), null)
    expect(asked(metalSoftens, { metal })).toMatchObject({ verdict: 'fail', value: 600, limit: 540 })
  })

  it('hotter than a film is worked out for fails', () => {
    const metal = settledMetal(A380, [...settled(sharp(30)), { beyondC: 700 }], null)
    expect(verdictOf(metalSoftens, { metal })).toBe('fail')
  })
})

describe('a thermostat takes the power off', () => {
  it.each([
    ['before the metal creeps', [{ beyondC: 700 }], 90, 'pass', 90],
    ['later than it settles', settled(sharp(60)), 90, 'pass', 60],
    ['where it creeps', settled(sharp(600)), 200, 'caution', 200]
  ])('%s', (_, airs, thermostatC, verdict, value) => {
    expect(asked(metalSoftens, { metal: settledMetal(A380, airs, thermostatC) })).toMatchObject({ verdict, value })
  })
})

it('an assumed value is a caution at best', () => expectDoubted(metalSoftens, at(assumed(sharp(30)))))

it('without the name of the metal nothing is judged', () => {
  const airs = settled(sharp(3004))
  expectNotJudged(metalSoftens, { metal: settledMetal(null, airs, null) }, 'warm.material', 'ask for the alloy of the casting')
  expect(verdictOf(metalSoftens, { metal: settledMetal({ says: 'a block', meltsC: null }, airs, null) })).toBe('not-judged')
})
