import { expect } from 'vitest'
import { at, column, each, falls, type Guards, numberAt, rises, rowsOf, stands, within } from './plausible.ts'
import type { Cell } from './shipped-tables.ts'

const CLEARANCE = 'thread-clearance-holes.test.ts'
const TOLERANCES = 'thread-limits.test.ts'

/** Pitches of ISO 261, threads to the inch of ASME B1.1 and of pipe (memory). */
const PITCHES_MM = [0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6]
const UNIFIED_TPI = [80, 72, 64, 56, 48, 44, 40, 36, 32, 28, 24, 20, 18, 16, 14, 13, 12, 11, 10, 9, 8, 7, 6]

function clearanceHoles(cells: Cell): void {
  for (const row of rowsOf(cells)) {
    rises([0, 1, 2, 3].map(i => numberAt(row, i)))
    within([numberAt(row, 3) / numberAt(row, 0)], 1.08, 1.3)
  }
  for (const i of [0, 1, 2, 3]) rises(column(cells, i))
}

/** R40 preferred numbers (ASME B1.13M, read-secondary), whole µm below a hundred. */
const DECADE = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355, 375, 400, 425, 450,
  475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950
]
const R40 = [...DECADE.flatMap(um => [Math.floor(um / 10), Math.ceil(um / 10)]), ...DECADE, ...DECADE.map(um => 10 * um)]

/** Grades of one cell: coarser is more. */
function grades(cell: Cell): void {
  const known = column(rowsOf(cell).filter(grade => grade !== null))
  if (known.length > 1) rises(known)
}

/** Tolerances are preferred numbers. */
function tolerances(cell: Cell): void {
  grades(cell)
  stands(column(rowsOf(cell).filter(grade => grade !== null)), R40)
}

/** `#10`, `3/8`, `1-1/8` in inches. */
function inches(size: string): number {
  if (size.startsWith('#')) return 0.06 + 0.013 * Number(size.slice(1))
  return size
    .split('-')
    .map(part => part.split('/').map(Number))
    .reduce((sum, [over, under = 1]) => sum + over! / under, 0)
}

/** Thread, drill, inches: 64 to 84 % of three quarters of the height, as taps are made for. */
function unifiedDrills(cells: Cell): void {
  within(
    each(cells, row => {
      const [, size, tpi] = /^(.+)-(\d+)$/.exec(String(at(row, 0)))!
      return ((inches(size!) - numberAt(row, 2)) * Number(tpi)) / 1.299038
    }),
    0.64,
    0.84
  )
  for (const row of rowsOf(cells).filter(row => String(at(row, 1)).includes('/')))
    expect(numberAt(row, 2)).toBeCloseTo(inches(String(at(row, 1))), 12)
}

export const THREAD: Guards = {
  'thread/clearance-hole.ts REPRINTED': { numbers: 68, rows: CLEARANCE, plausible: clearanceHoles },
  'thread/clearance-hole.ts REMEMBERED': { numbers: 24, rows: null, plausible: clearanceHoles },
  'thread/drill-sets.ts NUMBERS': {
    numbers: 80,
    rows: 'drill-sizes.test.ts',
    plausible: cells => {
      falls(column(cells))
      within(
        column(cells)
          .slice(1)
          .map((size, i) => size / column(cells)[i]!),
        0.87,
        0.999
      )
    }
  },
  'thread/drill-sets.ts LETTERS': {
    numbers: 26,
    rows: 'drill-sizes.test.ts',
    plausible: cells => {
      rises(column(cells))
      within(
        column(cells)
          .slice(1)
          .map((size, i) => size - column(cells)[i]!),
        40,
        140
      )
    }
  },
  'thread/drill-sets.ts METRIC': {
    numbers: 30,
    rows: 'drill-sizes.test.ts',
    plausible: cells => {
      for (const row of rowsOf(cells)) {
        rises([numberAt(row, 0), numberAt(row, 1)], { level: true })
        expect((numberAt(row, 1) - numberAt(row, 0)) % numberAt(row, 2)).toBe(0)
      }
    }
  },
  'thread/metric-tap-drill.ts PRINTED': {
    numbers: 132,
    rows: 'thread-tap-drills.test.ts',
    // The diameter less the pitch, to the drills that there are.
    plausible: cells => {
      for (const list of rowsOf(cells))
        within(
          each(list, row => numberAt(row, 0) - numberAt(row, 1) - numberAt(row, 2)),
          -0.0501,
          0.0501
        )
    }
  },
  'thread/pitch-series.ts SERIES': {
    numbers: 166,
    rows: 'thread-pitch-series.test.ts',
    plausible: cells => {
      rises(column(cells, 0))
      rises(column(cells, 2), { level: true })
      for (const row of rowsOf(cells)) {
        expect([1, 2, 3]).toContain(numberAt(row, 1))
        const pitches = [...(at(row, 2) === null ? [] : [numberAt(row, 2)]), ...column(at(row, 3))]
        if (pitches.length > 1) falls(pitches)
        stands(pitches, PITCHES_MM)
        within(
          pitches.map(pitch => pitch / numberAt(row, 0)),
          0.03,
          0.225
        )
      }
    }
  },
  'thread/run-out.ts REGULAR': {
    numbers: 48,
    rows: 'run-out.test.ts',
    plausible: cells => {
      expect(column(cells, 0)).toEqual(PITCHES_MM)
      rises(column(cells, 1))
      // Smooth: from pitch to pitch one power of it, within what a tenth of a millimetre is.
      within(
        each(cells, row => numberAt(row, 1) / (5.1 * numberAt(row, 0) ** 0.86)),
        0.96,
        1.04
      )
    }
  },
  'thread/taper-pipe.ts NPT': {
    numbers: 28,
    rows: 'identify-taper.test.ts',
    // ASME B1.20.1: E0 = D − (0.05 D + 1.1) P (memory).
    plausible: cells => {
      rises(column(cells, 1))
      falls(column(cells, 2), { level: true })
      rises(column(cells, 4))
      for (const row of rowsOf(cells))
        expect(Math.abs(numberAt(row, 3) - numberAt(row, 1) + (0.05 * numberAt(row, 1) + 1.1) / numberAt(row, 2))).toBeLessThanOrEqual(
          0.00001
        )
    }
  },
  'thread/taper-pipe.ts ISO_7': {
    numbers: 35,
    rows: 'identify-taper.test.ts',
    // The Whitworth form: minor = major − 2 · 0.640327 P (memory).
    plausible: cells => {
      falls(column(cells, 1), { level: true })
      rises(column(cells, 2))
      rises(column(cells, 4), { level: true })
      for (const row of rowsOf(cells)) {
        expect(Math.abs(numberAt(row, 3) - numberAt(row, 2) + (1.280654 * 25.4) / numberAt(row, 1))).toBeLessThanOrEqual(0.001)
        // From the gauge plane to the last useful thread: two turns and three quarters, to a tenth of a millimetre (memory).
        expect(Math.abs(numberAt(row, 5) - numberAt(row, 4) - (2.75 * 25.4) / numberAt(row, 1))).toBeLessThanOrEqual(0.06)
      }
    }
  },
  'thread/parallel-pipe.ts ISO_228': {
    numbers: 60,
    rows: 'identify-parallel-pipe.test.ts',
    // The Whitworth form: minor = major − 2 · 0.640327 P (memory); no tolerance takes the crest away.
    plausible: cells => {
      falls(column(cells, 1), { level: true })
      for (const i of [2, 3]) rises(column(cells, i))
      for (const i of [4, 5]) rises(column(cells, i), { level: true })
      for (const row of rowsOf(cells)) {
        const [tpi, majorMm, minorMm, belowMm, aboveMm] = [1, 2, 3, 4, 5].map(i => numberAt(row, i)) as [
          number,
          number,
          number,
          number,
          number
        ]
        expect(Math.abs(minorMm - majorMm + (1.280654 * 25.4) / tpi)).toBeLessThanOrEqual(0.001)
        expect(belowMm).toBeLessThan(aboveMm)
        expect(belowMm + aboveMm).toBeLessThan((majorMm - minorMm) / 2)
      }
    }
  },
  'thread/tolerance-tables.ts BY_PITCH': {
    numbers: 250,
    rows: TOLERANCES,
    plausible: cells => {
      expect(column(cells, 0)).toEqual(PITCHES_MM)
      for (const i of [1, 2, 3]) rises(column(cells, i), { level: true })
      for (const row of rowsOf(cells)) {
        // g, f and e stand ever further off.
        grades([1, 2, 3].map(i => at(row, i)))
        tolerances(at(row, 4))
        tolerances(at(row, 5))
      }
      for (const i of [0, 1, 2, 3, 4]) rises(column(cells, 4, i), { level: true })
      for (const i of [0, 1, 2]) rises(column(cells, 5, i), { level: true })
    }
  },
  'thread/tolerance-tables.ts BY_RANGE': {
    numbers: 433,
    rows: TOLERANCES,
    plausible: cells => {
      rises(column(cells, 0), { level: true })
      for (const end of new Set(column(cells, 0))) {
        const range = rowsOf(cells).filter(row => numberAt(row, 0) === end)
        rises(column(range, 1))
        stands(column(range, 1), PITCHES_MM)
        for (const i of [0, 1, 2, 3]) rises(column(range, 2, i), { level: true })
        for (const i of [4, 5]) rises(column(range, i))
      }
      for (const row of rowsOf(cells)) {
        tolerances(at(row, 2))
        tolerances(at(row, 3))
        // The end of group N is three times the end of group S.
        within([numberAt(row, 5) / numberAt(row, 4)], 2.7, 3.26)
      }
    }
  },
  'thread/tolerance-tables.ts RANGE_ENDS_MM': {
    numbers: 7,
    rows: TOLERANCES,
    plausible: cells => {
      const ends = column(cells)
      within(
        ends.slice(1).map((end, i) => end / ends[i]!),
        1.41,
        2.01
      )
    }
  },
  'thread/unified-series.ts ROWS': {
    numbers: 69,
    rows: 'unified-series.test.ts',
    plausible: cells => {
      rises(each(cells, row => inches(String(at(row, 0)))))
      for (const row of rowsOf(cells)) grades([1, 2, 3].map(i => at(row, i)))
      for (const i of [1, 2, 3]) {
        falls(column(cells, i), { level: true })
        stands(column(cells, i), UNIFIED_TPI)
      }
    }
  },
  'thread/unified-tap-drill.ts REPRINTED': { numbers: 35, rows: 'unified-tap-drill.test.ts', plausible: unifiedDrills },
  'thread/unified-tap-drill.ts REMEMBERED': { numbers: 42, rows: null, plausible: unifiedDrills }
}
