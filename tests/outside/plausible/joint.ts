import { expect } from 'vitest'
import { at, column, each, falls, type Guards, numberAt, rises, rowsOf, within } from './plausible.ts'
import type { Cell } from './shipped-tables.ts'

const TABLES = 'joint-tables.test.ts'

/** What a casting metal has in shear beside what it has in tension. */
const SHEAR = { aluminium: [0.55, 0.87], magnesium: [0.55, 0.87], zinc: [0.75, 0.89], iron: [1.25, 1.45] } as const

/** A class of steel says its strength and its yield: 8.8 has 800 MPa and eight tenths of it. */
function classOfSteel(name: string, row: Cell, [tensile, yielding, proof]: readonly [string | number, string | number, string | number]) {
  const [tensileMpa, yieldMpa, proofMpa] = [numberAt(row, tensile), numberAt(row, yielding), numberAt(row, proof)]
  const [hundreds, tenths] = name.split('.').map(Number) as [number, number]
  within([tensileMpa / (100 * hundreds)], 1, 1.05)
  within([yieldMpa / tensileMpa / (tenths / 10)], 0.99, 1.02)
  within([proofMpa / yieldMpa], 0.88, 0.94)
}

export const JOINT: Guards = {
  'joint/casting-alloys.ts ROWS': {
    numbers: 62,
    rows: 'strength-alloys.test.ts',
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        const [least, greatest] = SHEAR[at(row, 1) as keyof typeof SHEAR]
        if (at(row, 3) !== null) within([numberAt(row, 3) / numberAt(row, 2)], 0.45, 0.85)
        if (at(row, 4) !== null) within([numberAt(row, 4) / numberAt(row, 2)], least, greatest)
      }
      // The class of an iron is its strength in ksi.
      for (const row of rowsOf(cells).filter(row => at(row, 1) === 'iron'))
        expect(Math.round(numberAt(row, 2) / 6.895)).toBe(Number(/\d+/.exec(String(at(row, 0, 0)))![0]))
    }
  },
  'joint/dry-nut-torque.ts DRY_NUT_TORQUES': {
    numbers: 84,
    rows: TABLES,
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        rises([1, 2, 3].map(i => numberAt(row, i)))
        rises([4, 5, 6].map(i => numberAt(row, i)))
        // A shear nut takes six tenths of what a tension nut takes.
        within(
          [1, 2, 3].map(i => numberAt(row, i + 3) / numberAt(row, i)),
          0.56,
          0.64
        )
      }
      for (const series of [rowsOf(cells).slice(0, 7), rowsOf(cells).slice(7)]) for (const i of [1, 2, 3]) rises(column(series, i))
    }
  },
  'joint/nut-factors.ts NUT_FACTORS': {
    numbers: 31,
    rows: 'nut-factor.test.ts',
    plausible: cells => {
      for (const row of rowsOf(cells)) rises([numberAt(row, 1), numberAt(row, 2)], { level: true })
      within(column(cells, 1), 0.08, 0.31)
      within(column(cells, 2), 0.08, 0.53)
    }
  },
  'joint/part-classes.ts PART_CLASSES': {
    numbers: 44,
    rows: 'strength.test.ts',
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        const name = String(Array.isArray(row) ? at(row, 0) : at(row, 'name'))
        if (!Array.isArray(row))
          for (const size of rowsOf(at(row, 'sizes'))) classOfSteel(name, size, ['tensileMpa', 'yieldMpa', 'proofMpa'])
        else if (name.startsWith('A')) expect(numberAt(row, 1)).toBe(10 * Number(name.slice(3)))
        else classOfSteel(name, row, [1, 2, 3])
      }
      const stainless = rowsOf(cells).filter(row => Array.isArray(row) && String(at(row, 0)).startsWith('A'))
      within(
        stainless.map(row => numberAt(row, 2) / numberAt(row, 1)),
        0.6,
        0.76
      )
    }
  },
  'joint/preload-scatter.ts PRELOAD_SCATTER': {
    numbers: 40,
    rows: 'preload-scatter.test.ts',
    plausible: cells => {
      const printed = rowsOf(cells).filter(row => typeof at(row, 1) === 'number')
      within(column(printed, 1), 1, 35)
      within(column(printed, 2), 1, 43)
      for (const row of printed) rises([numberAt(row, 1), numberAt(row, 2)], { level: true })
      // The last row is two ratios of greatest to least.
      for (const row of rowsOf(cells).slice(printed.length)) rises([1, numberAt(row, 1, 0), numberAt(row, 2, 0)])
    }
  },
  'joint/ring-terminals.ts RING_TERMINALS': {
    numbers: 144,
    rows: TABLES,
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        within([numberAt(row, 2) - numberAt(row, 1)], 0.299, 0.501)
        within([numberAt(row, 3) / numberAt(row, 1)], 1.7, 2.4)
        rises([numberAt(row, 5), numberAt(row, 6)], { level: true })
      }
      // Thicker wire, thicker tongue, in each of the two series.
      for (const series of ['automotive', 'DIN'])
        rises(
          column(
            rowsOf(cells).filter(row => String(at(row, 0)).startsWith(series)),
            4
          ),
          { level: true }
        )
      within(column(cells, 4), 0.6, 1.2)
    }
  },
  'joint/tapping-torque.ts TAPPED_MATERIALS': {
    numbers: 7,
    rows: 'tapping.test.ts',
    plausible: cells => {
      rises(column(rowsOf(cells).slice(0, 3), 'cuttingMpa'))
      const of = (part: string) => numberAt(rowsOf(cells).find(row => String(at(row, 'material')).includes(part))!, 'cuttingMpa')
      rises([of('cast aluminium'), of('brass'), of('grey iron'), of('Ck15')])
      within(column(cells, 'cuttingMpa'), 1000, 6000)
    }
  },
  'joint/tapping-torque.ts TAP_FACTORS': {
    numbers: 12,
    rows: 'tapping.test.ts',
    plausible: cells => {
      within(column(cells, 'tapFactor'), 0.8, 1.5)
      // A short chamfer cuts harder than a long one.
      for (const i of [0, 1, 2, 3]) rises([numberAt(cells, i, 'tapFactor'), numberAt(cells, i + 4, 'tapFactor')])
    }
  },
  'joint/terminal-screws.ts TERMINAL_SCREWS': {
    numbers: 10,
    rows: TABLES,
    plausible: cells => {
      for (const row of rowsOf(cells)) rises([numberAt(row, 'leastNm'), numberAt(row, 'greatestNm')])
      // Torque goes by the cube of the diameter.
      within(
        each(cells, row => numberAt(row, 'greatestNm') / Number(String(at(row, 'screw')).slice(1)) ** 3),
        0.0195,
        0.024
      )
    }
  },
  'hole/hand-tapping.ts BY_CHAMFER': {
    numbers: 12,
    rows: null,
    plausible: cells => {
      falls(column(cells, 0))
      falls(column(cells, 1, 'forwardTurns'))
      falls(column(cells, 1, 'clearTurns'))
      for (const row of rowsOf(cells)) rises([numberAt(row, 1, 'backTurns'), numberAt(row, 1, 'forwardTurns')], { level: true })
    }
  },
  'mass/negligible.ts NEGLIGIBLE': {
    numbers: 4,
    rows: 'mass.test.ts',
    plausible: cells => {
      rises(column(cells, 'below'))
      rises(column(cells, 'changeKg'))
    }
  }
}
