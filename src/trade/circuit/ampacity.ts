import { fewRecalled } from '../../formula/few-recalled.ts'
import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { type PracticeName, perPractice } from '../practice-names.ts'
import { AIRCRAFT_TABLE } from './ampacity-aircraft.ts'
import { altitudeDerating } from './ampacity-altitude.ts'
import { ambientDerating, requireCooler } from './ampacity-ambient.ts'
import { BOAT_TABLE } from './ampacity-boat.ts'
import { bundleDerating } from './ampacity-bundle.ts'
import { type Conductor, conductorName } from './ampacity-conductor.ts'
import type { Derating } from './ampacity-derating.ts'
import { freeAirOf } from './ampacity-free-air.ts'
import { type AmpacityTable, type PrintedCurrent, printedCurrent } from './ampacity-table.ts'

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
  /** Surroundings in which `ampacityA` brings the wire to the rating of its insulation. */
  readonly heldC: number
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

interface Tables {
  readonly main: AmpacityTable
  /** For wire thinner than any in the main table. */
  readonly thin: AmpacityTable | null
}

const BOAT_FIRST: Tables = { main: BOAT_TABLE, thin: AIRCRAFT_TABLE }

/** General work has no published table. */
const TABLES = perPractice(BOAT_FIRST, {
  aircraft: { main: AIRCRAFT_TABLE, thin: null },
  boat: { main: BOAT_TABLE, thin: null }
})

const BOAT_FIRST_SAYS =
  'common practice, no published source: the boat table, a metric size read at the next smaller gauge; below AWG 18 the aircraft table, but never more than AWG 18 carries by the boat table'

const SAYS = perPractice(BOAT_FIRST_SAYS, {
  aircraft: 'a single wire in free air carries more; the figure is for the bundle it names',
  boat: 'rule for boats under 50 V'
})

/** More than most jobs have. */
const WIRES = 32

/** Continuous current of a wire. A condition that the printed current holds for is never taken off a second time. */
export const ampacity = fewRecalled(WIRES, ampacityOf)

function ampacityOf(x: Plain<AmpacityGiven>): Ampacity | NoFigure {
  const { conductor, insulationC, ambientC } = x
  requireCooler(ambientC, insulationC)
  const { main, thin } = TABLES[x.practice]
  const printed = printedCurrent(main, conductor, insulationC)
  if (printed !== undefined) return derated(x, main, printed)
  const thinner = thin === null ? undefined : printedCurrent(thin, conductor, insulationC)
  if (thin !== null && thinner !== undefined) return noMoreThan(thinnestOf(x, main), derated(x, thin, thinner))
  const names = [main, ...(thin === null ? [] : [thin])].map(table => table.name).join(' and ')
  return { kind: 'no figure', says: `${conductorName(conductor)} is smaller than any size in ${names}` }
}

/** The thinnest wire of a table; nothing where the table has no column for the insulation. */
function thinnestOf(x: Plain<AmpacityGiven>, table: AmpacityTable): Ampacity | NoFigure | undefined {
  if (x.insulationC < table.columns[0]!.insulationC) return undefined
  const awg = Math.max(...table.rows.map(row => row.awg))
  const printed = printedCurrent(table, { standard: 'awg', awg }, x.insulationC)
  return printed === undefined ? undefined : derated(x, table, printed)
}

/** Two tables meet: in a bundle or up high the thicker wire could get less from its own than the thinner one from its. */
function noMoreThan(thicker: Ampacity | NoFigure | undefined, found: Ampacity | NoFigure): Ampacity | NoFigure {
  if (thicker?.kind !== 'ampacity' || found.kind !== 'ampacity') return found
  return thicker.ampacityA < found.ampacityA ? thicker : found
}

function derated(x: Plain<AmpacityGiven>, { name }: AmpacityTable, printed: PrintedCurrent): Ampacity | NoFigure {
  const { tableA, contains, column } = printed
  const bundle = bundleDerating(printed, x.practice, x.bundleCount)
  if (bundle === null) return { kind: 'no figure', says: `${name} holds for ${contains.says}; for more wires nothing is published` }
  const ambient = ambientDerating(printed, x)
  const altitude = altitudeDerating(printed, x.altitudeM)
  return {
    kind: 'ampacity',
    ampacityA: ampacityA({ tableA, bundleFactor: bundle.factor, ambientFactor: ambient.factor, altitudeFactor: altitude.factor }),
    tableA,
    table: name,
    holdsFor: contains.says,
    heldC: heldC(printed, x),
    bundle,
    ambient,
    altitude,
    freeAirA: x.practice === 'aircraft' ? freeAirOf(printed.awg, x) : null,
    source: column.source,
    says: SAYS[x.practice]
  }
}

/**
 * A current that was taken down for its surroundings leaves the rise up to the insulation. One that was not keeps the rise of its
 * table, as long as that does not lead beyond the insulation.
 */
function heldC({ column, contains }: PrintedCurrent, { insulationC, ambientC }: Plain<AmpacityGiven>): number {
  const tableRiseK = column.insulationC - contains.ambientC
  return Math.max(ambientC, Math.min(contains.ambientC, insulationC - tableRiseK))
}
