import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const capacityJPerK = formula('capacityJPerK', {
  says: 'heat to warm the block by one kelvin',
  symbol: 'C',
  equation: 'm·c',
  inputs: { massKg: ['m', 0.001, 5000], heatJPerKgK: ['c', 100, 5000] },
  source: SOURCES['heat-balance'],
  of: ({ massKg, heatJPerKgK }) => massKg * heatJPerKgK
})

/** What is taken for the size of a block of which only the surface is known. */
export const compactSizeMm = formula('compactSizeMm', {
  says: 'diameter of a cylinder as long as it is thick, of this surface',
  symbol: 'L',
  equation: '1000·√(A/(1.5·π))',
  inputs: { areaM2: ['A', 1e-5, 10] },
  source: SOURCES.geometry,
  of: ({ areaM2 }) => 1000 * Math.sqrt(areaM2 / (1.5 * Math.PI))
})

export const lossWPerK = formula('lossWPerK', {
  says: 'heat lost to the air by one kelvin',
  symbol: 'G',
  equation: 'h·A',
  inputs: { filmWPerM2K: ['h', 0.1, 10000], areaM2: ['A', 1e-5, 100] },
  source: SOURCES['heat-balance'],
  of: ({ filmWPerM2K, areaM2 }) => filmWPerM2K * areaM2
})

export const steadyC = formula('steadyC', {
  says: 'temperature that the block settles at',
  symbol: 'Ts',
  equation: 'Ta + P/G',
  inputs: { airC: ['Ta', -90, 150], powerW: ['P', 0, 20000], lossWPerK: ['G', 1e-5, 1e6] },
  source: SOURCES['heat-balance'],
  of: ({ airC, powerW, lossWPerK }) => airC + powerW / lossWPerK
})

export const timeConstantS = formula('timeConstantS', {
  says: 'time constant: after it 63 % of the way is done',
  symbol: 'τ',
  equation: 'C/G',
  inputs: { capacityJPerK: ['C', 0.1, 1e8], lossWPerK: ['G', 1e-5, 1e6] },
  source: SOURCES['heat-balance'],
  of: ({ capacityJPerK, lossWPerK }) => capacityJPerK / lossWPerK
})

export const gapK = formula('gapK', {
  says: 'still to go to the steady temperature',
  symbol: 'θ',
  equation: 'Ts - T',
  inputs: { steadyC: ['Ts', -100, 1e9], blockC: ['T', -100, 2000] },
  source: SOURCES.arithmetic,
  of: ({ steadyC, blockC }) => steadyC - blockC
})

/** Nought: the target is only reached in the end, that is never. */
export const holdMarginK = formula('holdMarginK', {
  says: 'steady temperature above the target',
  symbol: 'mh',
  equation: 'Ts - Tt',
  inputs: { steadyC: ['Ts', -100, 1e9], targetC: ['Tt', -100, 2000] },
  source: SOURCES.arithmetic,
  of: ({ steadyC, targetC }) => steadyC - targetC
})

export const timeToTargetS = formula('timeToTargetS', {
  says: 'time from the start to the target',
  symbol: 't',
  equation: 'τ·log(θ0/θ1)',
  inputs: { timeConstantS: ['τ', 1e-6, 1e13], startGapK: ['θ0', 1e-13, 1e10], targetGapK: ['θ1', 1e-13, 1e10] },
  source: SOURCES['heat-balance'],
  of: ({ timeConstantS, startGapK, targetGapK }) => timeConstantS * Math.log(startGapK / targetGapK)
})

export const blockC = formula('blockC', {
  says: 'temperature of the block at a time',
  symbol: 'T',
  equation: 'Ts + (T0 - Ts)·exp(-t/τ)',
  inputs: { steadyC: ['Ts', -100, 1e9], startC: ['T0', -100, 2000], timeS: ['t', 0, 1e9], timeConstantS: ['τ', 1e-6, 1e13] },
  source: SOURCES['heat-balance'],
  of: ({ steadyC, startC, timeS, timeConstantS }) => steadyC + (startC - steadyC) * Math.exp(-timeS / timeConstantS)
})

/** Below 0.1 the block may be taken as one temperature. */
export const biotRatio = formula('biotRatio', {
  says: 'Biot number: resistance inside the block beside that of its film',
  symbol: 'Bi',
  equation: 'h·m/(ρ·A·k)',
  inputs: {
    filmWPerM2K: ['h', 0.1, 10000],
    massKg: ['m', 0.001, 5000],
    densityKgPerM3: ['ρ', 100, 25000],
    areaM2: ['A', 1e-5, 100],
    conductivityWPerMK: ['k', 0.01, 500]
  },
  source: SOURCES['heat-balance'],
  of: ({ filmWPerM2K, massKg, densityKgPerM3, areaM2, conductivityWPerMK }) =>
    (filmWPerM2K * massKg) / (densityKgPerM3 * areaM2 * conductivityWPerMK)
})

export const targetC = formula('targetC', {
  says: 'target, so far above the higher of dew and frost point',
  symbol: 'Tt',
  equation: 'tp + Δ',
  inputs: { pointC: ['tp', -65, 60], aboveK: ['Δ', 0, 100] },
  source: SOURCES.arithmetic,
  of: ({ pointC, aboveK }) => pointC + aboveK
})
