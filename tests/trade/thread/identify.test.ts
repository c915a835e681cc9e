// property: laws of identification; example: words
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { type Found, identify } from '../../../src/trade/thread/identify.ts'
import { candidates as known } from '../../../src/trade/thread/identify-candidates.ts'
import type { Candidate, Side } from '../../../src/trade/thread/identify-crest.ts'
import { fitOf } from '../../../src/trade/thread/identify-fit.ts'
import { tellApart } from '../../../src/trade/thread/identify-tell.ts'

const ALL = known()
const SIDES: readonly Side[] = ['external', 'internal']
const basicMm = ({ majorMm, minorMm }: Candidate, side: Side) => (side === 'external' ? majorMm : minorMm)

function ranked(found: Omit<Found, 'candidates'>, candidates = ALL) {
  const result = identify({ ...found, candidates })
  if (result.kind !== 'parallel') throw new Error('tapered')
  return result.ranked
}

describe.each(ALL)('$name', thread => {
  it.each(SIDES)('by its own basic dimensions ranks first, %s', side => {
    const [best] = ranked({ measuredMm: basicMm(thread, side), side, pitchMm: thread.pitchMm })
    expect(best).toMatchObject({ candidate: { name: thread.name }, verdict: 'fits', offMm: 0 })
  })

  it.each(SIDES)('without a pitch is among those that fit best, %s', side => {
    const all = ranked({ measuredMm: basicMm(thread, side), side })
    const own = all.find(({ candidate }) => candidate.name === thread.name)
    expect(own).toMatchObject({ verdict: 'fits', misfitFactor: 0 })
    expect(all[0]!.misfitFactor).toBe(0)
  })
})

const measured = fc.record({
  measuredMm: fc.double({ min: 1.2, max: 40, noNaN: true }),
  side: fc.constantFrom(...SIDES),
  pitchMm: fc.option(fc.double({ min: 0.15, max: 5, noNaN: true }), { nil: undefined }),
  taperRatio: fc.option(fc.double({ min: 0, max: 0.2, noNaN: true }), { nil: undefined })
})

it('says something whole whatever was measured', () => {
  fc.assert(
    fc.property(measured, found => {
      try {
        const result = identify({ ...found, candidates: ALL })
        if (result.kind === 'parallel') expect(result.ranked.length).toBeGreaterThan(0)
        expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined/)
      } catch (error) {
        expect(error).toBeInstanceOf(NoAnswer)
        expect((error as NoAnswer).says).not.toMatch(/NaN|Infinity|undefined/)
      }
    })
  )
})

it('the order of the candidates does not matter', () => {
  fc.assert(
    fc.property(measured, fc.shuffledSubarray([...ALL], { minLength: ALL.length }), (found, shuffled) => {
      const first = (candidates: readonly Candidate[]) => {
        try {
          return ranked({ ...found, taperRatio: undefined }, candidates)[0]!.candidate.name
        } catch {
          return null
        }
      }
      expect(first(shuffled)).toBe(first(ALL))
    })
  )
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

it('telling apart is the same from either side', () => {
  fc.assert(
    fc.property(fc.constantFrom(...ALL), fc.constantFrom(...ALL), fc.constantFrom(...SIDES), (first, second, side) => {
      const [ab, ba] = [tellApart({ first, second, side }), tellApart({ first: second, second: first, side })]
      expect({ by: ab.by, gap: ab.diameterGapMm, drift: ab.pitchGapMm }).toEqual({ by: ba.by, gap: ba.diameterGapMm, drift: ba.pitchGapMm })
    })
  )
})

describe('a bolt of 9.4 mm', () => {
  it('with 16 threads to the inch is 3/8-16', () => {
    expect(ranked({ measuredMm: 9.4, side: 'external', pitchMm: 1.58 })[0]!.candidate.name).toBe('3/8-16 UNC')
  })

  it('with a pitch of 1.5 it is M10x1.5 at best as a worn thread, and says so', () => {
    const result = identify({ measuredMm: 9.62, side: 'external', pitchMm: 1.5, candidates: ALL })
    expect(result).toMatchObject({
      kind: 'parallel',
      ranked: [{ candidate: { name: 'M10x1.5' }, verdict: 'fits if worn' }],
      cautions: [expect.stringMatching(/M10x1.5 fits only as a worn thread/)]
    })
  })
})

describe('taper', () => {
  const plug = { measuredMm: 10, side: 'external', pitchMm: 1.5, candidates: ALL } as const

  it.each([
    [1 / 16, /tapers 1:16: a tapered pipe thread/],
    [-1 / 16, /tapers 1:16: a tapered pipe thread/],
    [1 / 18, /tapers 1:18: a tapered pipe thread/],
    [1 / 30, /tapers 1:30: no parallel thread, and not the 1:16/],
    [1 / 5, /tapers 1:5: no parallel thread/]
  ])('%d is refused as parallel', (taperRatio, says) => {
    expect(identify({ ...plug, taperRatio })).toMatchObject({
      kind: 'tapered',
      says: expect.stringMatching(says),
      change: expect.stringMatching(/adapter/)
    })
  })

  it.each([0, 1 / 200, -1 / 100, 1 / 50])('%d is wear or the error of measuring', taperRatio => {
    expect(identify({ ...plug, taperRatio }).kind).toBe('parallel')
  })
})

it('nothing near is no answer, in words', () => {
  expect(() => identify({ measuredMm: 120, side: 'external', candidates: ALL })).toThrow(
    /no thread of the series has major diameter 120 mm; the nearest is/
  )
  expect(() => identify({ measuredMm: 10, side: 'internal', candidates: [] })).toThrow(/no thread of the series has minor diameter 10 mm$/)
})
