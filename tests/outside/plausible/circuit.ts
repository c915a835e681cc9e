import { expect } from 'vitest'
import { at, column, each, falls, type Guards, numberAt, rises, rowsOf, stands, within } from './plausible.ts'
import type { Cell } from './shipped-tables.ts'

const gaugeMm = (awg: number) => 0.127 * 92 ** ((36 - awg) / 39)
const gaugeMils = (awg: number) => (1000 * gaugeMm(awg)) / 25.4
const gaugeMm2 = (awg: number) => (Math.PI / 4) * gaugeMm(awg) ** 2

/** Gauges have no halves. */
const GAUGES = Array.from({ length: 44 }, (_, i) => 40 - i)
/** Ratings of ISO 8820, UL 248-14 and IEC 60898 (memory). */
const RATINGS_A = [1, 2, 3, 4, 5, 6, 7.5, 10, 13, 15, 16, 20, 25, 30, 32, 35, 40, 50, 60, 63, 70, 80, 100, 125, 150]

/** Area, greatest resistance in Ω/km: strands and plating cost a few percent of what drawn copper has. */
const wireRows = (least: number, greatest: number) => (cells: Cell) => {
  rises(column(cells, 0))
  falls(column(cells, 1))
  within(
    each(cells, row => (numberAt(row, 0) * numberAt(row, 1)) / 17.241),
    least,
    greatest
  )
}

/** Current by gauge and insulation: thicker and hotter carries more. */
function ampacities(cells: Cell, level: boolean): void {
  rises(column(at(cells, 'columns'), 'insulationC'))
  const rows = at(cells, 'rows')
  falls(column(rows, 'awg'))
  stands(column(rows, 'awg'), GAUGES)
  for (const row of rowsOf(rows)) rises(column(at(row, 'currentsA')), { level })
  rowsOf(at(cells, 'columns')).forEach((_, i) => {
    rises(column(rows, 'currentsA', i))
  })
}

/** Ratings, gates, resistances and shares of a fuse or breaker. */
function protector(cells: Cell): void {
  const ratings = column(at(cells, 'ratingsA'))
  if (ratings.length > 0) rises(ratings)
  stands(ratings, RATINGS_A)
  const gates = at(cells, 'gates')
  if (rowsOf(gates).length > 0) {
    rises(column(gates, 'overRatio'))
    const known = rowsOf(gates).filter(gate => typeof at(gate, 'longestS') === 'number')
    if (known.length > 1) falls(column(known, 'longestS'))
    for (const gate of known)
      if (typeof at(gate, 'shortestS') === 'number') rises([numberAt(gate, 'shortestS'), numberAt(gate, 'longestS')])
  }
  const sheet = at(cells, 'sheet')
  if (rowsOf(sheet).length === 0) return
  rises(column(sheet, 'ratingA'))
  rises(column(sheet, 'meltingA2S'))
  within(
    each(sheet, row => numberAt(row, 'coldOhm') * numberAt(row, 'ratingA')),
    0.05,
    0.07
  )
  for (const row of rowsOf(sheet))
    if (at(row, 'dropV') !== null) expect(numberAt(row, 'dropV')).toBeGreaterThan(numberAt(row, 'coldOhm') * numberAt(row, 'ratingA'))
}

/** Shares of the rating, as temperature and factor: less in a hotter place. */
function hotShares(cells: Cell): void {
  rises(column(cells, 0))
  falls(column(cells, 1, 'factor'))
}

/** Shares of the rating, as what the maker allows of it. */
function allowedShares(cells: Cell): void {
  const loads = rowsOf(cells).filter(load => typeof load !== 'string')
  within(
    loads.map(load => numberAt(load, 1, 'allowedA') / numberAt(load, 1, 'ofA')),
    0.6,
    0.9
  )
}

const WIRE = 'wire-resistance.test.ts'
const AMPACITY = 'ampacity.test.ts'
const PROTECTION = 'protection.test.ts'

export const CIRCUIT: Guards = {
  'circuit/aircraft-rows.ts AIRCRAFT': {
    numbers: 51,
    rows: WIRE,
    plausible: cells => {
      falls(column(cells, 0))
      stands(column(cells, 0), GAUGES)
      falls(column(cells, 1))
      rises(column(cells, 2))
      within(
        each(cells, row => numberAt(row, 2) / gaugeMils(numberAt(row, 0)) ** 2),
        0.88,
        1.2
      )
      // Drawn copper has 10.371 Ω for a foot of one circular mil.
      within(
        each(cells, row => (numberAt(row, 1) * numberAt(row, 2)) / 10371),
        1.1,
        1.31
      )
    }
  },
  'circuit/ampacity-aircraft.ts AIRCRAFT_TABLE': {
    numbers: 71,
    rows: AMPACITY,
    plausible: cells => {
      ampacities(cells, false)
      // In 70 °C the current goes by the root of the rise; printed to whole amperes, thin wires stand further off.
      for (const row of rowsOf(at(cells, 'rows')))
        for (const i of [1, 2]) {
          const byRise = Math.sqrt((numberAt(cells, 'columns', i, 'insulationC') - 70) / 35)
          const ratio = numberAt(row, 'currentsA', i) / numberAt(row, 'currentsA', 0) / byRise
          if (numberAt(row, 'currentsA', 0) > 30) within([ratio], 0.96, 1.02)
          else within([ratio], 0.9, 1.17)
        }
    }
  },
  'circuit/ampacity-boat.ts BOAT_TABLE': {
    numbers: 134,
    rows: AMPACITY,
    plausible: cells => {
      ampacities(cells, true)
      within(
        each(
          at(cells, 'columns'),
          row =>
            numberAt(row, 'engineSpace', 'factor') - Math.sqrt((numberAt(row, 'insulationC') - 50) / (numberAt(row, 'insulationC') - 30))
        ),
        -0.01,
        0.01
      )
    }
  },
  'circuit/ampacity-bundle.ts BOAT_BUNDLE': {
    numbers: 8,
    rows: AMPACITY,
    plausible: cells => {
      falls(column(cells, 'leastCount'))
      rises(column(cells, 'factor'))
      within(column(cells, 'factor'), 0.3, 0.9)
    }
  },
  'circuit/ampacity-bundle.ts ECSS_BUNDLE': {
    numbers: 12,
    rows: AMPACITY,
    plausible: cells => {
      rises(column(cells, 'wiresCount'))
      falls(column(cells, 'factor'))
      // All together carry more, the more they are.
      rises(each(cells, row => numberAt(row, 'wiresCount') * numberAt(row, 'factor')))
    }
  },
  'circuit/ampacity-conductor.ts LEAST_AREAS_MM2': {
    numbers: 36,
    rows: null,
    plausible: cells => {
      falls(column(cells, 0))
      within(
        each(cells, row => numberAt(row, 1) / gaugeMm2(numberAt(row, 0))),
        0.9999,
        1.0008
      )
    }
  },
  'circuit/ampacity-free-air.ts FREE_AIR_ANCHORS': {
    numbers: 9,
    rows: AMPACITY,
    plausible: cells => {
      rises(column(cells, 'awg'))
      falls(column(cells, 'anchorA'))
      // For one kelvin: less for each square millimetre, the thicker the wire.
      rises(each(cells, row => numberAt(row, 'anchorA') / Math.sqrt(numberAt(row, 'anchorRiseK')) / gaugeMm2(numberAt(row, 'awg'))))
    }
  },
  'circuit/ampacity-free-air.ts BUNDLE_ANCHORS': {
    numbers: 6,
    rows: AMPACITY,
    plausible: cells => {
      rises(column(cells, 'wiresCount'))
      falls(column(cells, 'factor'))
      within(column(cells, 'factor'), 0.5, 0.65)
    }
  },
  'circuit/ampacity-smallest-wire.ts COMMON': { numbers: 4, rows: null, plausible: smallest },
  'circuit/ampacity-smallest-wire.ts SMALLEST_WIRES': {
    numbers: 8,
    rows: AMPACITY,
    plausible: cells => {
      smallest(at(cells, 1, 'boat'))
      smallest(at(cells, 1, 'aircraft'))
    }
  },
  'circuit/breaker-styles.ts THERMAL_MULTIPLIERS': {
    numbers: 12,
    rows: PROTECTION,
    plausible: cells => {
      rises(column(cells, 'ambientC'))
      rises(column(cells, 'factor'))
      expect(rowsOf(cells).filter(row => numberAt(row, 'factor') === 1)).toEqual([{ ambientC: 23, factor: 1 }])
    }
  },
  'circuit/breaker-styles.ts THERMAL': { numbers: 14, rows: null, plausible: protector },
  'circuit/breaker-styles.ts IEC_60898': { numbers: 16, rows: PROTECTION, plausible: protector },
  'circuit/breaker-styles.ts THERMAL_MAGNETIC': {
    numbers: 8,
    rows: PROTECTION,
    plausible: cells => {
      hotShares(at(cells, 'loads'))
    }
  },
  'circuit/conductor.ts DRAWN': {
    numbers: 20,
    rows: null,
    plausible: cells => {
      falls(column(cells))
      stands(column(cells), GAUGES)
    }
  },
  'circuit/fuse-blade.ts BLADE_BREAKING': {
    numbers: 4,
    rows: PROTECTION,
    plausible: cells => {
      for (const row of rowsOf(cells)) rises([numberAt(row, 'volts', 'sureV'), numberAt(row, 'volts', 'mostV')])
      for (const row of rowsOf(cells)) rises([numberAt(row, 'greatestRatingA'), numberAt(row, 'breakingA')])
    }
  },
  'circuit/fuse-blade.ts BLADE': {
    numbers: 38,
    rows: PROTECTION,
    plausible: cells => {
      protector(cells)
      allowedShares(at(cells, 'loads'))
    }
  },
  'circuit/fuse-blade.ts BLADE_MINI': { numbers: 10, rows: null, plausible: protector },
  'circuit/fuse-blade.ts BLADE_LARGE': {
    numbers: 20,
    rows: PROTECTION,
    plausible: cells => {
      protector(cells)
      allowedShares(at(cells, 'loads'))
    }
  },
  'circuit/fuse-glass.ts BREAKING': {
    numbers: 6,
    rows: PROTECTION,
    plausible: cells => {
      rises(column(cells, 'greatestRatingA'))
      rises(column(cells, 'breakingA'), { level: true })
      for (const row of rowsOf(cells)) rises([numberAt(row, 'greatestRatingA'), numberAt(row, 'breakingA')])
    }
  },
  'circuit/fuse-glass.ts GLASS': { numbers: 14, rows: PROTECTION, plausible: protector },
  'circuit/metric-rows.ts CLASS_5': { numbers: 30, rows: WIRE, plausible: wireRows(1.1, 1.16) },
  'circuit/metric-rows.ts CLASS_2': { numbers: 30, rows: WIRE, plausible: wireRows(1.04, 1.13) },
  'circuit/metric-rows.ts ISO_6722': { numbers: 50, rows: WIRE, plausible: wireRows(1.04, 1.15) },
  'circuit/protection-aircraft.ts AIRCRAFT_PROTECTION': {
    numbers: 37,
    rows: PROTECTION,
    plausible: cells => {
      falls(column(cells, 'awg'))
      stands(column(cells, 'awg'), GAUGES)
      for (const kind of ['breakerA', 'fuseA']) stands(column(cells, kind), RATINGS_A)
      rises(column(cells, 'breakerA'))
      rises(column(cells, 'fuseA'), { level: true })
      for (const row of rowsOf(cells))
        if (at(row, 'breakerA') !== null) rises([numberAt(row, 'fuseA'), numberAt(row, 'breakerA')], { level: true })
    }
  },
  'circuit/short-heating-material.ts WIRE_MATERIALS': {
    numbers: 9,
    rows: 'short-heating.test.ts',
    // √(Qc·(B + 20)/ρ20) of IEC 60364-5-54 annex A (read-secondary; steel memory), rounded.
    plausible: cells => {
      const heat = [3.45e-3, 2.5e-3, 3.8e-3]
      const ohmMm = [17.241e-6, 28.264e-6, 138e-6]
      rowsOf(cells).forEach((row, i) => {
        const byAnnex = Math.sqrt((heat[i]! * (numberAt(row, 'zeroC') + 20)) / ohmMm[i]!)
        expect(Math.abs(numberAt(row, 'materialARootSPerMm2') - byAnnex)).toBeLessThanOrEqual(0.5)
      })
      within(column(cells, 'meltC'), 650, 1540)
    }
  },
  'circuit/switch-factor.ts SWITCH_FACTORS': {
    numbers: 10,
    rows: 'switch.test.ts',
    plausible: cells => {
      for (const load of ['lamp', 'inductive', 'resistive', 'motor', 'greatestV']) rises(column(cells, load))
      for (const row of rowsOf(cells)) rises([numberAt(row, 'resistive'), numberAt(row, 'motor'), numberAt(row, 'lamp')])
    }
  },
  'circuit/switch-inrush.ts INRUSH': {
    numbers: 8,
    rows: 'switch.test.ts',
    plausible: cells => {
      within(column(cells, 'lowRatio'), 2, 20)
      for (const row of rowsOf(cells)) if (at(row, 'highRatio') !== null) rises([numberAt(row, 'lowRatio'), numberAt(row, 'highRatio')])
    }
  },
  'circuit/terminal-bond.ts BOND_LIMITS': {
    numbers: 5,
    rows: 'terminal.test.ts',
    plausible: cells => {
      within(column(cells, 'greatestOhm'), 0.001, 0.005)
      // Both ends of a return together may have more than one connection of it.
      expect(numberAt(cells, 4, 'greatestOhm')).toBeGreaterThan(numberAt(cells, 0, 'greatestOhm'))
    }
  },
  'circuit/terminal-crimp.ts CRIMP_PULLS': {
    numbers: 4,
    rows: 'terminal.test.ts',
    // Six tenths of what copper wire holds, 230 to 400 MPa.
    plausible: cells => {
      within(
        each(cells, row => numberAt(row, 'leastN') / gaugeMm2(numberAt(row, 'awg'))),
        140,
        240
      )
    }
  }
}

/** A wire that has company may be thinner; both standards ask about the same. */
function smallest(cells: Cell): void {
  const size = (run: string, standard: string, field: string) =>
    numberAt(rowsOf(cells).find(row => at(row, 'run') === run && at(row, 'conductor', 'standard') === standard)!, 'conductor', field)
  for (const run of ['single', 'sheathed']) within([size(run, 'mm2', 'areaMm2') / gaugeMm2(size(run, 'awg', 'awg'))], 0.75, 1.1)
  rises([size('single', 'awg', 'awg'), size('sheathed', 'awg', 'awg')], { level: true })
  falls([size('single', 'mm2', 'areaMm2'), size('sheathed', 'mm2', 'areaMm2')], { level: true })
}
