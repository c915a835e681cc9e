// table: invented threads, worked by hand; property: laws of the fit
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candidates as known } from '../../../src/trade/thread/identify-candidates.ts'
import type { Side } from '../../../src/trade/thread/identify-crest.ts'
import { fitOf } from '../../../src/trade/thread/identify-fit.ts'
import { invented } from './invented-candidate.ts'

const ALL = known()

// Screw 9.7 to 9.9 mm, hole 8.4 to 8.7, pitch 1.5: worn crests explain 0.15 mm more than the caliper's 0.03, inward on a screw, outward in a hole.
const THREAD = { ...invented('T', [10, 1.5], [9.7, 9.9], [8.4, 8.7]), minorMm: 8.38 }
const ROWS: readonly (readonly [Side, measuredMm: number, offMm: number, verdict: string, misfit: number])[] = [
  ['external', 9.8, 0, 'fits', 0],
  ['external', 9.97, 0, 'fits', 0],
  ['external', 9.68, -0.02, 'fits', 0.02 / 0.18],
  ['external', 9.64, -0.06, 'fits if worn', 0.06 / 0.18],
  ['external', 9.5, -0.2, 'does not fit', 0.2 / 0.18],
  ['external', 10.005, 0.005, 'fits', 0.005 / 0.03],
  ['external', 10.02, 0.02, 'fits', 0.02 / 0.03],
  ['external', 10.06, 0.06, 'does not fit', 2],
  ['internal', 8.5, 0, 'fits', 0],
  ['internal', 8.39, 0, 'fits', 0],
  ['internal', 8.72, 0.02, 'fits', 0.02 / 0.18],
  ['internal', 8.76, 0.06, 'fits if worn', 0.06 / 0.18],
  ['internal', 8.9, 0.2, 'does not fit', 0.2 / 0.18],
  ['internal', 8.375, -0.005, 'fits', 0.005 / 0.03],
  ['internal', 8.36, -0.02, 'fits', 0.02 / 0.03],
  ['internal', 8.32, -0.06, 'does not fit', 2]
]

it.each(ROWS)('%s, %d mm: %d mm off, %s', (side, measuredMm, offMm, verdict, misfit) => {
  const fit = fitOf(THREAD, { measuredMm, side })
  expect(fit).toMatchObject({ verdict, pitchOffMm: null, candidate: THREAD, band: THREAD.crest[side] })
  expect(fit.offMm).toBeCloseTo(offMm, 9)
  expect(fit.misfitFactor).toBeCloseTo(misfit, 9)
})

describe('a pitch that was counted', () => {
  it.each([
    [1.5, 0, 'fits', 0],
    [1.52, 0.02, 'fits', 2 / 3],
    [1.48, -0.02, 'fits', 2 / 3],
    [1.56, 0.06, 'does not fit', 2]
  ])('%d mm: %d mm off, %s', (pitchMm, offMm, verdict, misfit) => {
    const fit = fitOf(THREAD, { measuredMm: 9.8, side: 'external', pitchMm })
    expect(fit.verdict).toBe(verdict)
    expect(fit.pitchOffMm).toBeCloseTo(offMm, 9)
    expect(fit.misfitFactor).toBeCloseTo(misfit, 9)
  })

  it('adds to what is off in diameter as the sides of a right angle do', () => {
    // A third by diameter, two thirds by pitch.
    const { misfitFactor } = fitOf(THREAD, { measuredMm: 9.64, side: 'external', pitchMm: 1.52 })
    expect(misfitFactor).toBeCloseTo(Math.sqrt(5) / 3, 9)
  })
})

it('takes the errors of the instruments that were used', () => {
  const measured = { measuredMm: 10.04, side: 'external', pitchMm: 1.54 } as const
  expect(fitOf(THREAD, measured).verdict).toBe('does not fit')
  expect(fitOf(THREAD, { ...measured, errorMm: 0.05, pitchErrorMm: 0.05 })).toMatchObject({ verdict: 'fits' })
})

it('a worse reading never fits better', () => {
  const thread = ALL.find(({ name }) => name === 'M10x1.25')!
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (off, more) => {
      const misfit = (beyondMm: number) => fitOf(thread, { measuredMm: thread.majorMm + beyondMm, side: 'external' }).misfitFactor
      expect(misfit(off + more)).toBeGreaterThanOrEqual(misfit(off))
    })
  )
})

it('a rougher instrument never rules out what a better one lets pass', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...ALL),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: 0.005, max: 0.1, noNaN: true }),
      (thread, off, errorMm) => {
        const fits = (error: number) =>
          fitOf(thread, { measuredMm: thread.majorMm + off, side: 'external', errorMm: error }).verdict === 'fits'
        if (fits(errorMm)) expect(fits(2 * errorMm)).toBe(true)
      }
    )
  )
})
