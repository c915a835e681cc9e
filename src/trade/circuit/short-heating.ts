import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'

/** Longer than this a wire gives off heat that these formulas keep in it. */
export const ADIABATIC_S = 5

export const withstandARootSPerMm2 = formula('withstandARootSPerMm2', {
  says: 'short-time factor of a conductor between two temperatures',
  symbol: 'k',
  equation: 'K·√(log((β+Tf)/(β+Ti)))',
  inputs: { materialARootSPerMm2: ['K', 50, 300], zeroC: ['β', 150, 300], startC: ['Ti', -60, 300], limitC: ['Tf', 20, 1500] },
  source: SOURCES['iec-60364-5-54'],
  of: ({ materialARootSPerMm2, zeroC, startC, limitC }) => {
    if (limitC <= startC)
      throw new NoAnswer('the conductor is at its limit before the short circuit', 'load it less or take another insulation')
    return materialARootSPerMm2 * Math.sqrt(Math.log((zeroC + limitC) / (zeroC + startC)))
  }
})

export const leastAreaMm2 = formula('leastAreaMm2', {
  says: 'section that stands a short circuit, all heat kept in the conductor',
  symbol: 'S',
  equation: '√(I^2·t)/k',
  inputs: { currentA: ['I', 0, 20_000], timeS: ['t', 0, ADIABATIC_S], withstandARootSPerMm2: ['k', 1, 400] },
  source: SOURCES['iec-60364-5-54'],
  of: ({ currentA, timeS, withstandARootSPerMm2 }) => Math.sqrt(currentA ** 2 * timeS) / withstandARootSPerMm2
})

/** The formula above solved for the temperature; it stops where the metal melts. */
export const adiabaticEndC = formula('adiabaticEndC', {
  says: 'temperature after a short circuit, all heat kept in the conductor',
  symbol: 'Tf',
  equation: 'min(m,(β+Ti)·exp((I/(K·S))^2·t)-β)',
  inputs: {
    currentA: ['I', 0, 20_000],
    timeS: ['t', 0, ADIABATIC_S],
    areaMm2: ['S', 0.01, 300],
    startC: ['Ti', -60, 300],
    materialARootSPerMm2: ['K', 50, 300],
    zeroC: ['β', 150, 300],
    meltC: ['m', 500, 1600]
  },
  source: SOURCES['iec-60364-5-54'],
  of: ({ currentA, timeS, areaMm2, startC, materialARootSPerMm2, zeroC, meltC }) =>
    Math.min(meltC, (zeroC + startC) * Math.exp((currentA / (materialARootSPerMm2 * areaMm2)) ** 2 * timeS) - zeroC)
})

/** 234 plus the ambient: a widely copied print has minus, which is wrong. */
export const onderdonkA = formula('onderdonkA', {
  says: 'current that melts a copper wire within seconds',
  symbol: 'I',
  equation: 'S/0.00050670748·√(log10(1+(Tm-Ta)/(234+Ta))/(33·t))',
  inputs: { areaMm2: ['S', 0.01, 300], timeS: ['t', 0.001, ADIABATIC_S], ambientC: ['Ta', -60, 200], meltC: ['Tm', 200, 1083] },
  source: SOURCES.onderdonk,
  of: ({ areaMm2, timeS, ambientC, meltC }) =>
    (areaMm2 / CIRCULAR_MIL_MM2) * Math.sqrt(Math.log10(1 + (meltC - ambientC) / (234 + ambientC)) / (33 * timeS))
})

/** π/4 of a square thousandth of an inch. */
const CIRCULAR_MIL_MM2 = 0.00050670748

export const preeceA = formula('preeceA', {
  says: 'current that melts a copper wire in free air in the long run',
  symbol: 'I',
  equation: '10244·(d/25.4)^1.5',
  inputs: { diameterMm: ['d', 0.05, 12] },
  source: SOURCES.preece,
  of: ({ diameterMm }) => 10_244 * (diameterMm / 25.4) ** 1.5
})

export const preeceDiameterMm = formula('preeceDiameterMm', {
  says: 'copper wire that a current melts in free air in the long run',
  symbol: 'd',
  equation: '25.4·(I/10244)^(2/3)',
  inputs: { currentA: ['I', 1, 3000] },
  source: SOURCES.preece,
  of: ({ currentA }) => 25.4 * (currentA / 10_244) ** (2 / 3)
})
