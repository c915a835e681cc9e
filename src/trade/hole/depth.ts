import { fact, formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { cotDeg } from './cotangent.ts'

export const openingMm = formula('openingMm', {
  says: 'how much the drill opens the old hole, on the diameter; negative: it passes through and cuts nothing',
  symbol: 'x',
  equation: 'd - D0',
  inputs: { drillMm: ['d', 0.5, 100], foundDiameterMm: ['D0', 0.5, 100] },
  source: SOURCES.geometry,
  of: ({ drillMm, foundDiameterMm }) => drillMm - foundDiameterMm
})

export const pointLengthMm = formula('pointLengthMm', {
  says: 'length of the drill point',
  symbol: 'lp',
  equation: 'd/2·cot(β/2)',
  inputs: { drillMm: ['d', 0.5, 100], pointDeg: ['β', 60, 180] },
  source: SOURCES.geometry,
  of: ({ drillMm, pointDeg }) => (drillMm / 2) * cotDeg(pointDeg / 2)
})

export const fullDiameterDepthMm = formula('fullDiameterDepthMm', {
  says: 'depth to the end of full diameter',
  symbol: 'hf',
  equation: 's + e - lp',
  inputs: { tipDepthMm: ['s', 0, 500], stopErrorMm: ['e', -10, 10], pointLengthMm: ['lp', 0, 100] },
  source: SOURCES.geometry,
  of: ({ tipDepthMm, stopErrorMm, pointLengthMm }) => tipDepthMm + stopErrorMm - pointLengthMm
})

export const metalLeftMm = formula('metalLeftMm', {
  says: "from the drill's tip to what lies behind, through what stays open of the old hole and the metal below it",
  symbol: 'm',
  equation: 'h0 + m0 - (s + e)',
  inputs: { oldTipMm: ['h0', 0.1, 500], metalBelowMm: ['m0', -50, 500], tipDepthMm: ['s', 0, 500], stopErrorMm: ['e', -10, 10] },
  source: SOURCES.geometry,
  of: ({ oldTipMm, metalBelowMm, tipDepthMm, stopErrorMm }) => oldTipMm + metalBelowMm - (tipDepthMm + stopErrorMm)
})

/** As measured; its low end may lie below nought, where the old hole may be open behind. */
export const METAL_BELOW = fact('metalBelowMm', {
  says: 'metal between the old bottom and what lies behind',
  symbol: 'm0',
  source: SOURCES.geometry
})

export const wallLeftMm = formula('wallLeftMm', {
  says: 'wall left beside the thread',
  symbol: 'v',
  equation: 'v0 - (D - D0)/2',
  inputs: { wallMm: ['v0', 0, 500], majorMm: ['D', 0.5, 110], foundDiameterMm: ['D0', 0.5, 100] },
  source: SOURCES.geometry,
  of: ({ wallMm, majorMm, foundDiameterMm }) => wallMm - (majorMm - foundDiameterMm) / 2
})
