import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The gauge number counts draws through the plate: each makes the wire thinner by the same share. */
export const solidMm = formula('solidMm', {
  says: 'diameter of solid wire, by gauge number',
  symbol: 'd',
  equation: '0.127·92^((36 - n)/39)',
  inputs: { gaugeCount: ['n', -3, 40] },
  source: SOURCES['astm-b258'],
  of: ({ gaugeCount }) => 0.127 * 92 ** ((36 - gaugeCount) / 39)
})

export const solidMm2 = formula('solidMm2', {
  says: 'section of solid wire',
  symbol: 'A',
  equation: 'π·d^2/4',
  inputs: { solidMm: ['d', 0.01, 20] },
  source: SOURCES.geometry,
  of: ({ solidMm }) => (Math.PI * solidMm ** 2) / 4
})

export const solidOhmPerM = formula('solidOhmPerM', {
  says: 'resistance of solid copper at 20 °C',
  symbol: 'r20',
  equation: '0.017241/A',
  inputs: { solidMm2: ['A', 1e-4, 300] },
  source: SOURCES['iacs-copper'],
  of: ({ solidMm2 }) => 0.017241 / solidMm2
})

/**
 * The same law as 1 + 0.00393·(t - 20): both are 1.1179 at 50 °C, and part by 0.0001 at 130 °C,
 * since 1/254.5 is 0.003929. Taken is the form that is printed for wire runs.
 */
export const hotOhmPerM = formula('hotOhmPerM', {
  says: 'resistance of the conductor at its temperature',
  symbol: 'r',
  equation: 'r20·(234.5 + t)/254.5',
  inputs: { conductorOhmPerM: ['r20', 1e-6, 100], conductorC: ['t', -80, 260] },
  source: SOURCES['iacs-copper'],
  of: ({ conductorOhmPerM, conductorC }) => (conductorOhmPerM * (234.5 + conductorC)) / 254.5
})
