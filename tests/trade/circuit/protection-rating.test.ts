// example: arithmetic by hand from the published gates.
import { expect, it } from 'vitest'
import { objections, type RatingNeed, ratingChoice } from '../../../src/trade/circuit/protection-rating.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const NEED: RatingNeed = {
  style: styleOf('blade'),
  loadA: 7.5,
  ambientC: 25,
  wireLimitA: 20,
  heated: null,
  busV: null,
  inrush: null,
  fault: null,
  breakingA: null
}

it('is the smallest that three quarters of carry the load', () => {
  expect(ratingChoice(NEED).ratingA).toBe(10) // 10 · 0.75 = 7.5
  expect(ratingChoice({ ...NEED, loadA: 7.51 }).ratingA).toBe(15)
})

it('gives a reason for each one it turns down', () => {
  const { candidates } = ratingChoice(NEED)
  expect(candidates.find(({ ratingA }) => ratingA === 7.5)).toEqual({
    ratingA: 7.5,
    loadPercent: 100,
    tooSmall: true,
    rejected: ['a load of 7.5 A is more than the 5.63 A it may carry for good at 25 °C']
  })
  expect(candidates.find(({ ratingA }) => ratingA === 25)?.rejected).toEqual(['above the 20 A that this wire may have before it'])
  expect(candidates).toHaveLength(13)
})

it('stands on the limit of the wire and not above it', () => {
  expect(objections({ ...NEED, wireLimitA: 10 }, 10)).toEqual([])
  expect(objections({ ...NEED, wireLimitA: 9.99 }, 10)).toEqual(['above the 9.99 A that this wire may have before it'])
})

it('has none where the load wants more than the wire may have', () => {
  expect(ratingChoice({ ...NEED, loadA: 16 }).ratingA).toBeNull()
  expect(ratingChoice({ ...NEED, wireLimitA: null, loadA: 16 }).ratingA).toBe(25)
})

it('is not taken above the voltage that any such part is stated for, 58 V by ISO 8820-3', () => {
  expect(objections({ ...NEED, busV: 58 }, 10)).toEqual([])
  expect(objections({ ...NEED, busV: 58.1 }, 10)).toEqual(['what it can open is stated up to 58 V, the bus reaches 58.1 V'])
  expect(ratingChoice({ ...NEED, busV: 1000 }).ratingA).toBeNull()
})

it('does not let an overload without end bring the wire above what it stands for seconds', () => {
  // By hand: 1.35 · 10 A in a wire of 15 A at 105 °C in 30 °C: u = 0.9² · 75/339.5 = 0.17894, (30 + 234.5 · u)/(1 − u) = 87.6 °C;
  // 1.35 · 15 A: u = 1.35² · 75/339.5 = 0.40262, 208.3 °C. No gate in between is as hot: each is over within 600 s.
  const wire = { areaMm2: 1, resistanceOhmPerM: 0.0195, ampacityA: 15, ratedC: 105, ambientC: 30 }
  const heated = { placeC: -20, wire, startC: 40, limitC: 105 }
  expect(objections({ ...NEED, heated, loadA: 1 }, 5)).toEqual([])
  expect(objections({ ...NEED, heated }, 15).join()).toContain('brings the wire to 208 °C, it stands 160 °C for seconds')
  // A thermal breaker of 15 A holds 15/0.76 A in the cold: u = (19.7368/15)² · 75/339.5 = 0.38247, 193.8 °C; a miniature fuse its 15 A, 105 °C.
  expect(objections({ ...NEED, heated, wireLimitA: null, loadA: 1, style: styleOf('thermal') }, 15)).toEqual([
    'the 19.7 A that it holds for good at least bring the wire to 194 °C, it stands 160 °C for seconds'
  ])
  expect(objections({ ...NEED, heated, loadA: 1, style: styleOf('blade-mini') }, 15)).toEqual([])
})

it('outlasts an inrush by the quick edge', () => {
  // At 2 × rating the quick edge is at 0.15 s.
  expect(objections({ ...NEED, inrush: { currentA: 20, timeS: 0.149 } }, 10)).toEqual([])
  expect(objections({ ...NEED, inrush: { currentA: 20, timeS: 0.15 } }, 10)).toEqual(['may open in 0.15 s, the inrush lasts 0.15 s'])
  expect(objections({ ...NEED, style: styleOf('glass'), inrush: { currentA: 20, timeS: 0.1 } }, 10)).toEqual([
    'no shortest time is published: it may open at an inrush of 20 A'
  ])
})

it('opens at the fault and can break it', () => {
  expect(objections({ ...NEED, fault: { leastA: 13.4, greatestA: 13.4 } }, 10)).toEqual(['may never open at a fault of 13.4 A'])
  expect(objections({ ...NEED, fault: { leastA: 13.5, greatestA: 13.5 } }, 10)).toEqual([])
  expect(objections({ ...NEED, fault: { leastA: 1001, greatestA: 1001 } }, 10)).toEqual([
    'a fault of 1000 A is more than the 1000 A it can open'
  ])
})

it('says so where no re-rating is printed', () => {
  expect(objections({ ...NEED, ambientC: 70 }, 10)).toEqual(['no re-rating is printed for 70 °C'])
})

it('holds a short against what is printed on the part instead of the figure of the style', () => {
  // ISO 8820-3 (read-secondary): blade fuses break 1000 A at most.
  const broken = (greatestA: number, breakingA: number | null) =>
    objections({ ...NEED, fault: { leastA: 100, greatestA }, breakingA }, 10).filter(says => says.includes('it can open'))
  expect(broken(1500, null)).toEqual(['a fault of 1500 A is more than the 1000 A it can open'])
  expect(broken(1500, 2000)).toEqual([])
  expect(broken(900, 500)).toEqual(['a fault of 900 A is more than the 500 A it can open'])
  expect(objections({ ...NEED, style: styleOf('thermal'), fault: { leastA: 100, greatestA: 900 }, breakingA: 500 }, 10).join()).toContain(
    'more than the 500 A'
  )
})
