// property: one block, told in several ways, settles alike; example: what each way leaves untold
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { type Block, lossAtWPerK, warmBlock } from '../../../src/trade/heat/block.ts'
import { warm } from '../../../src/trade/heat/warm.ts'

/** Invented. */
const course = { airC: -10, machineC: -10, altitudeM: 0, powerW: 40, startC: -10, targetC: 5 }
const capacity = { by: 'mass', massKg: 1.9, heatJPerKgK: 900, metal: null } as const
const film = { by: 'churchill-bernstein', airflowMPerS: 3, sizeMm: 80 } as const
const loss = { by: 'surface', areaM2: 0.042, film, emissivityRatio: null, machineWPerK: null } as const
const block: Plain<Block> = { capacity, loss, body: null }
const body = { massKg: 0.041, heatJPerKgK: 380, contactMm2: 400, contactM2KPerW: 1e-4 }

describe('one node', () => {
  it('without radiation and machine is the quick warm-up', () => {
    const quick = warm({ ...course, massKg: 1.9, heatJPerKgK: 900, areaM2: 0.042, film, metal: null })
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
  it('the heated part is the hottest spot, by power times the joint: 40·1e-4/400e-6 = 10 K', () => {
    const { steadyC, bodyC, hottestC } = warmBlock({ ...block, body }, course)
    expect(bodyC! - steadyC).toBeCloseTo(10, 9)
    expect(hottestC).toBe(bodyC)
    expect(steadyC).toBeCloseTo(warmBlock(block, course).steadyC, 9)
  })
  it('warm as one by a heat test, and settle 10 K apart all the same', () => {
    const tested = warmBlock({ capacity: { by: 'test', capacityJPerK: 1710 }, loss, body }, course)
    expect(tested.bodyC! - tested.steadyC).toBeCloseTo(10, 9)
    expect(tested.hottestC).toBe(tested.bodyC)
    const alone = warmBlock({ capacity: { by: 'test', capacityJPerK: 1710 }, loss, body: null }, course)
    expect(tested.timeConstantS).toBe(alone.timeConstantS)
    expect(alone.bodyC).toBeNull()
    expect(alone.hottestC).toBe(alone.steadyC)
  })
})
