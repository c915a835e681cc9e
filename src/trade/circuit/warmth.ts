import { formula } from '../../formula/formula.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { SOURCES } from '../../formula/source.ts'
import { quoted } from '../../quantity/quoted.ts'
import * as balance from './heat-balance.ts'
import type { Flow } from './network.ts'
import type { PartOf } from './part.ts'
import { threeDigits } from './three-digits.ts'

export const elementC = formula('elementC', {
  says: 'temperature of a load, its rise in proportion to its power',
  symbol: 'T',
  equation: 'Ta+r·P/P0',
  inputs: { ambientC: ['Ta', -90, 300], hotRiseK: ['r', 0, 1500], takenW: ['P', 0, 1e6], hotW: ['P0', 1e-3, 1e6] },
  source: SOURCES.practice,
  of: ({ ambientC, hotRiseK, takenW, hotW }) => ambientC + (hotRiseK * takenW) / hotW
})

export const elementOhm = formula('elementOhm', {
  says: 'resistance of a load at its temperature',
  symbol: 'R',
  equation: 'R20·(1+c/100·(T-20))',
  inputs: { coldOhm: ['R20', 1e-7, 1e10], resistanceChangePerK: ['c', -0.05, 5], elementC: ['T', -90, 3000] },
  source: SOURCES.ohm,
  of: ({ coldOhm, resistanceChangePerK, elementC }) => coldOhm * (1 + (resistanceChangePerK / 100) * (elementC - 20))
})

export const runOhm = formula('runOhm', {
  says: 'resistance of a run of copper at its temperature, with its joints',
  symbol: 'R',
  equation: 'R20·(234.5+T)/254.5+j',
  inputs: { coldOhm: ['R20', 0, 1e6], conductorC: ['T', -90, 1083], jointsOhm: ['j', 0, 1e4] },
  source: SOURCES['iacs-copper'],
  of: ({ coldOhm, conductorC, jointsOhm }) => (coldOhm * (234.5 + conductorC)) / 254.5 + jointsOhm
})

/** Temperature that a part settles at with what flows in it now. */
export function settledC(part: PartOf<'warming' | 'wire'>, { currentA, powerW }: Flow): number {
  if (part.kind === 'wire') return wireC(part, Math.abs(currentA))
  const { ambientC, hotRiseK, hotW } = part
  return elementC({ ambientC, hotRiseK, takenW: Math.abs(powerW), hotW })
}

export function ohmAt(part: PartOf<'warming' | 'wire'>, atC: number): number {
  const { coldOhm } = part
  if (part.kind === 'wire') return runOhm({ coldOhm, conductorC: atC, jointsOhm: part.jointsOhm })
  return elementOhm({ coldOhm, resistanceChangePerK: part.resistanceChangePerK, elementC: atC })
}

const { heatingRatio: RATIOS } = balance.wireSteadyC.inputs

function wireC({ id, ampacityA, ratedC, ambientC }: PartOf<'wire'>, currentA: number): number {
  const heatingRatio = balance.heatingRatio({ currentA, ampacityA, riseK: ratedC - ambientC, ratedC })
  if (heatingRatio >= RATIOS[2]) throw runsAway(id, currentA, { ampacityA, ratedC })
  return balance.wireSteadyC({ ambientC, heatingRatio })
}

function runsAway(id: string, currentA: number, { ampacityA, ratedC }: Pick<PartOf<'wire'>, 'ampacityA' | 'ratedC'>): NoAnswer {
  const bring = `${threeDigits(ampacityA)} A bring it to the ${threeDigits(ratedC)} °C of its insulation`
  return new NoAnswer(
    `the wire ${quoted(id)} finds no steady temperature at ${threeDigits(currentA)} A: ${bring}`,
    'use thicker wire, or protect it so that this current does not last'
  )
}
