// property: what is certain to hold with less engaged, by hand
import { describe, expect, it } from 'vitest'
import type { Bounded } from '../../../src/formula/bounds.ts'
import { exactly } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { engagementToSpare, loadsToSpare } from '../../../src/work/job/engaged-to-spare.ts'

const between = (low: number, high: number): Bounded => ({ ...exactly((low + high) / 2), low, high })

/** 10 to 11 mm engaged, 4 mm of it gone at most: 60 % of each load is left. */
const ENGAGED = between(10, 11)
const LESS = new Given(3.5, { low: 3, high: 4 })
const HOLDS = {
  internalStripLoadN: between(30_000, 33_000), // 18 kN left, 1.5 times the pull
  externalStripLoadN: between(30_000, 33_000), // 18 kN left
  highestTorqueNm: between(40, 44), // 24 N·m left
  engagementSpareMm: between(8.8, 9.8), // 4 mm more than 0.8 of what is required: 1.5 · 1.2 times as much lets it pass
  engagementRequiredMm: between(5, 6),
  preloadN: between(8000, 12_000),
  torqueNm: between(22, 24)
}
function spared(
  figures: Partial<typeof HOLDS> = {},
  less = LESS,
  wallFactor = 1
): { readonly loads: boolean; readonly engagement: boolean } {
  const joint = { ...HOLDS, ...figures } as unknown as Parameters<typeof loadsToSpare>[0]
  return { loads: loadsToSpare(joint, ENGAGED, less, wallFactor), engagement: engagementToSpare(joint, less) }
}

describe('with 60 % of the thread left', () => {
  it('all of it holds, without any margin', () => {
    expect(spared()).toEqual({ loads: true, engagement: true })
  })

  it.each([
    ['the casting', { internalStripLoadN: between(29_990, 33_000) }],
    ['the part', { externalStripLoadN: between(19_990, 22_000) }],
    ['the pull', { preloadN: between(8000, 12_010) }],
    ['the torque', { torqueNm: between(22, 24.1) }],
    ['what would give first', { highestTorqueNm: between(39.9, 44) }]
  ])('%s may be too much or too little', (_, figures) => {
    expect(spared(figures)).toEqual({ loads: false, engagement: true })
  })

  it('the engagement to spare may be too little', () => {
    expect(spared({ engagementSpareMm: between(8.7, 9.8) })).toEqual({ loads: true, engagement: false })
  })

  it('a wall that gives way takes its share', () => {
    expect(spared({}, LESS, 0.99).loads).toBe(false)
    // 0.75 · 0.6 · 40 kN = 18 kN.
    expect(spared({ internalStripLoadN: between(40_000, 44_000) }, LESS, 0.75).loads).toBe(true)
  })

  it('nothing is certain where no thread may be left', () => {
    expect(spared({ preloadN: between(0, 0), torqueNm: between(0, 0), engagementSpareMm: between(20, 21) }, new Given(10)).loads).toBe(
      false
    )
  })
})
