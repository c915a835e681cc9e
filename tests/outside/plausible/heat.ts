import { expect } from 'vitest'
import { at, column, each, falls, type Guards, numberAt, rises, rowsOf, within } from './plausible.ts'
import type { Cell } from './shipped-tables.ts'

const DATA = 'heat-data.test.ts'

/** A value, and its span where the sources leave one. */
function figures(cells: Cell): void {
  for (const cell of rowsOf(cells)) {
    if (cell === null || typeof cell !== 'object') continue
    const value = numberAt(cell, 0)
    const span = rowsOf(cell).find(part => typeof part === 'object' && part !== null)
    const { low = value, high = value } = (span ?? {}) as { readonly low?: number; readonly high?: number }
    within([value], low, high)
    expect(low).toBeGreaterThan(0.6 * high)
  }
}

/** Value, or least and greatest, of a row of two numbers and a source. */
const ends = (cell: Cell) => rowsOf(cell).filter(part => typeof part === 'number')

export const HEAT: Guards = {
  'heat/conduction.ts PAIR': {
    numbers: 8,
    rows: null,
    plausible: cells => {
      for (const range of rowsOf(cells)) rises([numberAt(range, 1), numberAt(range, 2)])
    }
  },
  'heat/contact.ts CONTACTS': {
    numbers: 15,
    rows: DATA,
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        const resistances = ends(at(row, 'contactM2KPerW'))
        within(resistances, 1e-6, 1e-3)
        if (resistances.length > 1) rises(resistances)
      }
      // The same faces: grease fills more than oil, oil more than air.
      falls(['aluminium-bare', 'aluminium-oil', 'aluminium-grease'].map(name => numberAt(cells, name, 'contactM2KPerW', 0)))
    }
  },
  'heat/emissivity.ts EMISSIVITIES': {
    numbers: 19,
    rows: DATA,
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        within(ends(row), 0.05, 0.98)
        if (ends(row).length > 1) rises(ends(row))
      }
      // The rougher and the more oxidised, the more it radiates.
      rises(['aluminium-rough', 'aluminium-plate', 'aluminium-oxidised', 'aluminium-as-cast'].map(name => numberAt(cells, name, 0)))
    }
  },
  'heat/forced-nusselt.ts HILPERT': {
    numbers: 14,
    rows: 'heat-transfer.test.ts',
    plausible: cells => {
      const rows = rowsOf(cells)
      rises(column(rows.slice(0, -1), 'upTo'))
      falls(column(cells, 'coefficientFactor'))
      rises(column(cells, 'exponentFactor'))
      // Each piece begins where the one before ends.
      const nusselt = (row: Cell, reynolds: number) => numberAt(row, 'coefficientFactor') * reynolds ** numberAt(row, 'exponentFactor')
      const steps = rows.slice(0, -1).map((row, i) => nusselt(rows[i + 1]!, numberAt(row, 'upTo')) / nusselt(row, numberAt(row, 'upTo')))
      within(steps, 0.98, 1.02)
    }
  },
  'heat/fuel.ts FUEL_AND_AIR': {
    numbers: 5,
    rows: DATA,
    plausible: cells => {
      figures(cells)
      // 150 Btu/lb, 2326 J/kg each.
      expect(numberAt(cells, 'gasolineLatentJPerKg', 0)).toBe(150 * 2326)
    }
  },
  'heat/materials.ts MATERIALS': {
    numbers: 47,
    rows: DATA,
    plausible: cells => {
      for (const row of rowsOf(cells)) figures(row)
      // Zinc alloys melt lowest, steels highest (memory, handbooks of metals).
      within(column(rowsOf(cells), 'meltsC'), 380, 1480)
      // A cubic metre of any of these metals stores about the same.
      within(
        each(cells, row => numberAt(row, 'heatJPerKgK', 0) * numberAt(row, 'densityKgPerM3', 0)),
        1.85e6,
        4.05e6
      )
      const known = rowsOf(cells).filter(row => at(row, 'conductivityWPerMK') !== null)
      within(column(known, 'conductivityWPerMK', 0), 14, 400)
    }
  }
}
