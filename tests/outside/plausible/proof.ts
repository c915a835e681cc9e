import { expect } from 'vitest'
import { column, falls, type Guards, numberAt, rises, rowsOf, within } from './plausible.ts'

export const PROOF: Guards = {
  'proof/fault-prior.ts PRIOR': {
    numbers: 15,
    rows: null,
    plausible: cells => {
      expect(column(cells).reduce((sum, share) => sum + share, 0)).toBe(100)
      expect(Math.max(...column(cells))).toBe(numberAt(cells, 'healthy'))
    }
  },
  'proof/look-through.ts ABOUT': {
    numbers: 8,
    rows: null,
    plausible: cells => {
      rises(column(cells))
      within(column(cells), 0.1, 10)
    }
  },
  'proof/meter-faults.ts FACTORS': {
    numbers: 7,
    rows: null,
    plausible: cells => {
      const factors = column(cells, 0).filter(factor => factor > 0)
      rises(factors)
      // Too large by as much as too small.
      factors.forEach((factor, i) => {
        expect(factor * factors.at(-1 - i)!).toBeCloseTo(1, 12)
      })
    }
  },
  'proof/meter.ts ACCURACY': {
    numbers: 6,
    rows: 'meter.test.ts',
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        within([numberAt(row, 0)], 0.1, 3)
        expect(Number.isInteger(numberAt(row, 1))).toBe(true)
        within([numberAt(row, 1)], 1, 10)
      }
    }
  },
  'supply/battery-state.ts BATTERY_STATES': {
    numbers: 10,
    rows: 'supply.test.ts',
    plausible: cells => {
      rises(column(cells, 'chargePercent'))
      const rest = column(cells, 'restV')
      // Six cells of 1.98 to 2.11 V, and about as much from quarter to quarter.
      within(
        rest.map(volts => volts / 6),
        1.98,
        2.11
      )
      const quarters = rest.slice(1).map((volts, i) => volts - rest[i]!)
      within(quarters, 0.165, 0.215)
      falls([Math.max(...quarters), Math.min(...quarters)])
    }
  }
}
