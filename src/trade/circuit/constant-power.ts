import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'
import { threeDigits } from './three-digits.ts'

/** No more than U²/4r can arrive through a loop of r, when half the voltage is lost in it. */
export const greatestW = formula('greatestW', {
  says: 'greatest power that can arrive',
  symbol: 'Pm',
  equation: 'U^2/(4·r)',
  inputs: { busV: ['U', 0.1, 1000], loopOhm: ['r', 1e-12, 1e7] },
  source: SOURCES.ohm,
  of: ({ busV, loopOhm }) => busV ** 2 / (4 * loopOhm)
})

export const loadingRatio = formula('loadingRatio', {
  says: 'power wanted to the greatest that can arrive',
  symbol: 's',
  equation: '4·r·P/U^2',
  inputs: { loopOhm: ['r', 0, 1e7], powerW: ['P', 0.001, 100000], busV: ['U', 0.1, 1000] },
  source: SOURCES.ohm,
  of: ({ loopOhm, powerW, busV }) => (4 * loopOhm * powerW) / busV ** 2
})

export const upperV = formula('upperV', {
  says: 'voltage at a load of constant power, the upper and stable one',
  symbol: 'V',
  equation: 'U·(1 + √(1 - s))/2',
  inputs: { busV: ['U', 0.1, 1000], loadingRatio: ['s', 0, 1] },
  source: SOURCES.ohm,
  of: ({ busV, loadingRatio }) => (busV * (1 + Math.sqrt(1 - loadingRatio))) / 2
})

export const constantPowerA = formula('constantPowerA', {
  says: 'current of a load of constant power',
  symbol: 'I',
  equation: 'P/V',
  inputs: { powerW: ['P', 0.001, 100000], upperV: ['V', 0.05, 1000] },
  source: SOURCES.ohm,
  of: ({ powerW, upperV }) => powerW / upperV
})

/** The two roots multiply to r·P: this keeps the digits that U·(1 - √(1 - s))/2 loses where the lower one is small. */
export const lowerV = formula('lowerV', {
  says: 'the lower voltage that fits as well: no load stays there',
  symbol: 'Vl',
  equation: 'r·P/V',
  inputs: { loopOhm: ['r', 0, 1e7], powerW: ['P', 0.001, 100000], upperV: ['V', 0.05, 1000] },
  source: SOURCES.ohm,
  of: ({ loopOhm, powerW, upperV }) => (loopOhm * powerW) / upperV
})

export const lowerA = formula('lowerA', {
  says: 'current at the lower voltage',
  symbol: 'Il',
  equation: 'V/r',
  inputs: { upperV: ['V', 0.05, 1000], loopOhm: ['r', 1e-12, 1e7] },
  source: SOURCES.ohm,
  of: ({ upperV, loopOhm }) => upperV / loopOhm
})

export interface ConstantPower {
  readonly busV: number
  readonly loopOhm: number
  readonly powerW: number
}

/** Rounding of a load that takes exactly the greatest power. */
const ROUNDING = 1e-12

/** The stable one of the two currents at which a load of constant power can stand, if it can at all. */
export function operatingPoint({ busV, loopOhm, powerW }: ConstantPower) {
  const ratio = loadingRatio({ loopOhm, powerW, busV })
  if (ratio > 1 + ROUNDING) throw noPoint({ busV, loopOhm, powerW })
  const voltage = upperV({ busV, loadingRatio: Math.min(1, ratio) })
  return { upperV: voltage, constantPowerA: constantPowerA({ powerW, upperV: voltage }) }
}

/** The other root, for information: nothing where the loop has no resistance, for there is none. */
export function lowerRoot({ busV, loopOhm, powerW }: ConstantPower): { readonly lowerV: number; readonly lowerA: number } | undefined {
  if (loopOhm === 0) return undefined
  const { upperV } = operatingPoint({ busV, loopOhm, powerW })
  return { lowerV: lowerV({ loopOhm, powerW, upperV }), lowerA: lowerA({ upperV, loopOhm }) }
}

function noPoint({ busV, loopOhm, powerW }: ConstantPower): NoAnswer {
  const most = threeDigits(greatestW({ busV, loopOhm }), 'down')
  const loop = threeDigits(busV ** 2 / (4 * powerW), 'down')
  const bus = threeDigits(Math.sqrt(4 * powerW * loopOhm), 'up')
  return new NoAnswer(
    `no operating point: from ${threeDigits(busV)} V through ${threeDigits(loopOhm)} ohm at most ${most} W can arrive, and the load takes ${threeDigits(powerW)} W whatever its voltage`,
    `bring the loop to ${loop} ohm or less (thicker or shorter wire, better joints), raise the bus to ${bus} V or more, or take ${most} W or less`
  )
}
