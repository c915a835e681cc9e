// table: outside source. Rows of rows/protection.ts, each with its source and label.
import { THERMAL_MULTIPLIERS } from '../../src/trade/circuit/breaker-styles.ts'
import { meltingA2S } from '../../src/trade/circuit/fuse-resistance.ts'
import { loadRow } from '../../src/trade/circuit/protection-ambient.ts'
import { breakingCapacity } from '../../src/trade/circuit/protection-breaking.ts'
import { openingTime } from '../../src/trade/circuit/protection-opening.ts'
import { PROTECTOR_PLACES } from '../../src/trade/circuit/protection-place.ts'
import type { StyleId } from '../../src/trade/circuit/protection-style.ts'
import { styleOf } from '../../src/trade/circuit/protection-styles.ts'
import { wireLimit } from '../../src/trade/circuit/protection-wire-limit.ts'
import { awgIn, checkRows, numberIn } from './electrical-rows.ts'
import type { ElectricalRow } from './rows/electrical-row.ts'
import { PROTECTION_ROWS } from './rows/protection.ts'

const ELSEWHERE = { insulationC: 105, ambientC: 30, altitudeM: 0, bundleCount: 1 }

const aircraftLimit =
  (kind: 'fuse' | 'breaker') =>
  ({ item }: ElectricalRow) =>
    wireLimit({ practice: 'aircraft', kind, conductor: { standard: 'awg', awg: awgIn(item) }, ...ELSEWHERE }).wireLimitA

/** A 30 A fuse: for the larger ratings the gates were noted. */
const bladeS =
  (edge: 'shortestS' | 'longestS') =>
  ({ condition }: ElectricalRow) =>
    openingTime(styleOf('blade'), { ratingA: 30, currentA: (30 * numberIn(condition)) / 100 })![edge]

const sheetStyle = ({ item }: ElectricalRow): StyleId => (item.includes('large') ? 'blade-large' : 'blade')
const sheetRatingA = ({ item }: ElectricalRow) => Number(/([\d.]+) A$/.exec(item)![1])
const sheetRow = (row: ElectricalRow) => styleOf(sheetStyle(row)).sheet.find(({ ratingA }) => ratingA === sheetRatingA(row))!

/** The maker's figure stands without the three quarters that are taken of it. */
function makersLoadA(row: ElectricalRow): number {
  const ratingA = sheetRatingA(row)
  return (ratingA * loadRow(styleOf(sheetStyle(row)), { ratingA, ambientC: numberIn(row.condition) })!.loadPercent) / 75
}

const sharePercent = (style: StyleId, ambientC: number) => () => loadRow(styleOf(style), { ratingA: 10, ambientC })!.loadPercent
const breakingA = (ratingA: number) => () => breakingCapacity(styleOf('glass'), ratingA)!.breakingA

function glass(overRatio: number): string {
  const { shortestS, longestS, band } = openingTime(styleOf('glass'), { ratingA: 10, currentA: 10 * overRatio })!
  if (band === 'carries') return shortestS === Number.POSITIVE_INFINITY ? 'carries; rise at most 75 K' : 'opens'
  return `opens within ${longestS} s`
}

function iec60898(overRatio: number): string {
  const { shortestS, longestS, band } = openingTime(styleOf('iec-60898'), { ratingA: 20, currentA: 20 * overRatio })!
  return band === 'carries' ? `no trip within ${shortestS} s (to 63 A)` : `trips within ${longestS} s (to 63 A)`
}

/** The limit over what the table gives for the wire. */
function boatPercent(): number {
  const { wireLimitA, overloadA } = wireLimit({ practice: 'boat', kind: 'fuse', conductor: { standard: 'awg', awg: 14 }, ...ELSEWHERE })
  return (100 * wireLimitA!) / overloadA!
}

checkRows(
  'protection',
  PROTECTION_ROWS,
  [
    { rows: /^largest circuit breaker/, gives: aircraftLimit('breaker') },
    { rows: /^largest fuse/, gives: aircraftLimit('fuse') },
    { rows: ['protection-026'], gives: () => PROTECTOR_PLACES.aircraft.open.says },
    { rows: ['protection-027'], gives: () => glass(1) },
    { rows: ['protection-028'], gives: () => glass(1.35) },
    { rows: ['protection-031'], gives: breakingA(1) },
    { rows: ['protection-032'], gives: breakingA(3.5) },
    { rows: ['protection-034'], gives: breakingA(15) },
    { rows: ['protection-036'], gives: sharePercent('glass', 25) },
    { rows: ['protection-037'], gives: sharePercent('glass', 85) },
    { rows: ['protection-039'], gives: () => breakingCapacity(styleOf('blade'), 40)!.breakingA },
    { rows: ['protection-040'], gives: () => styleOf('blade').ratingsA.join(' ') },
    { rows: ['protection-041'], gives: () => styleOf('blade-mini').ratingsA.join(' ') },
    { rows: /^opening time, minimum/, gives: bladeS('shortestS'), within: 1e-6 },
    { rows: /^opening time, maximum/, gives: bladeS('longestS'), within: 1e-6 },
    { rows: /^no opening at 100 %/, gives: () => openingTime(styleOf('blade'), { ratingA: 40, currentA: 40 })!.shortestS },
    { rows: /^typical cold resistance/, gives: row => 1000 * sheetRow(row).coldOhm! },
    { rows: /^typical voltage drop/, gives: row => 1000 * sheetRow(row).dropV! },
    { rows: /^melting I2t/, gives: row => meltingA2S(styleOf(sheetStyle(row)), sheetRatingA(row)) },
    { rows: /^allowed continuous load/, gives: makersLoadA },
    {
      rows: /^multiply the wanted rating by/,
      gives: ({ condition }) => THERMAL_MULTIPLIERS.find(({ ambientC }) => ambientC === numberIn(condition))!.factor
    },
    { rows: ['protection-094'], gives: () => iec60898(1.13) },
    { rows: ['protection-095'], gives: () => iec60898(1.45) },
    // The four fifths that a breaker is loaded to are not in the maker's factor.
    { rows: /^thermal-magnetic trip setting/, gives: ({ condition }) => sharePercent('thermal-magnetic', numberIn(condition))() / 80 },
    { rows: ['protection-108'], gives: () => PROTECTOR_PLACES.boat.open.greatestMm! / 25.4 },
    { rows: ['protection-109'], gives: () => PROTECTOR_PLACES.boat.sheathed.greatestMm! / 25.4 },
    { rows: ['protection-110'], gives: boatPercent }
  ],
  {
    'protection-025': 'a rule in words, for the judge of a wire',
    'protection-097': 'no times: the style has no band',
    'protection-105': 'one reading from a curve of one maker: no band',
    'protection-107': 'a rule in words, for the judge of a circuit'
  }
)
