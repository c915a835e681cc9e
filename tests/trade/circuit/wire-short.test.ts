// property: a short until the slow edge opens; invented wire
import { expect, it } from 'vitest'
import { stagedHeating, wireShort } from '../../../src/trade/circuit/wire-short.ts'

const wire = { areaMm2: 2.08, resistanceOhmPerM: 0.00828, ampacityA: 35, ratedC: 105, ambientC: 30 }
const at = (faultA: number, ratingA = 20) => wireShort({ style: 'blade', ratingA, faultA, wire, insulationC: 105, loadedC: 60 })!

it('a short of up to 5 s is reckoned from the rating of the insulation, a longer one from the warmth under load', () => {
  expect(at(40)).toMatchObject({ longestS: expect.closeTo(5, 9), limitC: 160 }) // twice the rating: the last gate of the sheet, 5 s
  expect(at(40).endC).toBeGreaterThan(105)
  expect(at(39).longestS).toBeGreaterThan(5)
  expect(at(39)).toMatchObject({ limitC: 105 })
})

it('a fuse that opens later never leaves the wire more room', () => {
  const thin = { ...wire, areaMm2: 1.5, resistanceOhmPerM: 0.0137, ampacityA: 38 }
  const marginK = (faultA: number) => wireShort({ style: 'blade', ratingA: 30, faultA, wire: thin, insulationC: 105, loadedC: 32 })!.marginK
  expect(marginK(60.1)).toBeLessThan(0)
  // Less current, opened later: beyond 5 s, where the first 5 s count too.
  for (let faultA = 59; faultA < 60; faultA += 0.1) expect(marginK(faultA), `${faultA} A`).toBeLessThan(0)
})

it('below the gate at which it must open it flows for good, and the wire settles', () => {
  expect(at(26)).toMatchObject({ longestS: Number.POSITIVE_INFINITY, limitC: 105 })
  expect(at(26).marginK).toBeGreaterThan(0) // 26 A in a wire for 35 A
  expect(at(39, 30).marginK).toBeLessThan(0) // 39 A for good
})

it('past the last gate the current no longer matters: the fuse lets the same heat through', () => {
  expect(at(4000).endC).toBeCloseTo(at(400).endC, 9)
  expect(at(1e6).endC).toBeCloseTo(at(400).endC, 9)
})

it('says nothing of a style without published times', () => {
  expect(wireShort({ style: 'thermal', ratingA: 20, faultA: 400, wire, insulationC: 105, loadedC: 60 })).toBeNull()
})

const copper = { ...wire, areaMm2: 1 }
const staged = (...stages: readonly (readonly [currentA: number, timeS: number])[]) =>
  stagedHeating({ stages: stages.map(([currentA, timeS]) => ({ currentA, timeS })), wire: copper, insulationC: 105, loadedC: 60 })

it('protectors that open one after the other: up to 5 s the heat of all stages stays in the copper', () => {
  // By hand, IEC 60364-5-54 annex A: (105 + 234.5)·exp((60²·1 + 40²·1)/226²) - 234.5 = 141.38 °C.
  expect(staged([60, 1], [40, 1])).toMatchObject({ endC: expect.closeTo(141.4, 1), limitC: 160 })
  expect(staged([50, 2]).endC).toBeCloseTo(staged([50, 0.5], [50, 1.5]).endC, 9)
})

it('a stage that cools the wire hides none before it, and what is past its limit is not followed further', () => {
  const hot = staged([85, 1])
  expect(hot.marginK).toBeGreaterThan(0)
  expect(staged([85, 1], [1, 600]).marginK).toBeLessThanOrEqual(hot.marginK)
  expect(staged([400, 1], [400, 1]).endC).toBe(staged([400, 1]).endC)
})

it('a last stage without end settles', () => {
  expect(staged([20, 1], [20, Number.POSITIVE_INFINITY]).marginK).toBeGreaterThan(0) // 20 A in a wire for 35 A
  const carrying = staged([20, 1], [39, Number.POSITIVE_INFINITY]) // 39 A in it
  expect(carrying.limitC).toBe(105)
  expect(carrying.marginK).toBeLessThan(0)
})
