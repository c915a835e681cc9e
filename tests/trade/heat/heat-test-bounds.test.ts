// example: how far a heat test may be off, by hand; what is said of it.
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'

const [CAPACITY, LOSS] = [400, 0.6]
const TIMES_S = Array.from({ length: 11 }, (_, i) => 60 * i)
/** The closed form of one node, written out again, from 12 °C in air of 12 °C by 40 W. */
const RUN = TIMES_S.map(timeS => ({ timeS, blockC: 12 + (40 / LOSS) * (1 - Math.exp((-timeS * LOSS) / CAPACITY)) }))
/** What lies across all that three figures can take up, near enough: it swings from reading to reading. */
const SWINGING = RUN.map(({ timeS, blockC }, i) => ({ timeS, blockC: blockC + [0.2, -0.2][i % 2]! }))
const GIVEN = { powerW: new Given(40), airC: new Given(12), readingK: 0.05 }

it('leaves over what the readings swing, for the three figures that were fitted: 0.2·√(11/8)', () => {
  const { residualK } = fitHeatTest({ ...GIVEN, readings: SWINGING })
  // The three take up some of it, at most a twentieth.
  expect(residualK).toBeLessThanOrEqual(0.2 * Math.sqrt(11 / 8))
  expect(residualK).toBeGreaterThan(0.95 * 0.2 * Math.sqrt(11 / 8))
})

it('takes the greater of what is left over and the accuracy of a reading, an even spread: a/√3', () => {
  const width = (readings: typeof RUN, readingK: number) => {
    const { low, high } = fitHeatTest({ ...GIVEN, readings, readingK }).lossWPerK
    return high - low
  }
  const { residualK } = fitHeatTest({ ...GIVEN, readings: SWINGING })
  // As wide as were each reading off by that residual times √3; half of that is not asked for, twice of it is.
  expect(width(SWINGING, 0.5 * residualK * Math.sqrt(3)) / width(SWINGING, residualK * Math.sqrt(3))).toBeCloseTo(1, 6)
  expect(width(SWINGING, 2 * residualK * Math.sqrt(3)) / width(SWINGING, residualK * Math.sqrt(3))).toBeCloseTo(2, 6)
})

it('is satisfied with five readings', () => {
  expect(fitHeatTest({ ...GIVEN, readings: RUN.filter((_, i) => i % 2 === 0).slice(0, 5) }).lossWPerK.value).toBeCloseTo(LOSS, 6)
})

it('says how many readings there were and what is left over', () => {
  const { working, value } = withWorking(() => fitHeatTest({ ...GIVEN, readings: SWINGING }))
  for (const { putIn } of working) expect(putIn).toBe(`11 readings, ${value.residualK.toPrecision(2)} K left over`)
})

it('stands at the heat test where no other place was told', () => {
  expect(fitHeatTest({ ...GIVEN, readings: RUN })).toMatchObject({ capacityJPerK: { at: ['heat-test'] }, lossWPerK: { at: ['heat-test'] } })
})

it('of a block that ends as warm as it began warms nothing', () => {
  const readings = TIMES_S.map((timeS, i) => ({ timeS, blockC: 12 + (i % 10) }))
  expect(() => fitHeatTest({ ...GIVEN, readings })).toThrow('the block does not get warmer')
})
