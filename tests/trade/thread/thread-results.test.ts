// property, table: everything that is said of a thread
import { expect, it } from 'vitest'
import { withWorking } from '../../../src/formula/working.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { minorLimits, threadResults } from '../../../src/trade/thread/thread-results.ts'
import { classOf } from '../../../src/trade/thread/tolerance-class.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'
import { knownThread, resultsOf } from './known-thread.ts'

it.each([...metricThreads(), ...unifiedThreads()])('$name: no result is missing or no number', ({ name }) => {
  expect(
    JSON.stringify(resultsOf(name), (_, value) => (value === undefined || Object.is(value, Number.NaN) ? 'missing' : value))
  ).not.toContain('missing')
})

it('leaves a line of working for each figure, and none for the rows of the drill table', () => {
  const { working } = withWorking(() => resultsOf('M12x1.5'))
  expect(working.map(({ symbol }) => symbol)).toEqual([
    ...['H', 'D2', 'D1', 'd3', 'D1 least', 'D1 greatest', 'D2 least', 'D2 greatest'],
    ...['d least', 'd greatest', 'd2 least', 'd2 greatest', 'h34', 'h58', 'As', 'h'],
    ...['Dm', 'Dm', 'lm', 'Ds', 'wt', 'Es', 'Ks', 'w1', 'w2', 'ls', 'hs', 'ls', 'hs', 'ls', 'hs']
  ])
  expect(working.find(({ symbol }) => symbol === 'd2 least')).toMatchObject({
    putIn: '11.026 - 0.172',
    value: 10.854,
    unit: 'mm',
    source: 'iso-965-1'
  })
})

it('names each limit in the working, with how far it stands off the basic size', () => {
  const { working } = withWorking(() => resultsOf('M12x1.5', '6G'))
  const lines = working
    .filter(({ symbol }) => / (least|greatest)$/.test(symbol))
    .map(({ symbol, says, putIn }) => `${symbol}: ${says}, ${putIn}`)
  // ISO 965-1 (read-secondary): G lifts by 0.032, 6G then is 0.300 and 0.190 wide; 6g lowers by 0.032 and is 0.236 and 0.140 wide.
  expect(lines).toEqual([
    'D1 least: minor diameter, 6G, least, 10.376 + 0.032',
    'D1 greatest: minor diameter, 6G, greatest, 10.376 + 0.332',
    'D2 least: pitch diameter, 6G, least, 11.026 + 0.032',
    'D2 greatest: pitch diameter, 6G, greatest, 11.026 + 0.222',
    'd least: major diameter, 6g, least, 12 - 0.268',
    'd greatest: major diameter, 6g, greatest, 12 - 0.032',
    'd2 least: pitch diameter, 6g, least, 11.026 - 0.172',
    'd2 greatest: pitch diameter, 6g, greatest, 11.026 - 0.032'
  ])
})

// Minor diameter 6H of M12x1.5: 10.376 to 10.676 (ISO 965-1, read-secondary); 2B of 3/8-24: 0.330 to 0.340 inch (ASME B1.1, read-secondary).
it('limits of the hole in the usual class, and in that of the designation', () => {
  expect(minorLimits(knownThread('M12x1.5'))).toEqual({ minMm: 10.376, maxMm: 10.676 })
  expect(minorLimits(knownThread('M12x1.5-6G'))).toEqual({ minMm: 10.408, maxMm: 10.708 })
  const { minMm, maxMm } = minorLimits(knownThread('3/8-24'))
  expect([minMm / 25.4, maxMm / 25.4]).toEqual([expect.closeTo(0.33, 9), expect.closeTo(0.34, 9)])
})

it('knows the size it was asked for', () => {
  expect(resultsOf('M12x1.5')).toMatchObject({ major: { basicMm: 12 }, pitchMm: 1.5 })
})

it.each([
  ['M12x1.5', '3/8-24'],
  ['3/8-24', 'M12x1.5']
])('a class of the other system for %s is our own mistake', (name, other) => {
  const thread = knownThread(name)
  expect(() => threadResults({ thread, toleranceClass: classOf(knownThread(other)) })).toThrow('a class of the other system')
})

// 3/8-24: pitch diameter 0.3479 and minor diameter 0.3299 inch, stress area 0.0878 square inch (ASME B1.1, read-secondary).
it('a unified thread has the basic sizes that its standard prints in inches, and says so', () => {
  const { working } = withWorking(() => resultsOf('3/8-24'))
  const results = resultsOf('3/8-24')
  expect(results.pitchDiameter.basicMm).toBeCloseTo(0.3479 * 25.4, 9)
  expect(results.minor.basicMm).toBeCloseTo(0.3299 * 25.4, 9)
  expect(Math.abs(results.stressAreaMm2 / 25.4 ** 2 - 0.0878)).toBeLessThanOrEqual(0.00005)
  expect(working.filter(({ putIn }) => putIn.startsWith('as the standard')).map(({ says, putIn }) => `${says}: ${putIn}`)).toEqual([
    'pitch diameter, basic: as the standard prints it: 0.3479 in',
    'minor diameter, basic: as the standard prints it: 0.3299 in'
  ])
})
