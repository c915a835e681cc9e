// property: laws of the limits of size of unified threads
import { describe, expect, it } from 'vitest'
import { withWorking } from '../../../src/formula/working.ts'
import { basicSizes } from '../../../src/trade/thread/basic.ts'
import type { ExternalClass, InternalClass } from '../../../src/trade/thread/unified-class.ts'
import { unifiedLimits } from '../../../src/trade/thread/unified-limits.ts'
import { type UnifiedThread, unifiedThreads } from '../../../src/trade/thread/unified-series.ts'

const INTERNAL: readonly InternalClass[] = ['1B', '2B', '3B']
const EXTERNAL: readonly ExternalClass[] = ['1A', '2A', '3A']
/** Rounding to 0.001 inch, which the standard does to some minor diameters only. */
const ROUNDED_MM = 0.0005 * 25.4 + 1e-9

function limits(thread: UnifiedThread, internal: InternalClass, external: ExternalClass) {
  const named = <Name extends string>(name: Name) => ({ name, assumed: null })
  return unifiedLimits({
    thread,
    basics: basicSizes(thread),
    toleranceClass: { system: 'unified', internal: named(internal), external: named(external) }
  })
}

describe.each(unifiedThreads())('$name', thread => {
  const loose = () => limits(thread, '1B', '1A')
  const usual = () => limits(thread, '2B', '2A')
  const close = () => limits(thread, '3B', '3A')

  it('least lies below greatest in every class', () => {
    for (const { internal, external } of [loose(), usual(), close()]) {
      for (const { minMm, maxMm } of [internal.minor, internal.pitchDiameter, external.major, external.pitchDiameter]) {
        expect(minMm).toBeLessThan(maxMm)
      }
    }
  })

  it('class 3 lies inside class 2, class 2 inside class 1', () => {
    for (const [inner, outer] of [
      [close(), usual()],
      [usual(), loose()]
    ] as const) {
      expect(inner.internal.pitchDiameter.minMm).toBe(outer.internal.pitchDiameter.minMm)
      expect(inner.internal.pitchDiameter.maxMm).toBeLessThan(outer.internal.pitchDiameter.maxMm)
      expect(inner.internal.minor.minMm).toBe(outer.internal.minor.minMm)
      expect(inner.internal.minor.maxMm).toBeLessThanOrEqual(outer.internal.minor.maxMm + ROUNDED_MM)
      expect(inner.external.pitchDiameter.minMm).toBeGreaterThan(outer.external.pitchDiameter.minMm)
      expect(inner.external.major.minMm).toBeGreaterThanOrEqual(outer.external.major.minMm)
    }
  })

  it('every screw goes into every hole', () => {
    for (const internal of INTERNAL) {
      for (const external of EXTERNAL) {
        const fit = limits(thread, internal, external)
        expect(fit.external.pitchDiameter.maxMm).toBeLessThanOrEqual(fit.internal.pitchDiameter.minMm)
        expect(fit.external.major.maxMm).toBeLessThanOrEqual(fit.internal.major.minMm + 1e-9)
      }
    }
  })

  it('starts from the basic profile', () => {
    const { majorMm } = thread
    const { pitchDiameterMm, minorDiameterMm } = basicSizes(thread)
    expect(Math.abs(close().external.major.maxMm - majorMm)).toBeLessThan(1e-9)
    expect(Math.abs(usual().internal.pitchDiameter.minMm - pitchDiameterMm)).toBeLessThanOrEqual(0.00005 * 25.4 + 1e-9)
    expect(Math.abs(usual().internal.minor.minMm - minorDiameterMm)).toBeLessThanOrEqual(0.00055 * 25.4)
  })

  it('is printed in whole 0.0001 inch', () => {
    for (const { internal, external } of [loose(), usual(), close()]) {
      for (const { minMm, maxMm } of [internal.minor, internal.pitchDiameter, external.major, external.pitchDiameter]) {
        for (const mm of [minMm, maxMm]) expect(Math.abs((mm / 25.4) * 1e4 - Math.round((mm / 25.4) * 1e4))).toBeLessThan(1e-6)
      }
    }
  })
})

it('shows its working: every limit, its rounded terms and the standard', () => {
  const thread = unifiedThreads().find(({ name }) => name === '3/8-24 UNF')!
  const { working } = withWorking(() => limits(thread, '2B', '2A'))
  const shown = working.filter(line => / least$| greatest$/.test(line.says))
  expect(shown.map(({ symbol }) => symbol).sort()).toEqual(['D max', 'D min', 'E max', 'E max', 'E min', 'E min', 'K max', 'K min'])
  for (const line of shown) expect(line).toMatchObject({ unit: 'mm', source: 'asme-b1.1', putIn: expect.stringMatching(/0\.\d{4} in$/) })
})

// 3/8-24: allowance 0.0011, major tolerance 0.0072 (ASME B1.1, read-secondary); class 3A has no allowance.
it.each([
  ['2A', ['D - 0.0011 in - 0.0072 in, each term rounded: 0.3667 in', 'D - 0.0011 in, each term rounded: 0.3739 in']],
  ['3A', ['D - 0.0072 in, each term rounded: 0.3678 in', 'D, each term rounded: 0.3750 in']]
] as const)('an allowance stands in the working where there is one: %s', (external, putIn) => {
  const thread = unifiedThreads().find(({ name }) => name === '3/8-24 UNF')!
  const { working } = withWorking(() => limits(thread, '2B', external))
  expect(working.filter(line => line.says.startsWith(`major diameter, ${external}`)).map(line => line.putIn)).toEqual(putIn)
})

// ASME B1.1: from 1/4 inch up by pitch alone; below, by size between its limits.
it.each([
  ['1/4-20 UNC', 1],
  ['3/8-24 UNF', 1],
  ['#10-32 UNF', 3]
])('the minor diameter tolerance 2B of %s takes %d formulas', (name, count) => {
  const thread = unifiedThreads().find(each => each.name === name)!
  const { working } = withWorking(() => limits(thread, '2B', '2A'))
  expect(working.filter(({ symbol }) => symbol === 'TK')).toHaveLength(count)
})

// ASME B1.1 (read-secondary) reckons the extra fine series with an engagement of nine pitches. By hand, in 0.0001 inch, class 2A:
// 1/2-28: 11.9055 + 8.5042 + 16.2674 = 36.6771, of which 3A has 0.75: 27.51, rounded 28. 1/4-32: 9.4494 + 7.9550 + 14.8819 = 32.2862, 3B has 0.975: 31.48, rounded 31.
it('the extra fine series is reckoned with nine pitches', () => {
  const of = (name: string) => limits(unifiedThreads().find(thread => thread.name === name)!, '3B', '3A')
  const widthIn = ({ minMm, maxMm }: { readonly minMm: number; readonly maxMm: number }) => (maxMm - minMm) / 25.4
  expect(widthIn(of('1/2-28 UNEF').external.pitchDiameter)).toBeCloseTo(0.0028, 9)
  expect(widthIn(of('1/4-32 UNEF').internal.pitchDiameter)).toBeCloseTo(0.0031, 9)
})
