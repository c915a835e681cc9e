// Property: laws of a heated part in a casting; example: machine, radiation, bounds and no answer.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, type Plain } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { castingLostW } from '../../../src/trade/heat/casting-loss.ts'
import { coupledAt, heatAccount } from '../../../src/trade/heat/coupled.ts'
import { pairOf, settledPair, type TwoNode, twoNode } from '../../../src/trade/heat/two-node.ts'

/** Invented: a cartridge of 41 g in a casting of 1.9 kg, moving air at -18 °C. */
const fitting: Plain<TwoNode> = {
  powerW: 45,
  body: { massKg: 0.041, heatJPerKgK: 380 },
  casting: { massKg: 1.9, heatJPerKgK: 900 },
  joint: { contactMm2: 300, contactM2KPerW: 2.75e-4 },
  loss: {
    areaM2: 0.042,
    film: { by: 'churchill-bernstein', airflowMPerS: 3, sizeMm: 80 },
    emissivityRatio: null,
    airC: -18,
    altitudeM: 420,
    machine: null
  },
  startC: -18,
  targetC: 0
}
const standing: Plain<TwoNode> = {
  ...fitting,
  loss: { ...fitting.loss, film: { by: 'horizontal-cylinder', sizeMm: 80 }, emissivityRatio: 0.46 }
}

describe('laws', () => {
  it.each([
    ['moving air', fitting],
    ['still air and radiation', standing],
    ['bolted to a warm machine', { ...fitting, loss: { ...fitting.loss, machine: { machineWPerK: 0.6, machineC: 5 } } }]
  ] as const)('%s: what comes in leaves at the steady temperature', (_, x) => {
    const { castingC } = twoNode(x)
    expect(castingLostW(x.loss, castingC)).toBeCloseTo(45, 8)
  })
  it('heat put in is heat stored and heat lost, to a millionth', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 20000, noNaN: true }), fc.double({ min: -40, max: 30, noNaN: true }), (timeS, startC) => {
        const { pair } = pairOf({ ...fitting, startC })
        const { putInJ, storedJ, lostJ } = heatAccount(pair, settledPair(pair), timeS)
        expect(Math.abs(storedJ + lostJ - putInJ)).toBeLessThanOrEqual(1e-6 * Math.max(putInJ, Math.abs(storedJ), Math.abs(lostJ)))
      })
    )
  })
  it('the part is hotter than the casting by power over conductance, in the end', () => {
    const { bodyC, castingC } = twoNode(fitting)
    expect(bodyC - castingC).toBeCloseTo(45 / (300e-6 / 2.75e-4), 9)
  })
  it('compound in the joint cools the part and leaves the casting where it settles', () => {
    const greased = twoNode({ ...fitting, joint: { contactMm2: 300, contactM2KPerW: 0.07e-4 } })
    const bare = twoNode(fitting)
    expect(greased.bodyC).toBeLessThan(bare.bodyC)
    expect(greased.castingC).toBeCloseTo(bare.castingC, 9)
  })
  it('the casting is at the target at the time given', () => {
    fc.assert(
      fc.property(fc.double({ min: -17.9, max: 5, noNaN: true }), targetC => {
        const x = { ...fitting, targetC }
        const { pair } = pairOf(x)
        expect(coupledAt(pair, settledPair(pair), twoNode(x).timeToTargetS!).castingC).toBeCloseTo(targetC, 9)
      })
    )
  })
  // At first the part warms by P·t/C1, and the casting by what that drives through the joint: P·Gj·t²/(2·C1·C2).
  it('the first five milliseconds', () => {
    const [jointWPerK, bodyJPerK, castingJPerK] = [300e-6 / 2.75e-4, 0.041 * 380, 1.9 * 900]
    const targetC = -18 + (45 * jointWPerK * 0.005 ** 2) / (2 * bodyJPerK * castingJPerK)
    expect(twoNode({ ...fitting, targetC }).timeToTargetS).toBeCloseTo(0.005, 5)
  })
  it('tells both time constants in the working, four digits of each', () => {
    const { value, working } = withWorking(() => twoNode(fitting))
    const times = [value.fastS, value.slowS].map(s => Number(s.toPrecision(4)))
    expect(working.at(-1)!.putIn).toBe(`two exponentials, ${times.join(' and ')} s, by false position`)
  })
  it('both start at the start', () => {
    const { pair } = pairOf({ ...fitting, startC: -7 })
    const { bodyC, castingC } = coupledAt(pair, settledPair(pair), 0)
    expect([bodyC, castingC]).toEqual([expect.closeTo(-7, 9), expect.closeTo(-7, 9)])
  })
  it('a machine as cold as the air, radiation, and moving air each take heat away', () => {
    const { castingC } = twoNode({ ...standing, loss: { ...standing.loss, emissivityRatio: null } })
    const bolted = twoNode({
      ...standing,
      loss: { ...standing.loss, emissivityRatio: null, machine: { machineWPerK: 0.5, machineC: -18 } }
    })
    expect(bolted.castingC).toBeLessThan(castingC)
    expect(twoNode(standing).castingC).toBeLessThan(castingC)
    expect(twoNode(fitting).castingC).toBeLessThan(twoNode(standing).castingC)
    expect(twoNode(fitting).radiationWPerM2K).toBeNull()
  })
})

describe('time to target', () => {
  const timeS = (x: Partial<Plain<TwoNode>>) => twoNode({ ...fitting, ...x }).timeToTargetS
  it('is null without a target, infinite when never, nought when there', () => {
    expect(timeS({ targetC: null })).toBeNull()
    expect(timeS({ targetC: twoNode(fitting).castingC })).toBe(Number.POSITIVE_INFINITY)
    expect(timeS({ startC: 5, targetC: 3 })).toBe(0)
  })
  it('is found where the casting cools at first: it starts warmer than its end is far', () => {
    // Far from the end the casting loses heat before the part has any to give.
    const { pair } = pairOf({ ...fitting, startC: 2, targetC: 3 })
    const settled = settledPair(pair)
    expect(coupledAt(pair, settled, 2).castingC).toBeLessThan(2)
    expect(settled.castingC).toBeGreaterThan(3)
    expect(coupledAt(pair, settled, timeS({ startC: 2, targetC: 3 })!).castingC).toBeCloseTo(3, 9)
  })
  it('leaves a line of working', () => {
    const { working } = withWorking(() => twoNode(fitting))
    expect(working.at(-1)!.says).toBe('time until the casting reaches the target')
  })
})

it('takes bounds', () => {
  const tree: TwoNode = {
    powerW: new Given(45, { low: 42, high: 48 }),
    body: { massKg: new Given(0.041), heatJPerKgK: new Given(380) },
    casting: { massKg: new Given(1.9), heatJPerKgK: new Given(900) },
    joint: { contactMm2: new Given(300), contactM2KPerW: new Given(1e-4, { low: 7e-6, high: 2.75e-4 }) },
    loss: {
      areaM2: new Given(0.042),
      film: { by: 'churchill-bernstein', airflowMPerS: new Given(3, { low: 2, high: 4 }), sizeMm: new Given(80) },
      emissivityRatio: new Given(0.46),
      airC: new Given(-18, { low: -20, high: -16 }),
      altitudeM: new Given(420),
      machine: null
    },
    startC: new Given(-18),
    targetC: new Given(-5)
  }
  const found = boundsOf(tree, twoNode)
  const corners = [42, 48].flatMap(powerW =>
    [7e-6, 2.75e-4].flatMap(contactM2KPerW =>
      [2, 4].flatMap(airflowMPerS =>
        [-20, -16].map(airC =>
          twoNode({
            ...fitting,
            powerW,
            joint: { contactMm2: 300, contactM2KPerW },
            loss: { ...fitting.loss, emissivityRatio: 0.46, airC, film: { by: 'churchill-bernstein', airflowMPerS, sizeMm: 80 } },
            targetC: -5
          })
        )
      )
    )
  )
  for (const key of ['bodyC', 'castingC', 'timeToTargetS'] as const) {
    const numbers = corners.map(corner => corner[key]!)
    expect(found[key]!.low).toBeCloseTo(Math.min(...numbers), 8)
    expect(found[key]!.high).toBeCloseTo(Math.max(...numbers), 8)
  }
})
