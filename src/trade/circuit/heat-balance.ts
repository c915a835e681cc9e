import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// One lump of copper: heat made by I²R with R rising, heat stored in the copper alone, heat lost in proportion to the rise
// over the surroundings. The loss is the one at which the wire carries its continuous current at its rated temperature.
// Nothing published covers a wire between 5 s and its continuous current; without the loss this is the 5 s formula.

/** Above 1 the heat made grows faster than the heat lost: no steady temperature. */
export const heatingRatio = formula('heatingRatio', {
  says: 'heat that a warmer wire makes more, over the heat that it loses more',
  symbol: 'u',
  equation: '(I/Ia)^2·r/(234.5+Tr)',
  inputs: { currentA: ['I', 0, 20_000], ampacityA: ['Ia', 0.1, 2000], riseK: ['r', 1, 390], ratedC: ['Tr', 20, 300] },
  source: SOURCES.practice,
  of: ({ currentA, ampacityA, riseK, ratedC }) => ((currentA / ampacityA) ** 2 * riseK) / (234.5 + ratedC)
})

/** Copper stores 0.00345 J/(K·mm³), that is 3.45 J/K in a metre of 1 mm². */
export const wireTimeConstantS = formula('wireTimeConstantS', {
  says: 'time constant of a copper wire without its insulation',
  symbol: 'τ',
  equation: '3.45·S·r·254.5/(Ia^2·R·(234.5+Tr))',
  inputs: {
    areaMm2: ['S', 0.01, 300],
    riseK: ['r', 1, 390],
    ampacityA: ['Ia', 0.1, 2000],
    resistanceOhmPerM: ['R', 1e-5, 2],
    ratedC: ['Tr', 20, 300]
  },
  source: SOURCES.practice,
  of: ({ areaMm2, riseK, ampacityA, resistanceOhmPerM, ratedC }) =>
    (3.45 * areaMm2 * riseK * 254.5) / (ampacityA ** 2 * resistanceOhmPerM * (234.5 + ratedC))
})

export const wireSteadyC = formula('wireSteadyC', {
  says: 'temperature that a wire settles at',
  symbol: 'Ts',
  equation: '(Ta+234.5·u)/(1-u)',
  inputs: { ambientC: ['Ta', -90, 300], heatingRatio: ['u', 0, 0.999999] },
  source: SOURCES.practice,
  of: ({ ambientC, heatingRatio }) => (ambientC + 234.5 * heatingRatio) / (1 - heatingRatio)
})

export const warmedC = formula('warmedC', {
  says: 'temperature of a wire after a time at one current, at most where copper melts',
  symbol: 'T',
  equation: 'min(1083,Ti+(u·(234.5+Ti)-(Ti-Ta))·(1-exp(-(1-u)·t/τ))/(1-u))',
  inputs: {
    startC: ['Ti', -90, 300],
    ambientC: ['Ta', -90, 300],
    heatingRatio: ['u', 0, 1e6],
    timeS: ['t', 0, 1e6],
    wireTimeConstantS: ['τ', 1e-3, 1e5]
  },
  source: SOURCES.practice,
  of: ({ startC, ambientC, heatingRatio, timeS, wireTimeConstantS }) => {
    const pull = heatingRatio * (234.5 + startC) - (startC - ambientC)
    return Math.min(1083, startC + pull * grown(1 - heatingRatio, timeS / wireTimeConstantS))
  }
})

export const reachedS = formula('reachedS', {
  says: 'time in which a current brings a wire to a temperature',
  symbol: 't',
  equation: '-τ/(1-u)·log(1-(T-Ti)·(1-u)/(u·(234.5+Ti)-(Ti-Ta)))',
  inputs: {
    limitC: ['T', 0, 1083],
    startC: ['Ti', -90, 300],
    ambientC: ['Ta', -90, 300],
    heatingRatio: ['u', 0, 1e6],
    wireTimeConstantS: ['τ', 1e-3, 1e5]
  },
  source: SOURCES.practice,
  of: ({ limitC, startC, ambientC, heatingRatio, wireTimeConstantS }) => {
    const share = (limitC - startC) / (heatingRatio * (234.5 + startC) - (startC - ambientC))
    const back = 1 - heatingRatio
    return wireTimeConstantS * (Math.abs(back) < 1e-9 ? share : -Math.log1p(-share * back) / back)
  }
})

/** (1 − e^(−a·x))/a, which is x where a is nought. */
function grown(a: number, x: number): number {
  return Math.abs(a) < 1e-9 ? x : -Math.expm1(-a * x) / a
}
