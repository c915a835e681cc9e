import { formula } from '../../formula/formula.ts'
import type { Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { silently } from '../../formula/working.ts'
import type { AmpacityGiven } from './ampacity.ts'
import { altitudeDerating } from './ampacity-altitude.ts'
import { riseK } from './ampacity-ambient.ts'
import { BOAT_TABLE } from './ampacity-boat.ts'
import { bundleDerating } from './ampacity-bundle.ts'
import { type AmpacityTable, type PrintedCurrent, printedCurrent } from './ampacity-table.ts'
import { thinCurrent } from './ampacity-thin.ts'

/** Cooling is a matter of the wire and of how it lies, not of what a practice allows. */
export const reachA = formula('reachA', {
  says: 'current that brings the wire, as it lies, to the rating of its insulation: heat lost in proportion to the rise, resistance rising with it',
  symbol: 'Ir',
  equation: 'I·√(r/rt·(234.5+Tt)/(234.5+Ti))',
  inputs: {
    lyingA: ['I', 0.1, 1000],
    riseK: ['r', 1, 390],
    tableRiseK: ['rt', 1, 390],
    tableC: ['Tt', 0, 300],
    insulationC: ['Ti', 0, 300]
  },
  source: SOURCES.practice,
  of: ({ lyingA, riseK, tableRiseK, tableC, insulationC }) =>
    lyingA * Math.sqrt(((riseK / tableRiseK) * (234.5 + tableC)) / (234.5 + insulationC))
})

export interface Reach {
  readonly reachA: number
  /** The table that it is reckoned from, with what its figure holds for. */
  readonly says: string
}

/** Insulation for less heat than any column has may rise less; the wire loses its heat as any other. */
const ONE_WIRE: AmpacityTable = { ...BOAT_TABLE, coolerInsulation: 'by rise' }

/**
 * From the figure of its practice, or from that of one wire in open air, whichever has it cooler: both hold. Of a wire that lies as
 * neither of them does, its bundle and altitude are taken off.
 */
export function reachOf(x: Plain<AmpacityGiven>, table: AmpacityTable, printed: PrintedCurrent): Reach {
  const asks = [ask(x, table, printed)]
  if (table.rows !== BOAT_TABLE.rows) asks.push(...silently(() => askOneWire(x)))
  const best = asks.toSorted((a, b) => silently(() => reachA(b.given) - reachA(a.given)))[0]!
  return { reachA: reachA(best.given), says: best.says }
}

function askOneWire(x: Plain<AmpacityGiven>): readonly ReturnType<typeof ask>[] {
  const { conductor, insulationC } = x
  const printed = printedCurrent(ONE_WIRE, conductor, insulationC) ?? thinCurrent(ONE_WIRE, conductor, insulationC)
  return printed === undefined ? [] : [ask(x, ONE_WIRE, printed)]
}

function ask(x: Plain<AmpacityGiven>, { name }: AmpacityTable, printed: PrintedCurrent) {
  const { insulationC, ambientC, altitudeM, bundleCount, practice } = x
  const { column, contains, tableA } = printed
  return silently(() => {
    const bundle = bundleDerating(printed, practice, bundleCount)?.factor ?? 1
    const given = {
      lyingA: tableA * bundle * altitudeDerating(printed, altitudeM).factor,
      riseK: riseK({ insulationC, ambientC }),
      tableRiseK: riseK({ insulationC: column.insulationC, ambientC: contains.ambientC }),
      tableC: column.insulationC,
      insulationC
    }
    return { given, says: `${name}: ${contains.says}` }
  })
}
