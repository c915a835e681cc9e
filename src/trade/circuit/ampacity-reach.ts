import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Surroundings } from './ampacity-ambient.ts'
import type { PrintedCurrent } from './ampacity-table.ts'

export const reachA = formula('reachA', {
  says: 'current that brings the wire, as it lies, to the rating of its insulation: the heat lost is taken as proportional to the rise',
  symbol: 'Ir',
  equation: 'I·√(r/rh)',
  inputs: { carriesA: ['I', 0.01, 1500], riseK: ['r', 1, 390], heldRiseK: ['rh', 1, 390] },
  source: SOURCES.practice,
  of: ({ carriesA, riseK, heldRiseK }) => carriesA * Math.sqrt(riseK / heldRiseK)
})

/** By what it carries for good with the printed figure, in its own surroundings instead of those that the figure keeps to. */
export function reachOf(carriesA: number, printed: PrintedCurrent, { insulationC, ambientC }: Surroundings): number {
  const heldRiseK = insulationC - heldC(printed, { insulationC, ambientC })
  return reachA({ carriesA, riseK: insulationC - ambientC, heldRiseK })
}

/** The same wire with another insulation. */
export function reachWith(carriesA: number, { ambientC, insulationC }: Surroundings, otherC: number): number {
  return reachA({ carriesA, riseK: insulationC - ambientC, heldRiseK: otherC - ambientC })
}

/**
 * Surroundings in which what it carries brings the wire to the rating of its insulation: a current that was taken down for its
 * surroundings leaves the rise up to the insulation. One that was not keeps the rise of its table, as long as that does not lead
 * beyond the insulation.
 */
function heldC({ column, contains }: PrintedCurrent, { insulationC, ambientC }: Surroundings): number {
  const tableRiseK = column.insulationC - contains.ambientC
  return Math.max(ambientC, Math.min(contains.ambientC, insulationC - tableRiseK))
}
