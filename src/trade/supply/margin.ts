import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const marginA = formula('marginA', {
  says: 'output that the loads leave',
  symbol: 'M',
  equation: 'G-I',
  inputs: { outputA: ['G', 0, 5000], loadA: ['I', 0, 50_000] },
  source: SOURCES.arithmetic,
  of: ({ outputA, loadA }) => outputA - loadA
})

export const usedPercent = formula('usedPercent', {
  says: 'load over output',
  symbol: 'p',
  equation: '100·I/G',
  inputs: { outputA: ['G', 0.01, 5000], loadA: ['I', 0, 50_000] },
  source: SOURCES.arithmetic,
  of: ({ outputA, loadA }) => (100 * loadA) / outputA
})

/** Figures that a supply is held against. Which of them binds is a matter of the practice. */
export const SUPPLY_FIGURES = {
  continuousLoad: {
    greatestPercent: 80,
    says: 'continuous load over generator output where nothing monitors it: a rule of thumb, not a load analysis',
    source: SOURCES['ac-load']
  },
  lowVoltage: { leastV: 13, says: 'warning of low voltage on a 14 V system', source: SOURCES['ac-load'] },
  batteryAlone: {
    leastS: 1800,
    says: 'time on the battery after loss of the generator, small aeroplanes',
    source: SOURCES['14-cfr-23.1353']
  },
  analysis: { says: 'a load analysis takes probable combinations of loads for probable durations', source: SOURCES['14-cfr-23.1351'] }
} as const
