import { formula } from '../../formula/formula.ts'
import type { Plain } from '../../formula/given.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { type AmpacityGiven, ampacity } from './ampacity.ts'
import { conductorName, gaugeFor, gaugeName } from './ampacity-conductor.ts'
import { AIRCRAFT_PROTECTION, AIRCRAFT_PROTECTION_HOLDS, aircraftOutsideCount } from './protection-aircraft.ts'

/** A legal ceiling. At half as much again the wire is not protected against overload. */
export const wireLimitA = formula('wireLimitA', {
  says: 'largest protector that the boat rule allows',
  symbol: 'Ip',
  equation: '1.5·It·fT',
  inputs: { tableA: ['It', 0.1, 1000], ambientFactor: ['fT', 0.01, 1] },
  source: SOURCES['33-cfr-183.455'],
  of: ({ tableA, ambientFactor }) => 1.5 * tableA * ambientFactor
})

export interface WireLimit {
  /** Null where the practice has no figure for this wire. */
  readonly wireLimitA: number | null
  /** What the wire carries for good under its conditions: a protector above it leaves a long overload unprotected. */
  readonly overloadA: number | null
  /** Up to here a printed figure of the wire stands behind it; null where the practice has a limit of its own. */
  readonly printedA: number | null
  /** Of a table of wires with their protectors: how many of its conditions the wire is outside of. Null where there is no such table. */
  readonly outsideCount: number | null
  readonly says: string
  readonly source: Source
}

export interface WireLimitGiven extends AmpacityGiven {
  readonly kind: 'fuse' | 'breaker'
}

const NO_TABLE = { printedA: null, outsideCount: null }

/** The largest rating of a protector that the practice allows for this wire. */
export function wireLimit(x: Plain<WireLimitGiven>): WireLimit {
  const carries = ampacity(x)
  const overloadA = carries.kind === 'ampacity' ? carries.ampacityA : null
  if (x.practice === 'aircraft') return { ...aircraftLimit(x), overloadA, printedA: null, outsideCount: aircraftOutsideCount(x) }
  if (carries.kind === 'no figure') return { wireLimitA: null, ...NO_TABLE, overloadA, says: carries.says, source: SOURCES.practice }
  if (x.practice === 'boat')
    return {
      wireLimitA: wireLimitA({ tableA: carries.tableA, ambientFactor: carries.ambient.factor }),
      ...NO_TABLE,
      overloadA,
      says: '150 % of the table 5 value, the engine-space factor taken first: a legal ceiling, at which the wire is not protected against overload',
      source: SOURCES['33-cfr-183.455']
    }
  return {
    wireLimitA: carries.ampacityA,
    ...NO_TABLE,
    overloadA,
    printedA: carries.printedA,
    says: 'no more than the wire carries for good; common practice',
    source: SOURCES.practice
  }
}

function aircraftLimit({ conductor, kind }: Plain<WireLimitGiven>): Omit<WireLimit, 'overloadA' | 'printedA' | 'outsideCount'> {
  const source = SOURCES['ac-11-3']
  const awg = gaugeFor(
    conductor,
    AIRCRAFT_PROTECTION.map(row => row.awg)
  )
  const row = AIRCRAFT_PROTECTION.find(row => row.awg === awg)
  if (row === undefined) return { wireLimitA: null, says: `table 11-3 has no ${conductorName(conductor)}, nor any size below it`, source }
  const limitA = kind === 'fuse' ? row.fuseA : row.breakerA
  if (limitA === null) return { wireLimitA: null, says: `table 11-3 prints no breaker for ${gaugeName(row.awg)}`, source }
  return {
    wireLimitA: limitA,
    says: `read at ${gaugeName(row.awg)}; holds for ${AIRCRAFT_PROTECTION_HOLDS}. A lone wire in open air may take the next breaker up`,
    source
  }
}
