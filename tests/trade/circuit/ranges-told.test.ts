// example: what is outside a rule is refused, with the ends of the rule; the ends themselves are not
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { ampacity } from '../../../src/trade/circuit/ampacity.ts'
import { factorAtAltitude } from '../../../src/trade/circuit/ampacity-altitude.ts'
import { ecssBundleFactor, ecssPartLoadFactor } from '../../../src/trade/circuit/ampacity-bundle.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { coldRatingA } from '../../../src/trade/circuit/protection-ambient.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { switchRow } from '../../../src/trade/circuit/switch-factor.ts'

function refusal(work: () => unknown) {
  try {
    work()
  } catch (error) {
    if (error instanceof OutsideRange) return { value: error.value, least: error.least, greatest: error.greatest }
    throw error
  }
  throw new Error('an answer was given')
}

const BOAT = {
  practice: 'boat',
  conductor: { standard: 'awg', awg: 14 },
  insulationC: 105,
  ambientC: 30,
  altitudeM: 0,
  bundleCount: 1
} as const

// 60 000 ft; a bundle of the ECSS table; a share; the rows of table 11-4; the printed temperatures of a thermal breaker.
it.each([
  ['altitude', () => factorAtAltitude(18_289), { value: 18_289, least: 0, greatest: 60_000 * 0.3048 }],
  [
    'altitude in an aircraft',
    () => ampacity({ ...BOAT, practice: 'aircraft', altitudeM: 18_289 }),
    { value: 18_289, least: 0, greatest: 18_288 }
  ],
  ['no wire in a bundle', () => ampacity({ ...BOAT, bundleCount: 0 }), { value: 0, least: 1, greatest: Number.MAX_SAFE_INTEGER }],
  ['no wire', () => ecssBundleFactor(0), { value: 0, least: 1, greatest: 9 }],
  ['a part of a wire', () => ecssBundleFactor(0.995), { value: 0.995, least: 1, greatest: 9 }],
  ['ten wires', () => ecssBundleFactor(10), { value: 10, least: 1, greatest: 9 }],
  ['less than nothing loaded', () => ecssPartLoadFactor(-0.005), { value: -0.005, least: 0, greatest: 100 }],
  ['more than all loaded', () => ecssPartLoadFactor(100.5), { value: 100.5, least: 0, greatest: 100 }],
  ['a bus of nought', () => switchRow({ busV: 0, load: 'lamp' }), { value: 0, least: 0, greatest: 32 }],
  ['a bus of 32.1 V', () => switchRow({ busV: 32.1, load: 'lamp' }), { value: 32.1, least: 0, greatest: 32 }],
  ['colder than printed', () => coldRatingA(styleOf('thermal'), { ratingA: 10, ambientC: -31 }), { value: -31, least: -30, greatest: 60 }]
] as const)('%s', (_, work, range) => expect(refusal(work)).toEqual(range))

// ECSS-Q-ST-30-11: 1.2 below a quarter loaded, 1.1 from there to a half, 1 above.
it.each([
  [0, 1.2],
  [24.9, 1.2],
  [25, 1.1],
  [50, 1.1],
  [50.1, 1],
  [100, 1]
])('%d %% loaded: %d', (loadedPercent, factor) => expect(ecssPartLoadFactor(loadedPercent)).toBe(factor))

it.each([
  [16, '12 V DC'],
  [16.1, '28 V DC'],
  [32, '28 V DC']
])('a bus of %d V is read at the row of %s', (busV, row) => expect(switchRow({ busV, load: 'motor' }).row).toBe(row))

describe('numbers that no network has', () => {
  const source: PlainElement = { kind: 'source', id: 's', from: 'g', to: 'a', sourceV: 12, insideOhm: 0.1 }
  const resistor: PlainElement = { kind: 'resistor', id: 'r', from: 'a', to: 'g', resistanceOhm: 5 }
  const draw: PlainElement = { kind: 'draw', id: 'd', from: 'a', to: 'g', drawA: 1 }
  const solved = (...elements: readonly PlainElement[]) => solveNetwork({ ground: 'g', elements })

  it.each([
    ['resistance', [source, { ...resistor, resistanceOhm: -0.005 }], { value: -0.005, least: 0, greatest: 1e9 }],
    ['resistance', [source, { ...resistor, resistanceOhm: 1.001e9 }], { value: 1.001e9, least: 0, greatest: 1e9 }],
    ['inside', [{ ...source, insideOhm: -0.005 }, resistor], { value: -0.005, least: 0, greatest: 1e9 }],
    ['voltage', [{ ...source, sourceV: 1001 }, resistor], { value: 1001, least: -1000, greatest: 1000 }],
    ['current', [source, resistor, { ...draw, drawA: -100_100 }], { value: -100_100, least: -1e5, greatest: 1e5 }]
  ] as const)('%s', (_, elements, range) => expect(refusal(() => solved(...elements))).toEqual(range))

  it('the ends are numbers like any other', () => {
    expect(() => solved({ ...source, sourceV: 1000 }, { ...resistor, resistanceOhm: 1e9 })).not.toThrow()
    expect(() => solved(source, { ...resistor, resistanceOhm: 0 })).not.toThrow()
    expect(() => solved({ ...source, insideOhm: 0 }, resistor, { ...draw, drawA: 1e5 })).not.toThrow()
  })
})
