// table: invented pairs, worked by hand; property: telling apart
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candidates as known } from '../../../src/trade/thread/identify-candidates.ts'
import { tellApart } from '../../../src/trade/thread/identify-tell.ts'
import { invented } from './invented-candidate.ts'

const A = invented('A', [10, 1.5], [9.7, 9.9], [8.4, 8.7])
const tell = (second: typeof A, first = A) => tellApart({ first, second, side: 'external' })

describe('two screws', () => {
  it('0.8 mm apart and of one pitch: the diameter, with any instrument', () => {
    expect(tell(invented('B', [9, 1.5], [8.7, 8.9]))).toMatchObject({
      ...{ first: 'A', second: 'B', by: 'diameter', overCount: 6, pitchGapMm: 0 },
      says: 'the major diameter splits them: A 9.70 to 9.90 mm, B 8.70 to 8.90 mm'
    })
  })

  // 13 caliper readings apart, and 1.5 of a rule over six threads.
  it('0.8 mm apart, drifting 0.3 mm: the diameter, as the clearer of the two', () => {
    const { by, pitchGapMm } = tell(invented('B', [9, 1.45], [8.7, 8.9]))
    expect(by).toBe('diameter')
    expect(pitchGapMm).toBeCloseTo(0.3, 9)
  })

  // Just over what a caliper tells, and five of a rule.
  it('0.07 mm apart, drifting 1.2 mm: the pitch', () => {
    expect(tell(invented('B', [9.6, 1.3], [9.5, 9.63]))).toMatchObject({
      ...{ by: 'pitch', overCount: 6 },
      says: 'the pitch splits them: 6 threads of A are 9.0 mm long, of B are 7.8 mm long'
    })
  })

  it.each([
    ['0.3 mm: the pitch, before a micrometer', 1.45, 'pitch'],
    ['0.201 mm: the same, just over what a rule tells', 1.4665, 'pitch'],
    ['0.199 mm: the diameter', 1.46684, 'diameter']
  ])('0.05 mm apart, drifting %s', (_, pitchMm, by) => {
    expect(tell(invented('B', [9.6, pitchMm], [9.5, 9.65])).by).toBe(by)
  })

  it.each([
    ['0.0201 mm: just over two readings of a micrometer', 9.6799, 'diameter'],
    ['0.0199 mm: neither', 9.6801, 'neither']
  ])('of one pitch, apart by %s', (_, maxMm, by) => {
    expect(tell(invented('B', [9.6, 1.5], [9.5, maxMm])).by).toBe(by)
  })

  // 5.05 readings of a caliper against 5.025 and 5.075 of a rule.
  it.each([
    ['1.005 mm: the diameter is the clearer', 1.3325, 'diameter'],
    ['1.015 mm: the pitch', 1.33083, 'pitch']
  ])('0.303 mm apart, drifting %s', (_, pitchMm, by) => {
    expect(tell(invented('B', [9.6, pitchMm], [9.3, 9.397])).by).toBe(by)
  })

  it.each([
    ['0.0597 mm', 9.6403, true],
    ['0.0603 mm', 9.6397, false]
  ])('a caliper tells two readings of it: %s apart', (_, maxMm, fine) => {
    expect(tell(invented('B', [9.6, 1.5], [9.5, maxMm])).says.endsWith('only 0.060 mm apart, so with a micrometer')).toBe(fine)
  })

  it('0.05 mm apart and of one pitch: the diameter, with a micrometer', () => {
    expect(tell(invented('B', [9.6, 1.5], [9.5, 9.65])).says).toBe(
      'the major diameter splits them: A 9.70 to 9.90 mm, B 9.50 to 9.65 mm: only 0.050 mm apart, so with a micrometer'
    )
  })

  it('0.015 mm apart, drifting 0.12 mm: neither', () => {
    expect(tell(invented('B', [9.6, 1.48], [9.5, 9.685]))).toMatchObject({
      by: 'neither',
      says: 'neither caliper nor rule splits them: A 9.70 to 9.90 mm, B 9.50 to 9.69 mm, and 6 threads drift only 0.12 mm apart; try a thread gauge or a part known to be right, by hand'
    })
  })

  it('0.015 mm apart and of one pitch: neither', () => {
    expect(tell(invented('B', [9.6, 1.5], [9.5, 9.685])).by).toBe('neither')
  })

  it('inside one another: the gap is as far as they overlap, negative', () => {
    expect(tell(invented('B', [10, 1.5], [9.75, 9.8])).diameterGapMm).toBeCloseTo(-0.1, 9)
  })
})

it('two holes are told apart by the minor diameter', () => {
  const second = invented('B', [10, 1.25], [9.7, 9.9], [8.75, 8.95])
  expect(tellApart({ first: A, second, side: 'internal' }).diameterGapMm).toBeCloseTo(0.05, 9)
  const clear = { ...second, pitchMm: 1.5, crest: { ...second.crest, internal: { minMm: 9, maxMm: 9.2 } } }
  expect(tellApart({ first: A, second: clear, side: 'internal' }).says).toBe(
    'the minor diameter splits them: A 8.40 to 8.70 mm, B 9.00 to 9.20 mm'
  )
})

// As many as stand on a length of one diameter: 10/1.5 is 6 and a bit, 20/1.25 is 16.
it('no more than ten threads are counted', () => {
  const fine = invented('F', [20, 1.25], [19.7, 19.9])
  expect(tell(invented('G', [20, 1], [19.7, 19.9]), fine).overCount).toBe(10)
  expect(tell(fine).overCount).toBe(6)
})

it('six threads of a sixteenth are 3/8 inch', () => {
  const [first, second] = [invented('C', [9.525, 25.4 / 16], [9.2, 9.5]), invented('D', [10, 1.25], [9.7, 9.9])]
  expect(tell(second, first).overCount).toBe(6)
})

it('telling apart is the same from either side', () => {
  const all = fc.constantFrom(...known())
  fc.assert(
    fc.property(all, all, fc.constantFrom('external', 'internal'), (first, second, side) => {
      const [ab, ba] = [tellApart({ first, second, side }), tellApart({ first: second, second: first, side })]
      expect({ by: ab.by, gap: ab.diameterGapMm, drift: ab.pitchGapMm }).toEqual({ by: ba.by, gap: ba.diameterGapMm, drift: ba.pitchGapMm })
    })
  )
})
