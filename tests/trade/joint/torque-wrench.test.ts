// property: what holds of any wrench with an adapter; what has no answer
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { aboveLeastNm, belowGreatestNm, pulled, wrenchSetting } from '../../../src/trade/joint/torque-wrench.ts'

const torqueNm = fc.double({ min: 1, max: 200, noNaN: true })
const leverMm = fc.double({ min: 150, max: 600, noNaN: true })
const adapterMm = fc.double({ min: 0, max: 140, noNaN: true })
const angleDeg = fc.double({ min: 0, max: 180, noNaN: true })
const adapter = fc.record({ leverMm, adapterMm, angleDeg })

it('the fastener gets what was wanted, at the setting worked out for it', () => {
  fc.assert(
    fc.property(torqueNm, adapter, (wanted, on) => {
      const settingNm = wrenchSetting({ torqueNm: wanted, adapter: on })
      expect(pulled({ settingNm, cardNm: wanted, errorPercent: 0, adapter: on }).fastenerNm / wanted).toBeCloseTo(1, 12)
    })
  )
})

it('straight on the setting is below the wanted torque and the card value set is above it; turned back it is the other way', () => {
  fc.assert(
    fc.property(torqueNm, adapter, (wanted, on) => {
      fc.pre(on.adapterMm > 1 && Math.abs(on.angleDeg - 90) > 1)
      const forward = on.angleDeg < 90
      const settingNm = wrenchSetting({ torqueNm: wanted, adapter: on })
      expect(settingNm < wanted).toBe(forward)
      expect(pulled({ settingNm, cardNm: wanted, errorPercent: 0, adapter: on }).shownTorqueNm! > wanted).toBe(forward)
    })
  )
})

it('an adapter of no length changes nothing', () => {
  expect(wrenchSetting({ torqueNm: 17.5, adapter: { leverMm: 300, adapterMm: 0, angleDeg: 45 } })).toBeCloseTo(17.5, 12)
})

describe('accuracy of the wrench', () => {
  // 20 N·m ± 4 % by hand: 19.2 to 20.8 N·m; with 60 mm on 240 mm the card value set gives 25 N·m ± 4 %: 24 to 26 N·m.
  const errorPercent = new Given(0, { low: -4, high: 4 })
  const on = { leverMm: new Given(240), adapterMm: new Given(60), angleDeg: new Given(0) }

  it('is what the fastener may be off by', () => {
    const tree = { settingNm: new Given(16), cardNm: new Given(20), errorPercent, adapter: on }
    const { fastenerNm, shownTorqueNm } = boundsOf(tree, pulled)
    expect([fastenerNm.low, fastenerNm.value, fastenerNm.high].map(nm => Number(nm.toFixed(9)))).toEqual([19.2, 20, 20.8])
    expect([shownTorqueNm!.low, shownTorqueNm!.value, shownTorqueNm!.high].map(nm => Number(nm.toFixed(9)))).toEqual([24, 25, 26])
  })

  it('without an adapter the setting is what is meant, and there is no trap', () => {
    const tree = { settingNm: new Given(20), cardNm: new Given(20), errorPercent, adapter: undefined }
    const { fastenerNm, shownTorqueNm } = boundsOf(tree, pulled)
    expect([fastenerNm.low, fastenerNm.high]).toEqual([expect.closeTo(19.2, 9), expect.closeTo(20.8, 9)])
    expect(shownTorqueNm).toBeUndefined()
  })
})

// Set to 20 N·m, and 4 % too strong: 20.8 N·m; with 60 mm on 240 mm, 20·1.04·300/240 = 26 N·m.
it('a wrench that gives more than it is set to', () => {
  const straight = pulled({ settingNm: 20, cardNm: 20, errorPercent: 4, adapter: undefined })
  expect(straight.fastenerNm).toBeCloseTo(20.8, 12)
  const extended = pulled({ settingNm: 20, cardNm: 20, errorPercent: 4, adapter: { leverMm: 240, adapterMm: 60, angleDeg: 0 } })
  expect(extended.fastenerNm).toBeCloseTo(26, 12)
})

it('room in the span of the wrench is negative on the side where the setting lies outside', () => {
  expect(aboveLeastNm({ settingNm: 16, leastNm: 5 })).toBe(11)
  expect(aboveLeastNm({ settingNm: 4, leastNm: 5 })).toBe(-1)
  expect(belowGreatestNm({ settingNm: 16, greatestNm: 25 })).toBe(9)
  expect(belowGreatestNm({ settingNm: 26, greatestNm: 25 })).toBe(-1)
})

// 300 - 299.8995 = 0.1005 mm, and a tenth of a millimetre is called none.
it('the least lever that has an answer', () => {
  const reachMm = 300 - 299.8995
  const adapter = { leverMm: 300, adapterMm: 299.8995, angleDeg: 180 }
  expect(wrenchSetting({ torqueNm: 0.001, adapter })).toBeCloseTo((0.001 * 300) / reachMm, 9)
})

it.each([
  { adapterMm: 299.9005, angleDeg: 180 },
  { adapterMm: 300, angleDeg: 180 },
  { adapterMm: 400, angleDeg: 150 }
])('an adapter of $adapterMm mm at $angleDeg° on a 300 mm wrench has no answer', on => {
  expect(() => wrenchSetting({ torqueNm: 10, adapter: { leverMm: 300, ...on } })).toThrow(NoAnswer)
})
