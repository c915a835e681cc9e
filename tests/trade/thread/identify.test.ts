// property: laws of identification; table: invented threads, worked by hand; example: words
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { type Found, identify } from '../../../src/trade/thread/identify.ts'
import { candidates as known } from '../../../src/trade/thread/identify-candidates.ts'
import type { Candidate, Side } from '../../../src/trade/thread/identify-crest.ts'
import { invented } from './invented-candidate.ts'

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

// A caliper reads 9.95 mm on a screw; what fits must be within 0.03 mm of the band up to the basic diameter.
describe('of several that fit', () => {
  const all = [
    invented('too large by 0.08', [9.87, 1], [9.7, 9.8]),
    invented('too large by 0.05', [9.9, 1], [9.7, 9.8]),
    invented('worn by 0.05', [10.2, 1], [10, 10.1]),
    invented('too large by 0.025', [9.925, 1], [9.7, 9.8]),
    invented('0.05 from basic', [10, 1], [9.7, 9.9]),
    invented('0.01 from basic', [9.96, 1], [9.7, 9.9]),
    invented('0.01 from basic, coarser', [9.96, 1.25], [9.7, 9.9])
  ]
  const result = () => identify({ measuredMm: 9.95, side: 'external', candidates: all })
  const names = ['0.01 from basic, coarser', '0.01 from basic', '0.05 from basic', 'too large by 0.025', 'worn by 0.05']

  it('the sound before the worn, then the nearest, then the coarser; what is far off has no line', () => {
    expect(result()).toMatchObject({ ranked: [...names, 'too large by 0.05'].map(name => ({ candidate: { name } })) })
  })

  it('the best is told apart from each other that fits', () => {
    expect(result()).toMatchObject({ tells: names.slice(1).map(second => ({ first: names[0], second })) })
  })

  // Twice what a caliper explains is 0.06 mm.
  it('what is off by more than twice the errors has no line', () => {
    const off = (measuredMm: number) => identify({ measuredMm, side: 'external', candidates: [all[1]!, all[4]!] })
    expect(off(9.9597)).toMatchObject({ ranked: [{ verdict: 'fits' }, { verdict: 'does not fit' }] })
    expect(off(9.9603)).toMatchObject({ ranked: [{ verdict: 'fits' }] })
  })

  it('in a hole the nearer is by the minor diameter', () => {
    const holes = [invented('8.3', [9, 1.25], [9, 9.1], [8.3, 8.6]), invented('8.4', [10.5, 1.25], [9, 9.1], [8.4, 8.7])]
    const found = identify({ measuredMm: 8.5, side: 'internal', candidates: holes })
    expect(found).toMatchObject({ ranked: [{ candidate: { name: '8.4' } }, { candidate: { name: '8.3' } }] })
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

  // G 1/8 ends at 9.728 mm, R 1/8 at its large end at 9.884.
  it('a plug found parallel is warned of no tapered pipe thread, and one not measured is: R 1/8 is as large somewhere', () => {
    const found = { measuredMm: 9.8, side: 'external', candidates: ALL } as const
    expect(identify({ ...found, taperRatio: 0 })).toMatchObject({ pipes: [], parallelPipes: [], cautions: [] })
    expect(identify(found)).toMatchObject({ pipes: [{ thread: { name: 'R 1/8 (ISO 7)' } }], cautions: [expect.anything()] })
  })

  // G 1/8: 9.514 to 9.728 mm over the crests, 28 to the inch, 0.907 mm (ISO 228-1, memory); no metric thread has that pitch.
  it('a pipe thread found parallel is named as the parallel one', () => {
    const found = { measuredMm: 9.65, side: 'external', pitchMm: 0.907, candidates: ALL } as const
    const best = { candidate: { name: 'G 1/8 (ISO 228-1)' }, verdict: 'fits' }
    const told = expect.stringMatching(
      /^G 1\/8 \(ISO 228-1\), a parallel pipe thread, measures so \(.*28 threads.*55°.*it takes a part with/
    )
    expect(identify({ ...found, taperRatio: 1 / 1000 })).toMatchObject({ ranked: [best], cautions: [told] })
    const tapered = expect.stringMatching(/^R 1\/8 \(ISO 7\) measures the same/)
    expect(identify(found)).toMatchObject({ ranked: [best], cautions: [tapered, told] })
    expect(identify({ ...found, measuredMm: 9.45 })).toMatchObject({ ranked: [{ ...best, verdict: 'fits if worn' }] })
  })

  // Both lie inside G 1/8 (ISO 228-1, memory).
  it('it is as much the answer at 9.68 mm as at 9.6', () => {
    const names = (measuredMm: number) => ranked({ measuredMm, side: 'external', pitchMm: 25.4 / 28 })[0]!.candidate.name
    expect([9.6, 9.68].map(names)).toEqual(['G 1/8 (ISO 228-1)', 'G 1/8 (ISO 228-1)'])
  })

  // M27x3 begins at 26.577 mm (ISO 965-1, 6g, memory), G 3/4 at 26.157 (ISO 228-1, memory).
  it('a pipe thread that fits stands before a metric one that fits as worn', () => {
    const result = ranked({ measuredMm: 26.3, side: 'external' })
    expect(result[0]).toMatchObject({ candidate: { name: 'G 3/4 (ISO 228-1)' }, verdict: 'fits' })
    expect(result).toContainEqual(
      expect.objectContaining({ candidate: expect.objectContaining({ name: 'M27x3' }), verdict: 'fits if worn' })
    )
  })

  it('a size that no pipe thread has is refused without naming one', () => {
    const result = identify({ ...plug, measuredMm: 11.5, taperRatio: 1 / 16 })
    expect(result).toMatchObject({ pipes: [], says: expect.stringMatching(/^the thread tapers 1:16: a tapered pipe thread; it wedges/) })
  })

  it.each([0, 1 / 200, -1 / 100, 1 / 50])('%d is wear or the error of measuring', taperRatio => {
    expect(identify({ ...plug, taperRatio }).kind).toBe('parallel')
  })
})

it('nothing near is no answer, in words', () => {
  expect(() => identify({ measuredMm: 120, side: 'external', candidates: ALL })).toThrow(
    /no thread of the series has major diameter 120 mm; the nearest is/
  )
  expect(() => identify({ measuredMm: 11.5, side: 'internal', pitchMm: 3, candidates: [] })).toThrow(
    /no thread of the series has minor diameter 11.5 mm and pitch 3 mm$/
  )
})

// By hand: 10.206 and 0.9407 rounded; 1/0.06 = 16.67.
it('tells a diameter to a hundredth of a millimetre, a pitch to a thousandth, a taper to three digits', () => {
  expect(() => identify({ measuredMm: 10.206, side: 'external', pitchMm: 0.9407, candidates: ALL })).toThrow(
    'has major diameter 10.21 mm and pitch 0.941 mm'
  )
  expect(identify({ measuredMm: 10.206, side: 'external', taperRatio: 0.06, candidates: ALL })).toMatchObject({
    says: expect.stringContaining('tapers 1:16.7:')
  })
})
