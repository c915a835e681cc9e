// table: number and letter drills. The inch column is the program's own data; the mm column was printed beside it.
import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { drillsOf } from '../../src/trade/thread/drill-sets.ts'
import { INCH_DRILLS } from './rows/drills.ts'

const drills = [...drillsOf('number'), ...drillsOf('letter')]
const sizeOf = (name: string) => drills.find(drill => drill.name === name)?.diameterMm ?? Number.NaN

describe('shipped data: number and letter drills', () => {
  it.each(INCH_DRILLS)('$drill is $diameterMm mm [$source, $label]', ({ drill, diameterMm, diameterIn }) => {
    expect(Math.abs(sizeOf(drill) - diameterMm)).toBeLessThanOrEqual(0.0005 + 1e-9)
    expect(sizeOf(drill) / 25.4).toBeCloseTo(diameterIn, 9)
  })

  it('has them all', () => {
    expect(drills).toHaveLength(INCH_DRILLS.length)
  })

  it('falls from #1 to #80 and rises from A to Z', () => {
    const numbers = Array.from({ length: 80 }, (_, i) => sizeOf(`#${80 - i}`))
    const letters = Array.from({ length: 26 }, (_, i) => sizeOf(String.fromCharCode(65 + i)))
    for (const sizes of [numbers, letters, [...numbers, ...letters]]) expect(sizes).toEqual([...new Set(sizes)].toSorted((a, b) => a - b))
  })
})

/** The drill in mm by GNU units. */
function byUnits(drill: string): number {
  const from = drill.startsWith('#') ? `drillgauge(${drill.slice(1)})` : `drill${drill}`
  return Number(spawnSync('units', ['-t', '-o', '%.12g', from, 'mm'], { encoding: 'utf8' }).stdout)
}

const installed = spawnSync('units', ['--version']).error === undefined

describe.skipIf(!installed)('outside program: GNU units', () => {
  it.each(INCH_DRILLS.filter(({ set }) => set === 'letter'))('letter $drill', ({ drill }) => {
    expect(sizeOf(drill)).toBeCloseTo(byUnits(drill), 9)
  })

  it.each(INCH_DRILLS.filter(({ set }) => set === 'number'))('number $drill', ({ drill }) => {
    expect(sizeOf(drill)).toBeCloseTo(byUnits(drill), 9)
  })
})
