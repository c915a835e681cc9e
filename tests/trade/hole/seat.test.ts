// property: laws of a seat, and its bounds against brute force
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, plainOf } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { type Seat, seat } from '../../../src/trade/hole/seat.ts'
import { leavesOf } from '../../formula/leaf-paths.ts'
import { about, atCorners, numberAt, terminal } from './invented.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const loose = (min: number, max: number, off: number) => fc.tuple(between(min, max), between(0, off)).map(([value, by]) => about(value, by))

const seats: fc.Arbitrary<Seat> = fc.record<Seat>({
  pitchMm: fc.constantFrom(about(1), about(1.5)),
  threadLengthMm: loose(10, 16, 0.4),
  threadDepthMm: loose(9, 16, 0.4),
  stack: fc.array(
    loose(0.3, 2, 0.1).map(thicknessMm => ({ thicknessMm })),
    { maxLength: 2 }
  ),
  crushMm: loose(0.05, 0.2, 0.05),
  floor: fc.option(fc.record({ overallMm: loose(11, 18, 0.4), floorDepthMm: loose(11, 18, 0.4) })),
  mouthMm: loose(0.1, 1.5, 0.1),
  undercutMm: fc.option(loose(0.5, 6, 0.2)),
  // M12x1.5 drilled 10.5 mm: D1 = 10.376 mm. Some necks go between the threads at one end of their bounds.
  rim: fc.option(
    fc.record({
      neckMm: loose(10.4, 12, 0.15),
      undercutMm: loose(0.5, 6, 0.2),
      clearMm: fc.constant(about(10.5)),
      minorMm: fc.constant(about(10.376))
    })
  ),
  needMm: fc.option(between(5, 12).map(mm => about(mm))),
  clocking: fc.constant(null)
})

/** The least of the gaps with the stack. */
type Stop = { readonly withStackMm: number } | null
const leastMm = ({ runOut, floor, rim }: { readonly runOut: Stop; readonly floor: Stop; readonly rim: Stop }) =>
  Math.min(...[runOut, floor, rim].map(stop => stop?.withStackMm ?? Number.POSITIVE_INFINITY))

describe('the seat', () => {
  it('every worst end is the end over all corners', () => {
    fc.assert(
      fc.property(seats, tree => {
        const bounds = boundsOf(tree, seat)
        const corners = atCorners(tree, seat)
        for (const { path } of leavesOf(corners[0])) {
          const values = corners.map(results => numberAt(results, path) as number)
          const { low, high } = numberAt(bounds, path) as { low: number; high: number }
          expect([path, low]).toEqual([path, expect.closeTo(Math.min(...values), 9)])
          expect([path, high]).toEqual([path, expect.closeTo(Math.max(...values), 9)])
        }
      }),
      { numRuns: 40 }
    )
  })

  it('the worst case holds the root sum of squares', () => {
    fc.assert(
      fc.property(seats, tree => {
        // The least stack is the greater of two and so not linear.
        const { runOut, shoulderTurns } = boundsOf(tree, seat)
        for (const { low, high, rss } of [runOut.withStackMm, runOut.withoutStackMm, shoulderTurns]) {
          expect(rss[0]).toBeGreaterThanOrEqual(low - 1e-9)
          expect(rss[1]).toBeLessThanOrEqual(high + 1e-9)
        }
      }),
      { numRuns: 30 }
    )
  })

  it('more stack never lowers a gap, and moves nothing without stack', () => {
    fc.assert(
      fc.property(seats, between(0.01, 5), (tree, thickMm) => {
        const before = seat(plainOf(tree).plain)
        const after = seat(plainOf({ ...tree, stack: [...tree.stack, { thicknessMm: about(thickMm) }] }).plain)
        expect(after.runOut.withStackMm).toBeGreaterThan(before.runOut.withStackMm)
        expect(after.runOut.withoutStackMm).toBe(before.runOut.withoutStackMm)
        if (before.floor !== null) expect(after.floor!.withStackMm).toBeGreaterThan(before.floor.withStackMm)
        expect(after.floor?.withoutStackMm).toBe(before.floor?.withoutStackMm)
        expect(after.shoulderTurns).toBeLessThan(before.shoulderTurns)
        expect(after.leastStackMm).toBe(before.leastStackMm)
      })
    )
  })

  it('with the least stack the least gap is nought', () => {
    fc.assert(
      fc.property(seats, tree => {
        const { leastStackMm } = seat(plainOf(tree).plain)
        fc.pre(leastStackMm >= 0 && leastStackMm <= 50)
        expect(leastMm(seat(plainOf({ ...tree, stack: [{ thicknessMm: about(leastStackMm) }] }).plain))).toBeCloseTo(0, 9)
      })
    )
  })

  it('the high end of the least stack works with every other input at its worst', () => {
    fc.assert(
      fc.property(seats, tree => {
        const { high } = boundsOf(tree, seat).leastStackMm
        fc.pre(high >= 0 && high <= 50)
        const corners = atCorners({ ...tree, stack: [{ thicknessMm: about(high) }] }, seat)
        expect(Math.min(...corners.map(leastMm))).toBeCloseTo(0, 9)
      })
    )
  })
})

// Invented: 13.4 mm of thread and 15.0 overall over 0.8 + 1.2 of stack that crushes by 0.05, in 12.0 of thread and 12.9 to the floor, pitch 1.5.
describe('a part that the floor would stop', () => {
  const given: Seat = {
    pitchMm: about(1.5),
    threadLengthMm: about(13.4),
    threadDepthMm: about(12),
    stack: [{ thicknessMm: about(0.8) }, { thicknessMm: about(1.2) }],
    crushMm: about(0.05),
    floor: { overallMm: about(15), floorDepthMm: about(12.9) },
    mouthMm: about(0.8),
    undercutMm: null,
    rim: null,
    needMm: about(9),
    clocking: null
  }
  type Results = ReturnType<typeof seat>

  it.each<[string, (results: Results) => number, number]>([
    ['run-out with the stack, 12.0 + 2.0 − 0.05 − 13.4', results => results.runOut.withStackMm, 0.55],
    ['run-out without it, 12.0 − 13.4', results => results.runOut.withoutStackMm, -1.4],
    ['floor with the stack, 12.9 + 2.0 − 0.05 − 15.0', results => results.floor!.withStackMm, -0.15],
    ['floor without it, 12.9 − 15.0', results => results.floor!.withoutStackMm, -2.1],
    ['turns by hand, (13.4 − 2.0)/1.5', results => results.shoulderTurns, 7.6],
    ['least stack, the floor decides: 15.0 − 12.9 + 0.05', results => results.leastStackMm, 2.15],
    ['to feel without the stack, the floor decides: 15.0 − 12.9', results => results.feelGapMm, 2.1],
    ['engaged, the hole has 12.0 − 0.8, the part 13.4 − 2.0 + 0.05 − 0.8', results => results.engagedMm, 10.65],
    ['greatest stack that leaves 9.0: 13.4 + 0.05 − 0.8 − 9.0', results => results.greatestStackMm!, 3.65],
    ['beyond what is wanted, 10.65 − 9.0', results => results.engagedMarginMm!, 1.65]
  ])('%s', (_, asked, expected) => {
    expect(asked(seat(plainOf(given).plain))).toBeCloseTo(expected, 9)
  })

  it.each([
    ['ends inside the stack, 2.0 − 2.0 + 0.05 of it below the face: less than the mouth takes', 2, 10.65],
    ['ends below the mouth: 13.4 − 2.8', 2.8, 10.6],
    ['is a shank: 13.4 − 5.2', 5.2, 8.2],
    ['leaves no thread', 13.4, 0]
  ])('a plain length under the shoulder that %s', (_, undercutMm, engagedMm) => {
    const { runOut, engagedMm: engaged } = seat(plainOf({ ...given, undercutMm: about(undercutMm) }).plain)
    expect(engaged).toBeCloseTo(engagedMm, 9)
    // The end of the thread is where it was: nothing is gained at the run-out.
    expect(runOut).toEqual(seat(plainOf(given).plain).runOut)
  })

  it('without a plain length or a mouth the thread begins at the face: 13.4 − 2.0 + 0.05', () => {
    expect(seat(plainOf({ ...given, mouthMm: about(0) }).plain).engagedMm).toBeCloseTo(11.45, 9)
  })

  // The hole ends first: 12.0 − (5.2 − 2.0 + 0.05) = 8.75 of 9.2 that a part of 14.4 has.
  it('a plain length is off the thread of the hole as well', () => {
    const longer = { ...given, threadLengthMm: about(14.4), undercutMm: about(5.2) }
    expect(seat(plainOf(longer).plain).engagedMm).toBeCloseTo(8.75, 9)
  })

  it('adds up the stack in the working', () => {
    const { working } = withWorking(() => seat(plainOf(given).plain))
    expect(working.filter(({ symbol }) => symbol === 't').map(({ putIn }) => putIn)).toEqual(['0 + 0.8', '0.8 + 1.2'])
    expect(working.filter(({ putIn }) => /^the (lesser|greatest)/.test(putIn)).map(({ symbol, putIn }) => `${symbol}: ${putIn}`)).toEqual([
      'tmin: the greatest of t1, t2 and t3, as far as they are known',
      'gf: the greatest shortfall of g3, g4 and g6, as far as they are known, nought where there is none',
      'LE: the lesser of le1 and le2'
    ])
  })

  // M12x1.5: D1 = 12 − 1.0825 · 1.5 = 10.376; a neck of 11 goes 0.8 − (11 − 10.376)/2 = 0.488 into the mouth, and is 2.2 long.
  const necked = (mm: number) => ({ neckMm: about(mm), undercutMm: about(2.2), clearMm: about(10.5), minorMm: about(10.376) })

  it('a neck wider than the hole stands on its rim first', () => {
    const { rim, leastStackMm, feelGapMm } = seat(plainOf({ ...given, floor: null, rim: necked(11) }).plain)
    // 0.488 + 2.0 − 0.05 − 2.2; 0.488 − 2.2, more than the 1.4 of the run-out; 2.2 − 0.488 + 0.05.
    expect(rim!.withStackMm).toBeCloseTo(0.238, 9)
    expect(rim!.withoutStackMm).toBeCloseTo(-1.712, 9)
    expect([feelGapMm, leastStackMm]).toEqual([1.712, 1.762].map(mm => expect.closeTo(mm, 9)))
  })

  it('as wide as the mouth, 10.376 + 1.6, it stands on the face; between the threads, 10.5 mm, it goes as deep as they do', () => {
    expect(seat(plainOf({ ...given, rim: necked(11.98) }).plain).rim!.withoutStackMm).toBeCloseTo(-2.2, 9)
    expect(seat(plainOf({ ...given, rim: necked(10.5) }).plain).rim!.withoutStackMm).toBeCloseTo(12 - 2.2, 9)
  })

  it('at the worst end of its bounds it does not go between them', () => {
    const rim = { ...necked(10.5), neckMm: about(10.5, 0.1) }
    const { feelGapMm } = boundsOf({ ...given, floor: null, rim }, seat)
    // Nominal: the run-out, 12.0 − 13.4. Worst: 0.8 − (10.6 − 10.376)/2 = 0.688 of 2.2.
    expect(feelGapMm).toMatchObject({ value: expect.closeTo(1.4, 9), high: expect.closeTo(1.512, 9) })
  })

  it('says nothing of what was not asked', () => {
    const { floor, greatestStackMm, engagedMarginMm, clock, leastStackMm, feelGapMm } = seat(
      plainOf({ ...given, floor: null, needMm: null }).plain
    )
    expect([floor, greatestStackMm, engagedMarginMm, clock]).toEqual([null, null, null, null])
    // The thread alone: 13.4 − 12.0 + 0.05 and 13.4 − 12.0.
    expect([leastStackMm, feelGapMm]).toEqual([expect.closeTo(1.45, 9), expect.closeTo(1.4, 9)])
  })
})

it('needs no stack where the thread is deep enough', () => {
  expect(seat(plainOf({ ...terminal(), threadDepthMm: new Given(16), stack: [] }).plain).leastStackMm).toBeCloseTo(-0.4, 9)
})

describe('engagement', () => {
  it('is what both threads have below the countersink', () => {
    fc.assert(
      fc.property(seats, tree => {
        const { plain } = plainOf(tree)
        const { engagedMm, stackMm } = seat(plain)
        const { threadDepthMm, threadLengthMm, mouthMm, crushMm } = plain
        expect(engagedMm).toBeLessThanOrEqual(threadDepthMm - mouthMm + 1e-9)
        expect(engagedMm).toBeLessThanOrEqual(threadLengthMm - stackMm + crushMm - mouthMm + 1e-9)
      })
    )
  })

  it('with the greatest stack is what is wanted, where the hole has as much', () => {
    fc.assert(
      fc.property(seats, between(1, 8), (tree, needMm) => {
        const { greatestStackMm } = seat(plainOf({ ...tree, needMm: about(needMm) }).plain)
        fc.pre(
          tree.undercutMm === null &&
            greatestStackMm! >= 0 &&
            greatestStackMm! <= 50 &&
            tree.threadDepthMm.value - tree.mouthMm.value >= needMm
        )
        const stack = [{ thicknessMm: about(greatestStackMm!) }]
        expect(seat(plainOf({ ...tree, stack, needMm: about(needMm) }).plain).engagedMarginMm).toBeCloseTo(0, 9)
      })
    )
  })
})

it('nothing is to be felt where the shoulder lands without its stack', () => {
  expect(seat(plainOf({ ...terminal(), threadDepthMm: new Given(16) }).plain).feelGapMm).toBe(0)
  expect(seat(plainOf(terminal()).plain).feelGapMm).toBeCloseTo(0.6, 9)
})
