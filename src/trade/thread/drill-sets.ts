import type { SourceId } from '../../formula/source.ts'
import type { Drill, DrillSet } from './drill.ts'

/** #1 to #80, in ten-thousandths of an inch (ASME B94.11M). */
const NUMBERS = [
  2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770, 1730, 1695, 1660, 1610, 1590, 1570, 1540,
  1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160, 1130, 1110, 1100, 1065, 1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785,
  760, 730, 700, 670, 635, 595, 550, 520, 465, 430, 420, 410, 400, 390, 380, 370, 360, 350, 330, 320, 310, 292, 280, 260, 250, 240, 225,
  210, 200, 180, 160, 145, 135
]

/** A to Z, in ten-thousandths of an inch (ASME B94.11M). */
const LETTERS = [
  2340, 2380, 2420, 2460, 2500, 2570, 2610, 2660, 2720, 2770, 2810, 2900, 2950, 3020, 3160, 3230, 3320, 3390, 3480, 3580, 3680, 3770, 3860,
  3970, 4040, 4130
]

/** Fraction drills go up to 1-1/2 in. */
const GREATEST_64THS = 96

/** Runs of the metric set in hundredths of a millimetre: from, to, by. */
const METRIC: readonly (readonly [from: number, to: number, by: number, source: SourceId])[] = [
  [20, 90, 10, 'iso-235-memory'],
  [22, 92, 10, 'iso-235-memory'],
  [25, 95, 10, 'iso-235-memory'],
  [28, 98, 10, 'iso-235-memory'],
  [100, 295, 5, 'iso-235'],
  [300, 1390, 10, 'iso-235'],
  [1400, 2500, 25, 'iso-235'],
  [2550, 5000, 50, 'iso-235-memory'],
  [325, 1375, 50, 'drill-extras'],
  [315, 315, 5, 'tap-drill-stocked']
]

/** The drills of one set, smallest first. */
export function drillsOf(set: DrillSet): readonly Drill[] {
  made[set] ??= SETS[set]().toSorted((a, b) => a.diameterMm - b.diameterMm)
  return made[set]
}

const made: { [Set in DrillSet]?: readonly Drill[] } = {}

const SETS: { readonly [Set in DrillSet]: () => readonly Drill[] } = {
  metric: () => METRIC.flatMap(metricRun),
  fraction: () => Array.from({ length: GREATEST_64THS }, (_, i) => fractionDrill(i + 1)),
  number: () => NUMBERS.map((tenthousandths, i) => inchDrill('number', `#${i + 1}`, tenthousandths)),
  letter: () => LETTERS.map((tenthousandths, i) => inchDrill('letter', String.fromCharCode(65 + i), tenthousandths))
}

function metricRun([from, to, by, source]: (typeof METRIC)[number]): readonly Drill[] {
  const count = (to - from) / by + 1
  return Array.from({ length: count }, (_, i) => metricDrill((from + i * by) / 100, source))
}

function metricDrill(diameterMm: number, source: SourceId): Drill {
  return { set: 'metric', name: `${diameterMm} mm`, diameterMm, source }
}

/** Whole numbers up to the last division, so that a drill is the nearest number to its size. */
function inchDrill(set: 'number' | 'letter', name: string, tenthousandths: number): Drill {
  return { set, name, diameterMm: (tenthousandths * 254) / 100000, source: 'asme-b94.11' }
}

function fractionDrill(sixtyFourths: number): Drill {
  return { set: 'fraction', name: fractionName(sixtyFourths), diameterMm: (sixtyFourths * 254) / 640, source: 'drill-fractions' }
}

/** 28 → `7/16`, 80 → `1-1/4`, 64 → `1 in`. */
function fractionName(sixtyFourths: number): string {
  const [whole, rest] = [Math.floor(sixtyFourths / 64), sixtyFourths % 64]
  if (rest === 0) return `${whole} in`
  const shared = rest & -rest
  return `${whole > 0 ? `${whole}-` : ''}${rest / shared}/${64 / shared}`
}
