import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { type Conductor, sectionMm2 } from './ampacity-conductor.ts'
import { type AmpacityTable, type PrintedCurrent, printedCurrent } from './ampacity-table.ts'

/** Down to AWG 24. The thinnest row is taken as that of 1 mm², the largest metric size that is read at it. */
export const thinFactor = formula('thinFactor', {
  says: 'current of a wire thinner than any in its table, over that of 1 mm²: by its diameter to the power 1.5, as the current that melts it',
  symbol: 'fd',
  equation: 'S^0.75',
  inputs: { areaMm2: ['S', 0.2048, 1] },
  source: SOURCES.practice,
  of: ({ areaMm2 }) => areaMm2 ** 0.75
})

const LEAST_MM2 = thinFactor.inputs.areaMm2[1]

/** Thinner than the table has them, taken down from its thinnest row; undefined where that would go too far. */
export function thinCurrent(table: AmpacityTable, conductor: Conductor, insulationC: number): PrintedCurrent | undefined {
  const areaMm2 = sectionMm2(conductor)
  if (!(areaMm2 >= LEAST_MM2)) return undefined
  const awg = Math.max(...table.rows.map(row => row.awg))
  const thinnest = printedCurrent(table, { standard: 'awg', awg }, insulationC)
  if (thinnest === undefined) return undefined
  const says = `${thinnest.contains.says}; no table prints so thin a wire: taken down from 1 mm² by its diameter to the power 1.5, common practice`
  return {
    awg,
    column: { ...thinnest.column, source: SOURCES.practice },
    tableA: thinnest.tableA * thinFactor({ areaMm2 }),
    contains: { ...thinnest.contains, says }
  }
}
