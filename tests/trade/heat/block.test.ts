// property: one block, told in several ways, settles alike; example: what each way leaves untold
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { type Block, lossAtWPerK, warmBlock } from '../../../src/trade/heat/block.ts'
import { warm } from '../../../src/trade/heat/warm.ts'

/** Invented. */
const course = { airC: -10, machineC: -10, altitudeM: 0, heatersW: [40], startC: -10, targetC: 5 }
const capacity = { by: 'mass', massKg: 1.9, heatJPerKgK: 900, metal: null } as const
const film = { by: 'churchill-bernstein', airflowMPerS: 3, sizeMm: 80 } as const
const loss = { by: 'surface', areaM2: 0.042, film, emissivityRatio: null, machineWPerK: null } as const
const block: Plain<Block> = { capacity, loss, body: null }
const body = { massKg: 0.041, heatJPerKgK: 380, contactMm2: 400, contactM2KPerW: 1e-4 }

describe('one node', () => {
  it('without radiation and machine is the quick warm-up', () => {
    const quick = warm({ ...course, powerW: 40, massKg: 1.9, heatJPerKgK: 900, areaM2: 0.042, film, metal: null })
    const { steadyC, timeConstantS, timeToTargetS, filmWPerM2K, holdMarginK } = warmBlock(block, course)
    expect({ steadyC, timeConstantS, timeToTargetS, filmWPerM2K, holdMarginK }).toEqual({
      steadyC: expect.closeTo(quick.steadyC, 9),
      timeConstantS: expect.closeTo(quick.timeConstantS, 9),
      timeToTargetS: expect.closeTo(quick.timeToTargetS!, 9),
      filmWPerM2K: expect.closeTo(quick.filmWPerM2K, 9),
      holdMarginK: expect.closeTo(quick.steadyC - 5, 9)
    })
  })
  it('by the loss and capacity that a test would find settles where the surface would', () => {
    const { steadyC, timeConstantS } = warmBlock(block, course)
    const lossWPerK = lossAtWPerK(loss, course, steadyC)
    const tested = warmBlock({ capacity: { by: 'test', capacityJPerK: 1710 }, loss: { by: 'test', lossWPerK }, body: null }, course)
    expect(tested.steadyC).toBeCloseTo(steadyC, 9)
    expect(tested.timeConstantS).toBeCloseTo(timeConstantS, 9)
    expect(tested.filmWPerM2K).toBeNull()
  })
  it('radiation and a machine behind it each take heat away', () => {
    const alone = warmBlock(block, course).steadyC
    expect(warmBlock({ ...block, loss: { ...loss, emissivityRatio: 0.5 } }, course).steadyC).toBeLessThan(alone)
    expect(warmBlock({ ...block, loss: { ...loss, machineWPerK: 0.3 } }, course).steadyC).toBeLessThan(alone)
  })
  it('of known metal has a Biot number: h·V/(A·k)', () => {
    const metal = { densityKgPerM3: 2710, conductivityWPerMK: 96.2 }
    const { biotRatio, filmWPerM2K } = warmBlock({ ...block, capacity: { ...capacity, metal } }, course)
    expect(biotRatio).toBeCloseTo((filmWPerM2K! * 1.9) / 2710 / (0.042 * 96.2), 12)
    expect(warmBlock(block, course).biotRatio).toBeNull()
  })
  it('the air that cools at the part does not cool the machine', () => {
    const bolted = { ...block, loss: { ...loss, machineWPerK: 0.3 } }
    const cooled = warmBlock(bolted, { ...course, airC: -30 }).steadyC
    expect(cooled).toBeGreaterThan(warmBlock(bolted, { ...course, airC: -30, machineC: -30 }).steadyC)
  })
})

describe('two bodies', () => {
  const tested: Plain<Block> = { capacity: { by: 'test', capacityJPerK: 1710 }, loss, body }
  it('the heated part stands above the casting by power times the joint: 40·1e-4/400e-6 = 10 K', () => {
    const { steadyC, bodiesC, partC } = warmBlock({ ...block, body }, course)
    expect(bodiesC).toEqual([expect.closeTo(steadyC + 10, 9)])
    expect(partC).toBe(bodiesC[0])
    expect(steadyC).toBeCloseTo(warmBlock(block, course).steadyC, 9)
  })
  it('warm as one by a heat test, and settle 10 K apart all the same', () => {
    const { steadyC, bodiesC, timeConstantS } = warmBlock(tested, course)
    expect(bodiesC).toEqual([expect.closeTo(steadyC + 10, 9)])
    const alone = warmBlock({ ...tested, body: null }, course)
    expect(timeConstantS).toBe(alone.timeConstantS)
    expect(alone.bodiesC).toEqual([])
    expect(alone.partC).toBe(alone.steadyC)
  })
  it('two alike store twice as much, and each stands as far above the casting as its own power drives it', () => {
    const two = warmBlock({ ...block, body }, { ...course, heatersW: [20, 20] })
    const { steadyC, timeConstantS, timeToTargetS } = warmBlock({ ...block, body: { ...body, massKg: 0.082, contactMm2: 800 } }, course)
    expect(two).toMatchObject({ steadyC, timeConstantS, timeToTargetS })
    expect(two.bodiesC).toEqual([expect.closeTo(steadyC + 5, 9), expect.closeTo(steadyC + 5, 9)])
  })
  it.each([
    ['by its mass', { ...block, body }],
    ['by a heat test', tested]
  ])('of two unlike the stronger stands higher, 30·1e-4/400e-6 = 7.5 K; together they stand between: %s', (_, one) => {
    const { steadyC, bodiesC, partC } = warmBlock(one, { ...course, heatersW: [10, 30] })
    expect(bodiesC).toEqual([expect.closeTo(steadyC + 2.5, 9), expect.closeTo(steadyC + 7.5, 9)])
    expect(partC).toBeCloseTo(steadyC + 5, 9)
  })
})
