// Table: the ring that carries the load, against printed stress areas.
// The diameter is worked out here: (d2 + d3)/2 = d − 13/12 H (ISO 898-1, read-secondary), unified D − 0.9743/n; the area is the program's.
// The unified rows say 0.7854 for π/4: a fifth of their last digit at one inch.
import { expect, test } from 'vitest'
import { ringAreaMm2, stressDiameterMm } from '../../src/trade/joint/body.ts'
import { STRESS_AREAS } from './rows/joint-stress-areas.ts'

type Row = (typeof STRESS_AREAS)[number]

function ringMm({ series, major, pitchOrTpi }: Row): number {
  return series === 'metric' ? major - ((13 / 12) * Math.sqrt(3) * pitchOrTpi) / 2 : (major - 0.9743 / pitchOrTpi) * 25.4
}

const unitMm2 = ({ series }: Row) => (series === 'metric' ? 1 : 25.4 ** 2)

/** Half the last printed digit; three unified areas are printed a last digit high. */
function tolerance({ series, digits }: Row): number {
  return (series === 'metric' ? 0.5 : 1.05) * 10 ** -digits
}

/** Half the last digit of the computed column, for unified rows with their rounding of π/4. */
const computedTolerance = ({ series, computedDigits }: Row) => (series === 'metric' ? 0.5 : 0.7) * 10 ** -computedDigits

test.each(STRESS_AREAS)('$thread ($label)', row => {
  const area = ringAreaMm2({ ringMm: ringMm(row), boreMm: 0 }) / unitMm2(row)
  expect(Math.abs(area - row.computed)).toBeLessThanOrEqual(computedTolerance(row))
  if (row.published !== null) expect(Math.abs(area - row.published)).toBeLessThanOrEqual(tolerance(row))
})

test.each(STRESS_AREAS)('$thread: diameter from the area', row => {
  const diameterMm = stressDiameterMm({ stressAreaMm2: row.computed * unitMm2(row) })
  const errorMm = (2 * computedTolerance(row) * unitMm2(row)) / (Math.PI * ringMm(row))
  expect(Math.abs(diameterMm - ringMm(row))).toBeLessThanOrEqual(1.01 * errorMm)
})
