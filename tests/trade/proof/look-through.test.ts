// example: bell curves on a line of logarithms, by hand; all of them invented
import { expect, it } from 'vitest'
import { best, CLOSE, lookedThrough } from '../../../src/trade/proof/look-through.ts'

const LINE = { low: 0, high: 20 }
const bell = (log: number, { middle, deviation }: { middle: number; deviation: number }) => -0.5 * ((log - middle) / deviation) ** 2

it('finds the higher of two tops where the first look takes the other for it, and a neighbour of that for the second', () => {
  // On whole numbers the wide one shows 0 at 5 and -0.5 beside; the narrow one, 1 high at 15.45, shows no more than 1 - 0.5·2.25² = -1.5.
  const at = (log: number) => ({
    size: Math.exp(log),
    logLikelihood: Math.max(bell(log, { middle: 5, deviation: 1 }), 1 + bell(log, { middle: 15.45, deviation: 0.2 }))
  })
  const top = best(lookedThrough(at, LINE, CLOSE))
  expect(Math.log(top.size)).toBeCloseTo(15.45, 2)
  expect(top.logLikelihood).toBeCloseTo(1, 3)
})

it('goes through a top in steps of its deviation: at three of them to either side it has fallen by 0.5·3²', () => {
  // The top lies where the search looks first, 11 - (√5 - 1), so that its bend is measured at the top itself.
  const middle = 12 - Math.sqrt(5)
  const at = (log: number) => ({ size: Math.exp(log), logLikelihood: bell(log, { middle, deviation: 0.1 }) })
  const [before, after, ...more] = lookedThrough(at, LINE, CLOSE).filter(({ logLikelihood }) => Math.abs(logLikelihood + 4.5) < 0.01)
  expect(Math.log(before!.size)).toBeCloseTo(middle - 0.3, 6)
  expect(Math.log(after!.size)).toBeCloseTo(middle + 0.3, 6)
  expect(more).toEqual([])
})

it.each([
  ['high', 1, 20],
  ['low', -1, 0]
])('climbs to the %s end and not past it', (_, slope, end) => {
  const at = (log: number) => ({ size: Math.exp(log), logLikelihood: slope * log })
  const logs = lookedThrough(at, LINE, CLOSE).map(({ size }) => Math.log(size))
  expect(Math.min(...logs)).toBeGreaterThanOrEqual(-1e-9)
  expect(Math.max(...logs)).toBeLessThanOrEqual(20 + 1e-9)
  expect(Math.log(best(lookedThrough(at, LINE, CLOSE)).size)).toBeCloseTo(end, 9)
})
