// example: fuses, breakers and switches of a job at voltages beyond their tables; an example job, changed
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8')

function verdicts(...changes: readonly (readonly [from: RegExp, to: string])[]) {
  const text = changes.reduce((now, [from, to]) => {
    expect(now).toMatch(from)
    return now.replace(from, to)
  }, JOB)
  const { errors, findings } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  return (rule: string) => findings.filter(one => one.rule === rule).map(({ verdict }) => verdict)
}

function bus(volts: string, rated: string) {
  return verdicts([/bus: .*?, resistance: [^,]*/, `${volts}, resistance: 300 mohm`], [/(power: 60 W ± 5 %, voltage:) 24 V/, `$1 ${rated}`])
}

it('judges a fuse at the highest voltage of the bus', () => {
  expect(bus('bus: 27 V, low: 24 V, high: 28 V', '24 V')('protect/interrupting')).toEqual(['pass'])
  expect(bus('bus: 54 V, low: 49 V, high: 57 V', '48 V')('protect/interrupting')).toEqual(['caution'])
  expect(bus('bus: 110 V, low: 100 V, high: 115 V', '110 V')('protect/interrupting')).toEqual(['fail'])
})

it('a fuse on a bus of which nobody told the ends is no pass where it rests on them', () => {
  const at = (volts: string) => bus(volts, '24 V')
  expect(at('bus: 27 V')('protect/interrupting')).toEqual(['caution'])
  expect(at('bus: 27 V')('protect/far-end-short')).toEqual(['caution'])
  expect(at('bus: 27 V, high: 28 V')('protect/interrupting')).toEqual(['pass'])
  expect(at('bus: 27 V, low: 24 V')('protect/far-end-short')).toEqual(['pass'])
  expect(at('bus: 27 V ± 0.5 V')('protect/interrupting')).toEqual(['pass'])
})

it('a switch above its table is not judged, or fails where it would at its last row', () => {
  const volts = [/bus: .*?, resistance/, 'bus: 54 V, low: 49 V, high: 57 V, resistance'] as const
  const rated = [/(power: 60 W ± 5 %, voltage:) 24 V/, '$1 48 V'] as const
  expect(verdicts(volts, rated)('switch/under-rated')).toEqual(['not-judged'])
  expect(verdicts(volts, rated, [/(switch: S2, rating:) 16 A/, '$1 2 A'])('switch/under-rated')).toEqual(['fail'])
})

it('what a breaker of no published capacity can break is not passed over', () => {
  const found = verdicts([/fuse: (F9.*?style:) blade/, 'breaker: $1 hydraulic-magnetic'])
  expect(found('protect/interrupting')).toEqual(['not-judged'])
})

it('a fuse that lets its wire get too warm for good is no pass', () => {
  const at = (rating: string) => verdicts([/(fuse: F9, rating:) 5 A/, `$1 ${rating}`])('protect/over-wire')
  expect(at('5 A')).toEqual(['pass'])
  // By hand: 35 · 0.6 · 0.85 = 17.85 A at 105 °C in 50 °C; u = (1.35 · 15/17.85)² · 55/339.5 = 0.2085, which settles at 125 °C.
  expect(at('15 A')).toEqual(['caution'])
  expect(at('20 A')).toEqual(['fail'])
})

it('a breaker of which no opening times are published is judged by what it holds in its place', () => {
  const at = (rating: string, place: string) =>
    verdicts([/fuse: F9, rating: 5 A, style: blade, at: 25 °C/, `breaker: F9, rating: ${rating}, style: thermal, at: ${place}`])(
      'protect/over-wire'
    )
  // By hand: 17.85 A at 105 °C in 50 °C; 17.5 A: u = (17.5/17.85)² · 55/339.5 = 0.1557, (50 + 234.5·u)/(1 − u) = 102.5 °C;
  // at -20 °C it holds 17.5/0.76 = 23.03 A: u = 0.2696, 155.0 °C; 17.8 A hold 23.42 A: u = 0.2789, 160.1 °C, above 160 °C.
  expect(at('17.5 A', '25 °C')).toEqual(['caution'])
  expect(at('17.5 A', '-20 °C')).toEqual(['caution'])
  expect(at('17.8 A', '-20 °C')).toEqual(['fail'])
  expect(at('17.8 A', '25 °C')).toEqual(['caution'])
})

it.each([/style: blade/, /fuse: F9, rating: 5 A, style: blade/])('no verdict on a time that nobody published', from => {
  const found = verdicts([
    from,
    from.source.replace('blade', 'glass').replace('fuse: F9, rating: 5 A, style: glass', 'breaker: F9, rating: 6 A, style: iec-60898')
  ])
  expect(found('wire/short-circuit')).toEqual(['not-judged', 'not-judged'])
  expect(found('protect/far-end-short')).toEqual(['not-judged'])
})

const S2 = /\{ switch: S2, rating: 16 A/
it.each([
  ['a thermostat', '{ thermostat: S2', 'thermostat S2'],
  ['a relay', '{ what: relay S2', 'relay S2']
])('%s is asked like a switch, and without its rating is not judged', (_, named, says) => {
  // By hand: 2 × 3.08 A by AC 11-4; 60 W ± 5 % of 24 V at 28.4 V through its runs.
  expect(verdicts([S2, `${named}, rating: 1 A`])('switch/under-rated')).toEqual(['fail'])
  expect(verdicts([S2, `${named}, rating: 16 A`])('switch/under-rated')).toEqual(['pass'])
  expect(verdicts([S2, named])('switch/under-rated')).toEqual(['not-judged'])
  const found = judgeJob('job.yaml', JOB.replace(S2, `${named}, rating: 1 A`)).findings.find(({ rule }) => rule === 'switch/under-rated')
  expect(found).toMatchObject({ thing: 'circuit.S2', says: expect.stringContaining(`${says} of 1.00 A DC`) })
})

const BY_RATING = ['protect/overloaded', 'protect/over-wire', 'protect/inrush', 'protect/interrupting', 'protect/far-end-short']

it.each([
  ['rating', / rating: 5 A,/],
  ['style', / style: blade,/]
])('a fuse without %s is judged by its place, and nothing else of it is passed over', (_, gone) => {
  const near = verdicts([gone, ''])
  expect(BY_RATING.flatMap(near)).toEqual(BY_RATING.map(() => 'not-judged'))
  expect(near('protect/too-far')).toEqual(['pass'])
  expect(verdicts([gone, ''], [/length: 0.15 m/, 'length: 20 m'])('protect/too-far')).toEqual(['caution'])
  expect(verdicts([gone, ''], [/length: 0.15 m/, 'length: 2 m'], [/practice: \w+/, 'practice: boat'])('protect/too-far')).toEqual(['fail'])
})

// 60 W ± 5 % of 24 V at 28.4 V are 3.08 A through its runs. Of a blade fuse of 5 A 3.75 A may flow at 25 °C (75 %) and 2.85 A at 65 °C (75 · 19/25).
it.each([
  ['25 °C', 'pass', 'read at 25 °C'],
  ['26 °C', 'caution', 'by the row of 25 °C 3.75 A may'],
  ['60 °C', 'caution', 'none is printed between the two, for 60 °C'],
  ['65 °C', 'fail', '2.85 A may flow for good (read at 65 °C)'],
  ['66 °C', 'fail', 'at 65 °C, the hottest that is printed']
])('a fuse at %s', (at, verdict, says) => {
  const found = judgeJob('job.yaml', JOB.replace('style: blade, at: 25 °C', `style: blade, at: ${at}`)).findings
  expect(found.find(({ rule }) => rule === 'protect/overloaded')).toMatchObject({ verdict, says: expect.stringContaining(says) })
})

it('and fails between two rows where it would by both', () => {
  expect(verdicts([/style: blade, at: 25 °C/, 'style: blade, at: 30 °C'], [/rating: 5 A/, 'rating: 4 A'])('protect/overloaded')).toEqual([
    'fail'
  ])
})

it('a rating that no series has is told (ISO 8820-3, medium blade: 1 to 40 A, read-secondary)', () => {
  const { findings } = judgeJob('job.yaml', JOB.replace(/rating: [\d.]+ A, style: blade/, 'rating: 7 A, style: blade'))
  const { verdict, says } = findings.find(({ rule }) => rule === 'protect/overloaded')!
  expect(verdict).not.toBe('pass')
  expect(says).toContain('no medium blade fuse of 7 A stands in the series')
})
