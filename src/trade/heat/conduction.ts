import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const jointWPerK = formula('jointWPerK', {
  says: 'conductance of the joint between the heated part and the casting',
  symbol: 'Gj',
  equation: 'Aj/(10^6·R)',
  inputs: { contactMm2: ['Aj', 1, 1e6], contactM2KPerW: ['R', 1e-7, 0.1] },
  source: SOURCES['heat-balance'],
  of: ({ contactMm2, contactM2KPerW }) => contactMm2 / (1e6 * contactM2KPerW)
})

export const wholeWPerM2K = formula('wholeWPerM2K', {
  says: 'film and radiation together',
  symbol: 'h',
  equation: 'hc + hr',
  inputs: { filmWPerM2K: ['hc', 0, 10000], radiationWPerM2K: ['hr', 0, 1000] },
  source: SOURCES.arithmetic,
  of: ({ filmWPerM2K, radiationWPerM2K }) => filmWPerM2K + radiationWPerM2K
})

export const outWPerK = formula('outWPerK', {
  says: 'heat that leaves the casting by one kelvin, to air and machine',
  symbol: 'Go',
  equation: 'G + Gm',
  inputs: { lossWPerK: ['G', 1e-5, 1e6], machineWPerK: ['Gm', 0, 1e4] },
  source: SOURCES['heat-balance'],
  of: ({ lossWPerK, machineWPerK }) => lossWPerK + machineWPerK
})

export const outC = formula('outC', {
  says: 'temperature of air and machine together, by how much each takes',
  symbol: 'To',
  equation: '(G·Ta + Gm·Tm)/(G + Gm)',
  inputs: { lossWPerK: ['G', 1e-5, 1e6], airC: ['Ta', -90, 150], machineWPerK: ['Gm', 0, 1e4], machineC: ['Tm', -90, 300] },
  source: SOURCES['heat-balance'],
  of: ({ lossWPerK, airC, machineWPerK, machineC }) => (lossWPerK * airC + machineWPerK * machineC) / (lossWPerK + machineWPerK)
})

export const castingC = formula('castingC', {
  says: 'temperature that the casting settles at',
  symbol: 'T2',
  equation: 'To + P/Go',
  inputs: { outC: ['To', -90, 300], powerW: ['P', 0, 20000], outWPerK: ['Go', 1e-5, 1e6] },
  source: SOURCES['heat-balance'],
  of: ({ outC, powerW, outWPerK }) => outC + powerW / outWPerK
})

export const bodyC = formula('bodyC', {
  says: 'temperature that the heated part settles at',
  symbol: 'T1',
  equation: 'T2 + P/Gj',
  inputs: { castingC: ['T2', -90, 1e9], powerW: ['P', 0, 20000], jointWPerK: ['Gj', 1e-5, 1e7] },
  source: SOURCES['heat-balance'],
  of: ({ castingC, powerW, jointWPerK }) => castingC + powerW / jointWPerK
})

const PAIR = {
  bodyJPerK: ['C1', 0.1, 1e8],
  castingJPerK: ['C2', 0.1, 1e8],
  jointWPerK: ['Gj', 1e-5, 1e7],
  outWPerK: ['Go', 1e-5, 1e6]
} as const

/** From the greater root of s² + s·(Gj/C1 + (Gj + Go)/C2) + Gj·Go/(C1·C2). */
export const fastS = formula('fastS', {
  says: 'time constant of the heated part against the casting',
  symbol: 'τf',
  equation: '2/(Gj/C1 + (Gj + Go)/C2 + √((Gj/C1 + (Gj + Go)/C2)^2 - 4·Gj·Go/(C1·C2)))',
  inputs: PAIR,
  source: SOURCES['heat-balance'],
  of: ({ bodyJPerK, castingJPerK, jointWPerK, outWPerK }) => {
    const sum = jointWPerK / bodyJPerK + (jointWPerK + outWPerK) / castingJPerK
    return 2 / (sum + Math.sqrt(sum ** 2 - (4 * jointWPerK * outWPerK) / (bodyJPerK * castingJPerK)))
  }
})

/** The product of the two time constants is C1·C2/(Gj·Go): so no difference of near numbers is taken. */
export const slowS = formula('slowS', {
  says: 'time constant of both together',
  symbol: 'τs',
  equation: 'C1·C2/(Gj·Go·τf)',
  inputs: { ...PAIR, fastS: ['τf', 1e-9, 1e13] },
  source: SOURCES['heat-balance'],
  of: ({ bodyJPerK, castingJPerK, jointWPerK, outWPerK, fastS }) => (bodyJPerK * castingJPerK) / (jointWPerK * outWPerK * fastS)
})
