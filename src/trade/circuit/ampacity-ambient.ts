import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { alreadyIn, applied, type Derating } from './ampacity-derating.ts'
import type { PrintedCurrent } from './ampacity-table.ts'

export const riseK = formula('riseK', {
  says: 'temperature rise that the insulation leaves to the current',
  symbol: 'r',
  equation: 'Ti-Ta',
  inputs: { insulationC: ['Ti', 0, 300], ambientC: ['Ta', -90, 300] },
  source: SOURCES.arithmetic,
  of: ({ insulationC, ambientC }) => insulationC - ambientC
})

export const ambientFactor = formula('ambientFactor', {
  says: 'current at another rise: the heat lost is taken as proportional to the rise',
  symbol: 'fT',
  equation: '√(r/rt)',
  inputs: { riseK: ['r', 1, 390], tableRiseK: ['rt', 1, 390] },
  source: SOURCES.practice,
  of: ({ riseK, tableRiseK }) => Math.sqrt(riseK / tableRiseK)
})

/** Less than this is no rise that a current could be worked out from. */
const LEAST_RISE_K = ambientFactor.inputs.riseK[1]

/** A place as hot as the insulation may get leaves nothing to the current. */
export function requireCooler(ambientC: number, insulationC: number): void {
  if (insulationC - ambientC >= LEAST_RISE_K) return
  const says = `current of a wire in a place at least ${LEAST_RISE_K} K cooler than its insulation may get, counted as ${insulationC} °C`
  throw new OutsideRange('ampacityA', 'ambientC', ambientC, riseK.inputs.ambientC[1], insulationC - LEAST_RISE_K, says)
}

/** Where the engine-space factor of 33 CFR 183.425 is printed. */
const ENGINE_SPACE_C = 50

export interface Surroundings {
  readonly insulationC: number
  readonly ambientC: number
}

/** A place cooler than the table's never raises the printed current. */
export function ambientDerating(printed: PrintedCurrent, { insulationC, ambientC }: Surroundings): Derating {
  const { column, contains } = printed
  const leftK = riseK({ insulationC, ambientC })
  if (column.engineSpace !== undefined) return engineSpaceDerating(printed, ambientC)
  const tableRiseK = column.insulationC - contains.ambientC
  if (leftK >= tableRiseK) return coolEnough(printed, ambientC)
  return applied(ambientFactor({ riseK: leftK, tableRiseK }), `${leftK} K of rise left, the table has ${tableRiseK} K`, SOURCES.practice)
}

function engineSpaceDerating(printed: PrintedCurrent, ambientC: number): Derating {
  const { insulationC, engineSpace } = printed.column
  if (ambientC <= printed.contains.ambientC) return coolEnough(printed, ambientC)
  const { factor, source } = engineSpace!
  recordStep(
    fact('engineSpaceFactor', { says: 'factor of an engine space', symbol: 'fE', source }),
    factor,
    () => `${insulationC} °C insulation, 50 °C`
  )
  if (ambientC <= ENGINE_SPACE_C) return applied(factor, `engine-space factor printed for 50 °C, ${insulationC} °C insulation`, source)
  requireCooler(ambientC, insulationC)
  const beyond = ambientFactor({
    riseK: riseK({ insulationC, ambientC }),
    tableRiseK: riseK({ insulationC, ambientC: ENGINE_SPACE_C })
  })
  return applied(factor * beyond, `engine-space factor for 50 °C, and beyond it by the rise that is left`, SOURCES.practice)
}

function coolEnough({ column, contains }: PrintedCurrent, ambientC: number): Derating {
  return alreadyIn(`the table holds at ${contains.ambientC} °C: nothing taken off for ${ambientC} °C`, column.source)
}
