import { fact, formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { cotDeg } from './cotangent.ts'

export const oldTipMm = formula('oldTipMm', {
  says: 'depth of the old bottom at the axis',
  symbol: 'h0',
  equation: 'h + b',
  inputs: { foundDepthMm: ['h', 0.1, 300], rodFallMm: ['b', 0, 200] },
  source: SOURCES.geometry,
  of: ({ foundDepthMm, rodFallMm }) => foundDepthMm + rodFallMm
})

export const rimGainMm = formula('rimGainMm', {
  says: 'gap at the rim less gap at the point',
  symbol: 'w',
  equation: 'r·cot(β/2) - b',
  inputs: { rimRadiusMm: ['r', 0.25, 50], pointDeg: ['β', 60, 180], rimFallMm: ['b', 0, 200] },
  source: SOURCES.geometry,
  of: ({ rimRadiusMm, pointDeg, rimFallMm }) => rimRadiusMm * cotDeg(pointDeg / 2) - rimFallMm
})

export const pointStopMm = formula('pointStopMm', {
  says: 'stop at which the point keeps clear of the old bottom',
  symbol: 's1',
  equation: 'h0 - k - e',
  inputs: { oldTipMm: ['h0', 0.1, 500], keepClearMm: ['k', 0, 50], stopErrorMm: ['e', -10, 10] },
  source: SOURCES.geometry,
  of: ({ oldTipMm, keepClearMm, stopErrorMm }) => oldTipMm - keepClearMm - stopErrorMm
})

export const rimStopMm = formula('rimStopMm', {
  says: 'stop at which the rim keeps clear of the old bottom',
  symbol: 's2',
  equation: 'h0 + w - k - e',
  inputs: { oldTipMm: ['h0', 0.1, 500], rimGainMm: ['w', -200, 100], keepClearMm: ['k', 0, 50], stopErrorMm: ['e', -10, 10] },
  source: SOURCES.geometry,
  of: ({ oldTipMm, rimGainMm, keepClearMm, stopErrorMm }) => oldTipMm + rimGainMm - keepClearMm - stopErrorMm
})

export const pointGapMm = formula('pointGapMm', {
  says: 'gap between the point and the old bottom',
  symbol: 'g1',
  equation: 'h0 - s - e',
  inputs: { oldTipMm: ['h0', 0.1, 500], tipDepthMm: ['s', 0, 500], stopErrorMm: ['e', -10, 10] },
  source: SOURCES.geometry,
  of: ({ oldTipMm, tipDepthMm, stopErrorMm }) => oldTipMm - tipDepthMm - stopErrorMm
})

export const rimGapMm = formula('rimGapMm', {
  says: 'gap between the drill and the rim of the old bottom',
  symbol: 'g2',
  equation: 'h0 + w - s - e',
  inputs: { oldTipMm: ['h0', 0.1, 500], rimGainMm: ['w', -200, 100], tipDepthMm: ['s', 0, 500], stopErrorMm: ['e', -10, 10] },
  source: SOURCES.geometry,
  of: ({ oldTipMm, rimGainMm, tipDepthMm, stopErrorMm }) => oldTipMm + rimGainMm - tipDepthMm - stopErrorMm
})

/** What the stop is set to keep. */
export const LEAST_GAP = fact('leastGapMm', {
  says: 'least gap between the drill and the old bottom, over all radii',
  symbol: 'gmin',
  source: SOURCES.geometry
})
