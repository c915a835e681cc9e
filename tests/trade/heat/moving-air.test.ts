// Table: recalled answers of textbook examples (memory); property: pieces of a correlation meet where one ends and the next begins.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { hilpertRatio, plateRatio } from '../../../src/trade/heat/forced-nusselt.ts'
import { cylinderNusseltRatio, laminarPlateNusseltRatio, plateNusseltRatio } from '../../../src/trade/heat/moving-air.ts'

describe('recalled from Incropera, Fundamentals of Heat and Mass Transfer (memory)', () => {
  it('example 7.1: a plate at Re 9597, Pr 0.687 has Nu 57.4', () => {
    expect(laminarPlateNusseltRatio({ reynoldsRatio: 9597, prandtlRatio: 0.687 })).toBeCloseTo(57.4, 1)
  })
  it('example 7.4, comments: Hilpert at Re 6071, Pr 0.70 has Nu 37.3', () => {
    expect(hilpertRatio({ reynoldsRatio: 6071, prandtlRatio: 0.7 })).toBeCloseTo(37.3, 1)
  })
})

// Churchill and Bernstein at Re 282000 and a sixteenth of it, where the powers of Re/282000 are plain: 1 and 2^-2.5. By hand 446.8 and 73.3.
describe('Churchill and Bernstein at Pr 0.7', () => {
  const laminar = (re: number) => (0.62 * Math.sqrt(re) * Math.cbrt(0.7)) / Math.sqrt(Math.sqrt(1 + Math.cbrt((4 / 7) ** 2)))
  it.each([
    [282000, 0.3 + laminar(282000) * 2 ** 0.8],
    [282000 / 16, 0.3 + laminar(282000 / 16) * (1 + 1 / Math.sqrt(32)) ** 0.8]
  ])('Re %d', (reynoldsRatio, nusselt) => {
    expect(cylinderNusseltRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toBeCloseTo(nusselt, 9)
  })
  it('example 7.4: Re 6071 has Nu 40.6 (Incropera, memory)', () => {
    expect(cylinderNusseltRatio({ reynoldsRatio: 6071, prandtlRatio: 0.7 })).toBeCloseTo(40.6, 1)
  })
})

describe('a plate at Re 500000', () => {
  it('the 871 is what makes the turbulent form begin where the laminar one ends', () => {
    const at = { reynoldsRatio: 5e5, prandtlRatio: 0.7 }
    expect(plateNusseltRatio(at) / laminarPlateNusseltRatio(at)).toBeCloseTo(1, 2)
  })
  it('takes the turbulent form above', () => {
    const [below, above] = [5e5, 1e6].map(reynoldsRatio => plateRatio({ reynoldsRatio, prandtlRatio: 0.7 }))
    // Turbulent: far more than the √2 of the laminar form.
    expect(above! / below!).toBeGreaterThan(2)
  })
})

// Hilpert's rows (Incropera, memory): up to each Reynolds number the row before it, from just above the next.
describe.each([
  [4, [0.989, 0.33], [0.911, 0.385]],
  [40, [0.911, 0.385], [0.683, 0.466]],
  [4000, [0.683, 0.466], [0.193, 0.618]],
  [40000, [0.193, 0.618], [0.027, 0.805]]
] as const)('Hilpert at Re %d', (edge, below, above) => {
  const byRow = ([c, m]: readonly [number, number], reynoldsRatio: number) => c * reynoldsRatio ** m * Math.cbrt(0.7)
  it('takes the row below at it, and the row above beyond it', () => {
    for (const [row, reynoldsRatio] of [
      [below, edge],
      [above, edge * 1.005]
    ] as const)
      expect(hilpertRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toBeCloseTo(byRow(row, reynoldsRatio), 9)
  })
})

describe('a plate near Re 500000', () => {
  it.each([4.98e5, 5e5])('is laminar at %d: 0.664·Re^0.5·Pr^(1/3)', reynoldsRatio => {
    expect(plateRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toBeCloseTo(0.664 * Math.sqrt(reynoldsRatio) * Math.cbrt(0.7), 9)
  })
  it('is turbulent behind at 502000: (0.037·Re^0.8 - 871)·Pr^(1/3)', () => {
    expect(plateRatio({ reynoldsRatio: 5.02e5, prandtlRatio: 0.7 })).toBeCloseTo((0.037 * 5.02e5 ** 0.8 - 871) * Math.cbrt(0.7), 9)
  })
})

describe('ranges', () => {
  it.each([0.29, 1.001e7])('Churchill and Bernstein refuse Re %d', reynoldsRatio => {
    expect(() => cylinderNusseltRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toThrow(OutsideRange)
  })
  it.each([0.3, 1e7])('and answer at Re %d', reynoldsRatio => {
    expect(cylinderNusseltRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toBeGreaterThan(0)
  })
  it.each([0.39, 400001])('Hilpert refuses Re %d', reynoldsRatio => {
    expect(() => hilpertRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toThrow(OutsideRange)
  })
  it.each([99, 1.01e8])('a plate refuses Re %d', reynoldsRatio => {
    expect(() => plateRatio({ reynoldsRatio, prandtlRatio: 0.7 })).toThrow(OutsideRange)
  })
  it.each([0.67, 0.76])('air has a Prandtl number up to %d', prandtlRatio => {
    expect(cylinderNusseltRatio({ reynoldsRatio: 1000, prandtlRatio })).toBeGreaterThan(0)
  })
  it.each([0.669, 0.761])('no air has a Prandtl number of %d', prandtlRatio => {
    expect(() => cylinderNusseltRatio({ reynoldsRatio: 1000, prandtlRatio })).toThrow(OutsideRange)
  })
  it('nothing but air: water has a Prandtl number of 7', () => {
    expect(() => cylinderNusseltRatio({ reynoldsRatio: 1000, prandtlRatio: 7 })).toThrow(OutsideRange)
  })
})
