// table: basic diameters of ISO 724 and ISO 68-1. Tolerance: half the last digit printed.
import { describe, expect, it } from 'vitest'
import { minorDiameterMm, pitchDiameterMm, rootDiameterMm, triangleHeightMm } from '../../src/trade/thread/basic.ts'
import { ISO_BASIC } from './rows/iso-basic.ts'

const ROUNDING = 1e-9

describe.each(['published', 'computed'])('%s', kind => {
  it.each(ISO_BASIC.filter(row => row.kind === kind))('$thread [$source, $label]', ({ majorMm, pitchMm, ...row }) => {
    const height = triangleHeightMm({ pitchMm })
    const basis = { majorMm, triangleHeightMm: height }
    expect(Math.abs(height - row.triangleHeightMm)).toBeLessThanOrEqual(0.0000005 + ROUNDING)
    expect(Math.abs(pitchDiameterMm(basis) - row.pitchDiameterMm)).toBeLessThanOrEqual(0.0005 + ROUNDING)
    expect(Math.abs(minorDiameterMm(basis) - row.minorDiameterMm)).toBeLessThanOrEqual(0.0005 + ROUNDING)
    expect(Math.abs(rootDiameterMm(basis) - row.rootDiameterMm)).toBeLessThanOrEqual(0.0005 + ROUNDING)
  })
})

it('checks every row', () => {
  expect(
    ISO_BASIC.map(row => row.kind)
      .toSorted()
      .join()
  ).toMatch(/^(computed,){50}(published,?){15}$/)
})
