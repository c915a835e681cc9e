import { fact, formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'

/** In what order loads are given up. `essential` is never proposed. */
export type Priority = 'essential' | 'useful' | 'comfort'

export interface LoadGiven {
  readonly name: string
  readonly currentA: Given
  readonly dutyPercent: Given
  readonly priority: Priority
}

export const meanA = formula('meanA', {
  says: 'current of a load averaged over its duty',
  symbol: 'Im',
  equation: 'I·p/100',
  inputs: { currentA: ['I', 0, 5000], dutyPercent: ['p', 0, 100] },
  source: SOURCES.arithmetic,
  of: ({ currentA, dutyPercent }) => (currentA * dutyPercent) / 100
})

/** Sum of all loads, each with its duty. */
export function loadA(loads: readonly Plain<LoadGiven>[]): number {
  const parts = loads.map(({ currentA, dutyPercent }) => meanA({ currentA, dutyPercent }))
  const sum = parts.reduce((a, b) => a + b, 0)
  recordStep(fact('loadA', { says: 'sum of the loads', symbol: 'I', source: SOURCES.arithmetic }), sum, () =>
    parts.map(part => Number(part.toPrecision(5))).join(' + ')
  )
  return sum
}
