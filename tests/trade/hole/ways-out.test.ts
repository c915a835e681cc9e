// example: what can still be done with a hole that is too wide. Status: invented holes; the insert's figures are those of the insert's own tests
import { describe, expect, it } from 'vitest'
import { waysOut } from '../../../src/trade/hole/ways-out.ts'
import { knownThread } from '../thread/known-thread.ts'

const ways = (name: string, foundDiameterMm: number, wallMm: number | null = null) =>
  waysOut({ thread: knownThread(name), foundDiameterMm, wallMm })

describe('a hole of 10.8 mm for M12x1.5', () => {
  it('an insert, a finer thread of the same size, another place', () => {
    const [insert, larger, place] = ways('M12x1.5', 10.8)
    expect(insert).toMatch(/^a wire thread insert for M12x1\.5 .*12\.32 mm up, 13\.95 mm major/)
    expect(larger).toMatch(/M12x1, drilled 11\.00 mm/)
    expect(place).toBe('another place')
  })

  it('a thin wall is said, one that would break leaves the insert out', () => {
    // Beside the thread 3 − 0.6 = 2.4 mm are left, the insert takes 0.97, and 3.76 are asked for.
    expect(ways('M12x1.5', 10.8, 3)[0]).toContain('thinner than anything can be said for')
    expect(ways('M12x1.5', 10.8, 1.5).join()).not.toContain('insert')
    // 1.299038·1.5/2 = 0.9743 mm are taken beside the thread, which leaves itself 0.6 mm outside the hole.
    expect(ways('M12x1.5', 10.8, 1.575).join()).toContain('insert')
    expect(ways('M12x1.5', 10.8, 1.57).join()).not.toContain('insert')
    expect(ways('M12x1.5', 10.8, 10)[0]).not.toContain('thinner')
  })
})

it('wider than the insert takes, a larger thread is left', () => {
  expect(ways('M12x1.5', 12.5)).toEqual([expect.stringMatching(/M14x1\.25, drilled 12\.80 mm/), 'another place'])
})

it('a unified thread has unified ways out', () => {
  expect(ways('3/8-24 UNF', 8.8)[1]).toMatch(/7\/16-14 UNC/)
})

// ASME B1.1, class 2B (memory): 9/16-18 asks for 0.502 to 0.515 in, 12.75 to 13.08 mm; the published 33/64 in is 13.10 mm.
it('a published drill above the limits is not advised', () => {
  expect(ways('1/2-20 UNF', 12.5)).toContainEqual(expect.stringMatching(/9\/16-18 UNF, drilled 13\.00 mm/))
})

it('where nothing fits any more, another place is left', () => {
  expect(ways('M36x4', 40)).toEqual(['another place'])
  // A thread of 12 mm takes (12 - 10.8)/2 mm of wall.
  expect(ways('M12x1.5', 10.8, 0.605)).toHaveLength(2)
  expect(ways('M12x1.5', 10.8, 0.595)).toEqual(['another place'])
})
