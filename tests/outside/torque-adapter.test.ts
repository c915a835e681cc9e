// table: setting of a torque wrench with an adapter against manuals (rows/torque-adapter.ts)
import { describe, expect, it } from 'vitest'
import { pulled, wrenchSetting } from '../../src/trade/joint/torque-wrench.ts'
import { AT_FASTENER, SETTINGS } from './rows/torque-adapter.ts'

describe('what to set', () => {
  it.each(SETTINGS)('$given', ({ torqueNm, leverMm, adapterMm, angleDeg, setting, unitNm, slack }) => {
    const set = wrenchSetting({ torqueNm, adapter: { leverMm, adapterMm, angleDeg } }) / unitNm
    expect(Math.abs(set - setting)).toBeLessThanOrEqual(slack)
  })

  // Adapter page of the torque notes (read-secondary): straight back it shortens, so T·L/(L - E). Inputs invented: 20·300/(300 - 50).
  it('an adapter turned back shortens', () => {
    expect(wrenchSetting({ torqueNm: 20, adapter: { leverMm: 300, adapterMm: 50, angleDeg: 180 } })).toBeCloseTo(24, 9)
  })
})

describe('what the fastener gets', () => {
  const { settingNm, leverMm, adapterMm, gotNm } = AT_FASTENER
  const adapter = { leverMm, adapterMm, angleDeg: 0 }

  it('60 lbf·in on a 12 in wrench with a 2 in extension is 70 lbf·in', () => {
    expect(pulled({ settingNm, cardNm: gotNm, errorPercent: 0, adapter }).fastenerNm).toBeCloseTo(gotNm, 9)
  })

  it('the card value set with the extension on is that much too high', () => {
    expect(pulled({ settingNm, cardNm: settingNm, errorPercent: 0, adapter }).shownTorqueNm).toBeCloseTo(gotNm, 9)
  })
})
