// table: stops and gaps by hand, the drill going 0.2 mm too deep
import { expect, it } from 'vitest'
import * as clearance from '../../../src/trade/hole/clearance.ts'
import * as depth from '../../../src/trade/hole/depth.ts'
import * as tapping from '../../../src/trade/hole/tapping.ts'

const [oldTipMm, rimGainMm, keepClearMm, stopErrorMm, tipDepthMm] = [20, 1.5, 0.5, 0.2, 18]

it.each([
  ['stop for the point, 20 − 0.5 − 0.2', () => clearance.pointStopMm({ oldTipMm, keepClearMm, stopErrorMm }), 19.3],
  ['stop for the rim, 20 + 1.5 − 0.5 − 0.2', () => clearance.rimStopMm({ oldTipMm, rimGainMm, keepClearMm, stopErrorMm }), 20.8],
  ['gap at the point, 20 − 18.2', () => clearance.pointGapMm({ oldTipMm, tipDepthMm, stopErrorMm }), 1.8],
  ['gap at the rim, 21.5 − 18.2', () => clearance.rimGapMm({ oldTipMm, rimGainMm, tipDepthMm, stopErrorMm }), 3.3],
  ['full diameter to 18.2 − 3', () => depth.fullDiameterDepthMm({ tipDepthMm, stopErrorMm, pointLengthMm: 3 }), 15.2],
  ['metal left, 20 + 4 − 18.2', () => depth.metalLeftMm({ oldTipMm, metalBelowMm: 4, tipDepthMm, stopErrorMm }), 5.8],
  ['turns, (15.2 − 0.8)/1.5', () => tapping.tapTurns({ fullDiameterDepthMm: 15.2, tapClearMm: 0.8, pitchMm: 1.5 }), 9.6],
  [
    'thread, 15.2 − 0.8 − 4·1.5',
    () => tapping.threadDepthMm({ fullDiameterDepthMm: 15.2, tapClearMm: 0.8, chamferTurns: 4, pitchMm: 1.5 }),
    8.4
  ],
  ['beyond 6 mm', () => tapping.needMarginMm({ threadDepthMm: 8.4, needMm: 6 }), 2.4]
])('%s', (_, value, expected) => {
  expect(value()).toBeCloseTo(expected, 9)
})
