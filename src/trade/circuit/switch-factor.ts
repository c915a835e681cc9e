import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { threeDigits } from './three-digits.ts'

export type SwitchLoad = 'lamp' | 'inductive' | 'resistive' | 'motor'

/** FAA AC 43.13-1B table 11-4: nominal rating over continuous load. */
export const SWITCH_FACTORS = [
  { row: '12 V DC', greatestV: 16, lamp: 5, inductive: 2, resistive: 1, motor: 2 },
  { row: '28 V DC', greatestV: 32, lamp: 8, inductive: 4, resistive: 2, motor: 3 }
] as const

/** Up to here a factor is printed. */
export const MOST_SWITCH_V = SWITCH_FACTORS[1].greatestV

/** Silver contacts do not stay clean on less, unless rated for low energy. */
export const LEAST_SILVER_V = 8

export const neededRatingA = formula('neededRatingA', {
  says: 'nominal DC rating that a switch must have',
  symbol: 'In',
  equation: 'I·f',
  inputs: { currentA: ['I', 0, 1000], switchFactor: ['f', 1, 10] },
  source: SOURCES['ac-11-4'],
  of: ({ currentA, switchFactor }) => currentA * switchFactor
})

export interface SwitchRow {
  readonly row: '12 V DC' | '28 V DC'
  readonly switchFactor: number
  readonly says: string
}

/** The row a bus is read at: a 14 V system at the one of 12 V, a 24 V system at the one of 28 V. */
export function switchRow({ busV, load }: { readonly busV: number; readonly load: SwitchLoad }): SwitchRow {
  const found = SWITCH_FACTORS.find(row => busV <= row.greatestV)
  if (found === undefined || !(busV > 0)) throw new OutsideRange('switchFactor', 'busV', busV, 0, MOST_SWITCH_V)
  const facts = fact('switchFactor', { says: 'rating over load of a switch', symbol: 'f', source: SOURCES['ac-11-4'] })
  recordStep(facts, found[load], () => `${load} load, ${found.row}`)
  return { row: found.row, switchFactor: found[load], says: `${threeDigits(busV)} V read at the ${found.row} row` }
}
