import { fewRecalled } from '../../formula/few-recalled.ts'
import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { silently } from '../../formula/working.ts'
import { type PracticeName, perPractice } from '../practice-names.ts'
import { AIRCRAFT_TABLE } from './ampacity-aircraft.ts'
import { altitudeDerating } from './ampacity-altitude.ts'
import { ambientDerating, requireCooler } from './ampacity-ambient.ts'
import { BOAT_TABLE } from './ampacity-boat.ts'
import { bundleDerating } from './ampacity-bundle.ts'
import { type Conductor, conductorName } from './ampacity-conductor.ts'
import type { Derating } from './ampacity-derating.ts'
import { freeAirOf } from './ampacity-free-air.ts'
import { reachOf, reachWith } from './ampacity-reach.ts'
import { type AmpacityTable, type PrintedCurrent, printedCurrent } from './ampacity-table.ts'
import { thinCurrent } from './ampacity-thin.ts'

export interface AmpacityGiven {
  readonly practice: PracticeName
  readonly conductor: Conductor
  readonly insulationC: Given
  readonly ambientC: Given
  readonly altitudeM: Given
  /** Loaded wires lying together, this one counted. */
  readonly bundleCount: Given
}

export interface Ampacity {
  readonly kind: 'ampacity'
  readonly ampacityA: number
  readonly tableA: number
  readonly table: string
  /** What the printed current already allows for. */
  readonly holdsFor: string
  /** Up to here a printed figure stands behind it. */
  readonly printedA: number
  /** What brings the wire, as it lies, to the rating of its insulation. No practice allows it; heat and resistance follow from it. */
  readonly reachA: number
  /** Where that comes from. */
  readonly warmsAs: string
  readonly bundle: Derating
  readonly ambient: Derating
  readonly altitude: Derating
  /** One such wire in free air, where a point of the aircraft curve is known; else null. For comparison, not for choosing. */
  readonly freeAirA: number | null
  readonly source: Source
  readonly says: string
}

export interface NoFigure {
  readonly kind: 'no figure'
  readonly says: string
}

export const ampacityA = formula('ampacityA', {
  says: 'continuous current after all that the printed one does not allow for',
  symbol: 'Ia',
  equation: 'It·fB·fT·fh',
  inputs: { tableA: ['It', 0.1, 1000], bundleFactor: ['fB', 0.1, 1], ambientFactor: ['fT', 0.01, 1], altitudeFactor: ['fh', 0.1, 1] },
  source: SOURCES.arithmetic,
  of: ({ tableA, bundleFactor, ambientFactor, altitudeFactor }) => tableA * bundleFactor * ambientFactor * altitudeFactor
})

/** General work has no published table. */
const TABLES = perPractice(BOAT_TABLE, { aircraft: AIRCRAFT_TABLE })

/** A boat may not have wire thinner than its table. */
const TAKEN_DOWN = perPractice(true, { aircraft: false, boat: false })

const SAYS = perPractice('common practice, no published source: the boat table, a metric size read at the next smaller gauge', {
  aircraft: 'a single wire in free air carries more; the figure is for the bundle it names',
  boat: 'rule for boats under 50 V'
})

/** More than most jobs have. */
const WIRES = 32

/** Continuous current of a wire. A condition that the printed current holds for is never taken off a second time. */
export const ampacity = fewRecalled(WIRES, ampacityOf)

function ampacityOf(x: Plain<AmpacityGiven>): Ampacity | NoFigure {
  const { practice, conductor, insulationC, ambientC } = x
  requireCooler(ambientC, insulationC)
  const table = TABLES[practice]
  const printed = printedCurrent(table, conductor, insulationC)
  if (printed !== undefined) return practice === 'aircraft' ? asOneWire(derated(x, table, printed), x) : derated(x, table, printed)
  const thin = TAKEN_DOWN[practice] ? thinCurrent(table, conductor, insulationC) : undefined
  if (thin !== undefined) return asPrinted(derated(x, { ...table, name: `${table.name}, taken down` }, thin), x)
  return { kind: 'no figure', says: `${conductorName(conductor)} is smaller than any size in ${table.name}` }
}

/** What was taken down stands on a printed figure as far as the aircraft table goes: for a bundle in thin air, and so for a wire by itself. */
function asPrinted(found: Ampacity | NoFigure, x: Plain<AmpacityGiven>): Ampacity | NoFigure {
  if (found.kind === 'no figure') return found
  const printed = silently(() => printedCurrent(AIRCRAFT_TABLE, x.conductor, x.insulationC))
  const sure = printed === undefined ? null : silently(() => derated(x, AIRCRAFT_TABLE, printed))
  return { ...found, printedA: sure?.kind === 'ampacity' ? Math.min(found.ampacityA, sure.ampacityA) : 0 }
}

/** The coolest insulation that the boat table has. */
const LEAST_C = BOAT_TABLE.columns[0]!.insulationC

/**
 * How a wire loses its heat is a matter of the wire and of how it lies, not of what a practice allows. The aircraft figure is for a
 * full bundle in thin air; of a wire that lies better the boat table tells more, with bundle and altitude taken off.
 */
function asOneWire(found: Ampacity | NoFigure, x: Plain<AmpacityGiven>): Ampacity | NoFigure {
  const insulationC = Math.max(LEAST_C, x.insulationC)
  const alone = silently(() => ampacityOf({ ...x, practice: 'general', insulationC }))
  if (found.kind === 'no figure' || alone.kind === 'no figure') return found
  const aloneA = reachWith(alone.reachA, x, insulationC)
  return aloneA <= found.reachA ? found : { ...found, reachA: aloneA, warmsAs: alone.warmsAs }
}

function derated(x: Plain<AmpacityGiven>, table: AmpacityTable, printed: PrintedCurrent): Ampacity | NoFigure {
  const { tableA, contains, column } = printed
  const bundle = bundleDerating(printed, x.practice, x.bundleCount)
  if (bundle === null) return { kind: 'no figure', says: `${table.name} holds for ${contains.says}; for more wires nothing is published` }
  const ambient = ambientDerating(printed, x)
  const altitude = altitudeDerating(printed, x.altitudeM)
  const carriesA = ampacityA({ tableA, bundleFactor: bundle.factor, ambientFactor: ambient.factor, altitudeFactor: altitude.factor })
  return {
    kind: 'ampacity',
    ampacityA: carriesA,
    printedA: carriesA,
    tableA,
    table: table.name,
    holdsFor: contains.says,
    reachA: reachOf(carriesA, printed, x),
    warmsAs: `${table.name}: ${contains.says}`,
    bundle,
    ambient,
    altitude,
    freeAirA: x.practice === 'aircraft' ? freeAirOf(printed.awg, x) : null,
    source: column.source,
    says: SAYS[x.practice]
  }
}
