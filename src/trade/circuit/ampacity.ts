import { fewRecalled } from '../../formula/few-recalled.ts'
import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { AIRCRAFT_TABLE } from './ampacity-aircraft.ts'
import { altitudeDerating } from './ampacity-altitude.ts'
import { ambientDerating } from './ampacity-ambient.ts'
import { BOAT_TABLE } from './ampacity-boat.ts'
import { bundleDerating } from './ampacity-bundle.ts'
import { type Conductor, conductorName, type Practice } from './ampacity-conductor.ts'
import type { Derating } from './ampacity-derating.ts'
import { freeAirOf } from './ampacity-free-air.ts'
import { type AmpacityTable, type PrintedCurrent, printedCurrent } from './ampacity-table.ts'

export interface AmpacityGiven {
  readonly practice: Practice
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
  /** Surroundings in which `ampacityA` flows: those asked for, but never cooler than the table's. */
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

/** Road and general work have no published table: the boat's, and the aircraft's where that is the only one or, for a bundle up high, the kinder one. */
const TABLES: Readonly<Record<Practice, readonly AmpacityTable[]>> = {
  aircraft: [AIRCRAFT_TABLE],
  boat: [BOAT_TABLE],
  road: [BOAT_TABLE, AIRCRAFT_TABLE],
  general: [BOAT_TABLE, AIRCRAFT_TABLE]
}

const SAYS: Readonly<Record<Practice, string>> = {
  aircraft: 'a single wire in free air carries more; the figure is for the bundle it names',
  boat: 'rule for boats under 50 V',
  road: 'common practice, no published source: the boat table, and the aircraft table below AWG 18',
  general: 'common practice, no published source: the boat table, and the aircraft table below AWG 18'
}

/** More than most jobs have. */
const WIRES = 32

/**
 * Continuous current of a wire. A condition that the printed current holds for is never taken off a second time.
 * Of two tables the greater figure counts: each holds by itself, and so a thicker wire never carries less.
 */
export const ampacity = fewRecalled(WIRES, greatestAmpacity)

function greatestAmpacity(x: Plain<AmpacityGiven>): Ampacity | NoFigure {
  const found = TABLES[x.practice].flatMap(table => {
    const printed = printedCurrent(table, x.conductor, x.insulationC)
    return printed === undefined ? [] : [derated(x, table, printed)]
  })
  const figures = found.filter(one => one.kind === 'ampacity')
  if (figures.length > 0) return figures.reduce((best, one) => (one.ampacityA > best.ampacityA ? one : best))
  const names = TABLES[x.practice].map(table => table.name).join(' and ')
  return found[0] ?? { kind: 'no figure', says: `${conductorName(x.conductor)} is smaller than any size in ${names}` }
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
    heldC: Math.max(x.ambientC, contains.ambientC),
    bundle,
    ambient,
    altitude,
    freeAirA: x.practice === 'aircraft' ? freeAirOf(printed.awg, x) : null,
    source: column.source,
    says: SAYS[x.practice]
  }
}
