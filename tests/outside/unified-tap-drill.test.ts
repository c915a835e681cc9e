// table: tap drills of unified threads (rows/unified-tap-drills.ts), and the hole for a forming tap
import { describe, expect, it } from 'vitest'
import { basicSizes } from '../../src/trade/thread/basic.ts'
import { DRILL_SETS } from '../../src/trade/thread/drill.ts'
import { drillsOf } from '../../src/trade/thread/drill-sets.ts'
import { formingDrillMm } from '../../src/trade/thread/forming-drill.ts'
import { publishedTapDrill } from '../../src/trade/thread/published-tap-drill.ts'
import { readUnifiedClass } from '../../src/trade/thread/unified-class.ts'
import { readUnified } from '../../src/trade/thread/unified-designation.ts'
import { unifiedLimits } from '../../src/trade/thread/unified-limits.ts'
import { type UnifiedThread, unifiedThreads } from '../../src/trade/thread/unified-series.ts'
import { unifiedTapDrill } from '../../src/trade/thread/unified-tap-drill.ts'
import { UNIFIED_TAP_DRILL_ROWS } from './rows/unified-tap-drills.ts'

function thread(name: string): UnifiedThread {
  const read = readUnified(name)
  if (!read.ok) throw new Error(read.fault.found)
  return read.value
}

function within2B(of: UnifiedThread, diameterMm: number): boolean {
  const usual = readUnifiedClass(null)
  if (!usual.ok) throw new Error('no usual class')
  const { minMm, maxMm } = unifiedLimits({ thread: of, toleranceClass: usual.value, basics: basicSizes(of) }).internal.minor
  return diameterMm >= minMm && diameterMm <= maxMm
}

describe.each(UNIFIED_TAP_DRILL_ROWS)('$thread: $drillName', ({ thread: name, drillName, inches, heightOn58, heightOn34, within }) => {
  const of = thread(name)
  const drill = publishedTapDrill(of)

  it(`shipped data: ${drillName} is ${inches} in`, () => {
    expect(drill).toMatchObject({ drill: { name: drillName }, source: 'unified-tap-drill' })
    expect(Math.abs(drill.diameterMm / 25.4 - Number(inches))).toBeLessThanOrEqual(0.00005 + 1e-9)
  })

  // The printed heights were worked out from the exact fraction: one decimal.
  it(`shipped data: it leaves a height of ${heightOn58} % of 5/8 H, ${heightOn34} % of 3/4 H`, () => {
    const overP = (100 * (of.majorMm - drill.diameterMm)) / of.pitchMm
    expect(Math.abs(overP / 1.082532 - Number(heightOn58))).toBeLessThanOrEqual(0.0501)
    expect(Math.abs(overP / 1.299038 - Number(heightOn34))).toBeLessThanOrEqual(0.0501)
  })

  it(`is ${within ? 'inside' : 'outside'} the minor limits of 2B`, () => {
    expect(within2B(of, drill.diameterMm)).toBe(within)
  })
})

// A second route for the drills from memory: a usual chart keeps between 60 and 85 % of 3/4 H (common practice), and within 2B;
// 37/64 for 5/8-18 is 0.0001 in over, as 33/64 for 9/16-18 is 0.0006 in over in print.
const remembered = unifiedThreads().filter(each => unifiedTapDrill(each).source === 'unified-tap-drill-memory')
it.each(remembered)('shipped data: $name, its drill from memory is plausible', of => {
  const { drill, diameterMm } = publishedTapDrill(of)
  const height = (100 * (of.majorMm - diameterMm)) / (1.299038 * of.pitchMm)
  expect(height).toBeGreaterThan(60)
  expect(height).toBeLessThan(85)
  expect(drill).not.toBeNull()
  expect(within2B(of, diameterMm)).toBe(of.name !== '5/8-18 UNF')
})

// No chart of the extra fine series is at hand: the drill is that of "75 % thread", 60 to 85 % of 3/4 H (common practice), and inside 2B where any drill is.
const byRule = unifiedThreads().filter(each => unifiedTapDrill(each).source === 'unified-tap-drill-rule')
const everyDrill = DRILL_SETS.flatMap(drillsOf)
it.each(byRule)('$name is drilled by the rule, inside the limits where a drill is', of => {
  const { diameterMm } = publishedTapDrill(of)
  const height = (100 * (of.majorMm - diameterMm)) / (1.299038 * of.pitchMm)
  expect(height).toBeGreaterThan(60)
  expect(height).toBeLessThan(85)
  expect(within2B(of, diameterMm)).toBe(everyDrill.some(drill => within2B(of, drill.diameterMm)))
})

it('every coarse and fine thread has a chart, the extra fine have none', () => {
  expect(byRule.map(({ name }) => name)).toEqual(unifiedThreads().flatMap(({ name, series }) => (series === 'UNEF' ? [name] : [])))
})

// Rule of inch charts, h = D − 0.0068 % / n (read-secondary): 1/2-13 at 65 % is 0.4660 in.
it('1/2-13 is drilled 0.4660 in for a forming tap at 65 %', () => {
  const { majorMm, pitchMm } = thread('1/2-13')
  expect(Math.abs(formingDrillMm({ majorMm, pitchMm, formedPercent: 65 }) / 25.4 - 0.466)).toBeLessThanOrEqual(0.0001)
})
