import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'

export const coldCapacityAh = formula('coldCapacityAh', {
  says: 'capacity that is left in the cold, taken off before the discharge rate',
  symbol: 'Cc',
  equation: 'C·p/100',
  inputs: { capacityAh: ['C', 0.1, 5000], coldPercent: ['p', 1, 110] },
  source: SOURCES.practice,
  of: ({ capacityAh, coldPercent }) => (capacityAh * coldPercent) / 100
})

/** The form that fits the label of a battery. H in seconds, so 3600·C is the charge in A·s. */
export const enduranceS = formula('enduranceS', {
  says: 'time that the battery alone carries a current',
  symbol: 't',
  equation: 'H·(3600·C/(I·H))^k',
  inputs: { capacityAh: ['C', 0.01, 5000], rateS: ['H', 60, 864_000], currentA: ['I', 0.001, 5000], peukertFactor: ['k', 1, 2] },
  source: SOURCES.peukert,
  of: ({ capacityAh, rateS, currentA, peukertFactor }) => rateS * ((3600 * capacityAh) / (currentA * rateS)) ** peukertFactor
})

/** At less than the current of its label a battery gives no more than its label: the law says it would, and none does. */
export const slowEnduranceS = formula('slowEnduranceS', {
  says: 'time that the battery alone carries less than the current of its label',
  symbol: 't',
  equation: '3600·C/I',
  inputs: { capacityAh: ['C', 0.01, 5000], currentA: ['I', 0.001, 5000] },
  source: SOURCES.arithmetic,
  of: ({ capacityAh, currentA }) => (3600 * capacityAh) / currentA
})

export const deliveredPercent = formula('deliveredPercent', {
  says: 'share of the rated capacity that a current gets out',
  symbol: 'p',
  equation: '100·(I·H/(3600·C))^(1-k)',
  inputs: { capacityAh: ['C', 0.01, 5000], rateS: ['H', 60, 864_000], currentA: ['I', 0.001, 5000], peukertFactor: ['k', 1, 2] },
  source: SOURCES['battery-monitor'],
  of: ({ capacityAh, rateS, currentA, peukertFactor }) => 100 * ((currentA * rateS) / (3600 * capacityAh)) ** (1 - peukertFactor)
})

export const peukertFactor = formula('peukertFactor', {
  says: 'exponent from two discharges to the same voltage',
  symbol: 'k',
  equation: 'log(t2/t1)/log(I1/I2)',
  inputs: { firstA: ['I1', 0.001, 5000], firstS: ['t1', 1, 1e7], secondA: ['I2', 0.001, 5000], secondS: ['t2', 1, 1e7] },
  source: SOURCES['battery-monitor'],
  of: ({ firstA, firstS, secondA, secondS }) => {
    if (firstA === secondA) throw new NoAnswer('two discharges at one current give no exponent', 'discharge at two currents far apart')
    return Math.log(secondS / firstS) / Math.log(firstA / secondA)
  }
})

/**
 * The other form of the law gives what a battery would deliver at 1 A. Put into the form above as if it were a label, it
 * overstates the battery by far: convert it first.
 */
export const labelCapacityAh = formula('labelCapacityAh', {
  says: 'capacity at the rated time from the one-ampere capacity',
  symbol: 'C',
  equation: '(H/3600)·(3600·P/H)^(1/k)',
  inputs: { oneAmpereAh: ['P', 0.1, 50_000], rateS: ['H', 60, 864_000], peukertFactor: ['k', 1, 2] },
  source: SOURCES.peukert,
  of: ({ oneAmpereAh, rateS, peukertFactor }) => (rateS / 3600) * ((3600 * oneAmpereAh) / rateS) ** (1 / peukertFactor)
})
