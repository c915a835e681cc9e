// example: places on axes by hand
import { expect, it } from 'vitest'
import { along, decadesOf, roundSteps } from '../../../src/report/drawing/axis.ts'

it('a logarithmic axis goes by powers of ten', () => {
  expect(along({ by: 'log', least: 1, most: 100 }, 10)).toBeCloseTo(0.5, 12)
  expect(along({ by: 'log', least: 1, most: 100 }, 0.1)).toBe(0)
  expect(along({ by: 'log', least: 1, most: 100 }, 1e4)).toBe(1)
  expect(decadesOf({ least: 2, most: 250 })).toEqual([10, 100])
  expect(decadesOf({ least: 0.01, most: 1 })).toEqual([0.01, 0.1, 1])
})

it('an even one by sums', () => expect(along({ by: 'even', least: -20, most: 60 }, 0)).toBe(0.25))

it('steps are round', () => {
  expect(roundSteps({ least: -21, most: 76 }, 6)).toEqual([-20, 0, 20, 40, 60])
  expect(roundSteps({ least: 0, most: 70.8 }, 4)).toEqual([0, 20, 40, 60])
  expect(roundSteps({ least: 0.1, most: 0.35 }, 5)).toEqual([0.1, 0.15, 0.2, 0.25, 0.3, 0.35])
})
