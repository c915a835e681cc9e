// table: densities by hand and tails of printed tables
import { describe, expect, it } from 'vitest'
import { beyond, dot, Gaussian, logSum } from '../../../src/trade/proof/gaussian.ts'

describe('a Gaussian', () => {
  it('of one reading: -(x - m)²/2s² - ln s - ln √2π', () => {
    const one = new Gaussian([3], [[0.25]])
    expect(one.logDensity([4])).toBeCloseTo(-2 - Math.log(0.5) - 0.5 * Math.log(2 * Math.PI), 12)
    expect(one.distance([4])).toBeCloseTo(4, 12)
  })

  it('of two readings that move together: (x² - 2rxy + y²)/(1 - r²)', () => {
    const two = new Gaussian(
      [0, 0],
      [
        [1, 0.6],
        [0.6, 1]
      ]
    )
    expect(two.distance([1, 2])).toBeCloseTo((1 - 2 * 0.6 * 2 + 4) / (1 - 0.36), 12)
    expect(two.logDensity([1, 2])).toBeCloseTo(-0.5 * two.distance([1, 2]) - 0.5 * Math.log(0.64) - Math.log(2 * Math.PI), 12)
    expect(dot([1, 2], two.solve([1, 2]))).toBeCloseTo(two.distance([1, 2]), 12)
  })

  it('of no reading says nothing', () => {
    expect(new Gaussian([], []).logDensity([])).toBeCloseTo(0, 12)
  })

  it('of readings that vary in no way is refused', () => {
    expect(() => new Gaussian([1], [[0]])).toThrow()
  })
})

// Upper points of chi-squared as tables print them, three decimals (memory).
it.each([
  [3.841, 1, 0.05],
  [6.635, 1, 0.01],
  [5.991, 2, 0.05],
  [9.21, 2, 0.01],
  [16.919, 9, 0.05],
  [37.566, 20, 0.01],
  [10.828, 1, 0.001]
])('beyond %d of %d readings: %d', (distance, count, share) => {
  expect(beyond(distance, count)).toBeGreaterThan(share * 0.8)
  expect(beyond(distance, count)).toBeLessThan(share * 1.2)
})

// Upper tail of the normal distribution, seven decimals as tables print it (memory). The distance of each is that at which, by Wilson and
// Hilferty, the cube root of a chi-squared over its freedom lies z deviations from its mean: mean 1 - 2/9n, variance 2/9n (memory).
it.each([
  [-1, 0.8413447],
  [0.5, 0.3085375],
  [1, 0.1586553],
  [2, 0.0227501],
  [3, 0.0013499]
])('beyond %d deviations: %d', (z, share) => {
  for (const count of [1, 2, 9]) {
    const distance = count * (1 - 2 / (9 * count) + z * Math.sqrt(2 / (9 * count))) ** 3
    expect(Math.abs(beyond(distance, count) - share)).toBeLessThanOrEqual(1.5e-7)
  }
})

it('half of all lie beyond the middle, and none fit better than perfectly', () => {
  expect(beyond(0, 3)).toBeGreaterThan(0.99)
  expect(beyond(1e6, 3)).toBeLessThan(1e-12)
  expect(beyond(5, 0)).toBe(1)
})

it('adds what is far apart', () => {
  expect(logSum([-1000, -1000])).toBeCloseTo(-1000 + Math.log(2), 12)
  expect(logSum([0, Number.NEGATIVE_INFINITY])).toBe(0)
  expect(logSum([Number.NEGATIVE_INFINITY])).toBe(Number.NEGATIVE_INFINITY)
})
