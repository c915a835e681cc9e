// Table: joints without an answer are refused in words, and numbers outside a formula's range by name.
import { expect, test } from 'vitest'
import { plainOf } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { joint } from '../../../src/trade/joint/joint.ts'
import { classStrength, readPartClass } from '../../../src/trade/joint/part-class.ts'
import { dilation } from '../../../src/trade/joint/strength-ratio.ts'
import { tapping } from '../../../src/trade/joint/tapping-torque.ts'
import { JOINT } from './example-joint.ts'

const PLAIN = plainOf(JOINT).plain

function refusal(work: () => unknown): NoAnswer {
  try {
    work()
  } catch (error) {
    if (error instanceof NoAnswer) return error
    throw error
  }
  throw new Error('an answer was given')
}

const { thread } = PLAIN
const slippery = { by: 'nut-factor', nutFactor: 0.021, bearingDiameterMm: 14.5 } as const

test.each<[string, Partial<typeof PLAIN>, string]>([
  ['the bore eats the thread', { boreMm: 10.6 }, 'a bore of 10.60 mm leaves no metal in a section of 10.59 mm'],
  ['the bore eats the neck', { boreMm: 9, neckMm: 9 }, 'a bore of 9.00 mm leaves no metal in a section of 9.00 mm'],
  ['threads that do not meet', { thread: { ...thread, screwMajorMinMm: 9.9 } }, 'at least material these two threads do not meet'],
  // 0.57735·(9.91656 - 11.216) = -0.75023, and 0.57735·(9.37656 - 10.676) the same: half the pitch is 0.75.
  ['a screw that just misses', { thread: { ...thread, screwMajorMinMm: 9.91656 } }, 'at least material these two threads do not meet'],
  ['a hole that just misses', { thread: { ...thread, screwPitchMinMm: 9.37656 } }, 'at least material these two threads do not meet'],
  [
    'a hole wider than the screw',
    { thread: { ...thread, holeMinorMaxMm: 11.8 } },
    'may be 11.80 mm wide and the thread of the part only 11.73 mm'
  ],
  ['a hole as wide as the screw', { thread: { ...thread, holeMinorMaxMm: 11.732 } }, 'nothing holds it'],
  ['a nut factor below the pitch', { thread: { ...thread, pitchMm: 1.75 }, friction: slippery }, 'a nut factor of 0.021 is less than'],
  ['a hole as large as the shoulder', { bearing: { faceMm: 12.5, holeMm: 12.5 } }, 'nothing bears']
])('%s', (_, change, says) => {
  const error = refusal(() => joint({ ...PLAIN, ...change }))
  expect(error.says).toContain(says)
  expect(error.change).not.toBe('')
})

test('a nut factor just above what the pitch takes has an answer', () => {
  expect(joint({ ...PLAIN, friction: slippery }).preloadN).toBeGreaterThan(0)
})

// P/(2·π·d) = 1.77/(2·3.14159·12) = 0.023475: a wedge as steep as the thread, without friction.
test('the least nut factor is told', () => {
  const change = { thread: { ...thread, pitchMm: 1.77 }, friction: slippery }
  expect(refusal(() => joint({ ...PLAIN, ...change })).change).toBe('give a nut factor above 0.023; a usual one is 0.2')
})

test('less than 1.4 diameters of metal around the hole; a thick wall loses nothing', () => {
  // 3.8·1.4 - 1.4² - 2.61
  expect(dilation({ bossMm: 14, majorMm: 10 })).toBeCloseTo(0.75, 12)
  expect(refusal(() => dilation({ bossMm: 13.9, majorMm: 10 })).says).toContain('less than 1.4 thread diameters')
  expect(dilation({ bossMm: 19, majorMm: 10 })).toBe(1)
})

test('a hole as large as the thread', () => {
  expect(refusal(() => tapping({ majorMm: 8, holeMm: 8, cuttingMpa: 1300, tapFactor: 1.25 })).says).toContain('a tap cuts nothing')
})

test('a class beyond its sizes', () => {
  const read = readPartClass('8.8')
  expect(read.ok && refusal(() => classStrength({ partClass: read.value, majorMm: 40 })).says).toContain(
    '8.8 is not defined for a thread of 40 mm'
  )
})

test.each<[Partial<typeof PLAIN>, string]>([
  [{ engagementMm: 0 }, 'engagementMm'],
  [{ engagementMm: -1 }, 'engagementMm'],
  [{ engagementMm: Number.NaN }, 'engagementMm'],
  [{ castingShearMpa: 0 }, 'castingShearMpa'],
  [{ tensileMpa: 5000 }, 'tensileMpa'],
  [{ torqueNm: -1 }, 'torqueNm'],
  [{ friction: { by: 'nut-factor', nutFactor: 1.2, bearingDiameterMm: 14.5 } }, 'nutFactor']
])('%o is out of range: %s', (change, input) => {
  try {
    joint({ ...PLAIN, ...change })
  } catch (error) {
    expect(error).toBeInstanceOf(OutsideRange)
    expect((error as OutsideRange).input).toBe(input)
    return
  }
  throw new Error('an answer was given')
})

test('a joint that says neither what bears nor how wide it bears is our own mistake', () => {
  const friction = { ...slippery, bearingDiameterMm: null }
  expect(() => joint({ ...PLAIN, friction, bearing: null })).toThrow('without the ring that bears')
})
