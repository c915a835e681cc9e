// table: every fault of a reading in a job, with its place
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { jobText } from '../work/prove/invented.ts'

function errorsOf(more: string) {
  return judgeJob('job.yaml', jobText(more)).errors
}

describe('what no circuit can have shown', () => {
  it.each([
    ['an unknown point', '{ at: left+ to lef-, volts: 26 V }', 'readings.0.at', '"lef-"', 'left-'],
    ['one point alone', '{ at: left+, volts: 26 V }', 'readings.0.at', 'no two points', undefined],
    ['both leads on one point', '{ at: bus to bus, volts: 26 V }', 'readings.0.at', 'both leads', undefined],
    ['nothing', '{ at: left+ to left- }', 'readings.0', 'a reading of nothing', undefined],
    ['two things at once', '{ at: left+ to left-, volts: 26 V, amps: 2 A }', 'readings.0', 'volts and amps', undefined],
    ['amps where nothing joins', '{ at: bus to left+, amps: 2 A }', 'readings.0.at', 'nothing joins', undefined],
    ['a test current without volts', '{ at: left+ to left-, amps: 2 A, passing: 10 A }', 'readings.0.passing', 'without volts', undefined],
    ['a test current of nothing', '{ at: left+ to left-, volts: 2 mV, passing: 0 A }', 'readings.0.passing', '"0 A"', undefined],
    ['a test current the other way', '{ at: left+ to left-, volts: 2 mV, passing: -5 A }', 'readings.0.passing', '"-5 A"', undefined],
    ['more than a meter shows', '{ at: left+ to left-, volts: 4000 V }', 'readings.0.volts', '4000 V', undefined],
    [
      'a resolution of another unit',
      '{ at: left+ to left-, volts: 26 V, meter: { percent: 1, digits: 2, resolution: 0.1 A } }',
      'readings.0.meter.resolution',
      'in A for volts',
      undefined
    ],
    [
      'less than no digits',
      '{ at: left+ to left-, volts: 26 V, meter: { percent: 1, digits: -2 } }',
      'readings.0.meter.digits',
      '"-2"',
      undefined
    ],
    [
      'an accuracy that is none',
      '{ at: left+ to left-, volts: 26 V, meter: { percent: -1, digits: 2 } }',
      'readings.0.meter.percent',
      '-1',
      undefined
    ],
    ['ohms below nought', '{ at: left+ to left-, ohms: -2 ohm }', 'readings.0.ohms', '-2 ohm', undefined]
  ])('%s', (_, reading, path, found, near) => {
    const [error, ...others] = errorsOf(`readings: [${reading}]\n`)
    expect(others).toEqual([])
    expect(error?.where).toMatchObject({ file: 'job.yaml', line: 21, path })
    expect(error?.found).toContain(found)
    expect(error?.near).toBe(near)
  })

  it('a meter of the bench with a resolution of another unit', () => {
    const [error] = errorsOf('proof: { meter: { amps: { percent: 2, digits: 5, resolution: 0.01 V } } }\n')
    expect(error?.where.path).toBe('proof.meter.amps.resolution')
  })

  it('readings without a circuit', () => {
    const text = `${jobText('').replace(/circuit:.*/s, '')}readings: [{ at: a to b, volts: 1 V }]\n`
    expect(judgeJob('job.yaml', text).errors[0]?.found).toContain('without a circuit')
  })
})

it.each([
  '{ at: left+ TO left-, volts: 26.4 V, meter: { percent: 0.5, digits: 2, resolution: 0.01 V } }',
  '{ at: left+ to left-, amps: 1.9 A }',
  '{ at: left- to left+, amps: -1.9 A, meter: { percent: 2 %, digits: 5 } }',
  '{ at: chassis to bus, amps: 4 A }',
  '{ at: left+ to left-, ohms: 12.1 ohm }',
  '{ at: left+ to left-, ohms: OL }',
  '{ at: left+ to chassis, ohms: 6.2 ohm }',
  '{ at: left- to chassis, volts: 92 mV, passing: 10 A }',
  '{ at: left+ to left-, volts: 26.4 V ± 0.1 V }'
])('%s is read', reading => expect(errorsOf(`readings: [${reading}]\n`)).toEqual([]))

it('readings change nothing of what is judged before', () => {
  const without = judgeJob('job.yaml', jobText())
  const { findings } = judgeJob('job.yaml', jobText('readings: [{ at: left+ to left-, volts: 3 V }]\n'))
  expect(findings.map(({ rule, verdict }) => [rule, verdict])).toEqual(without.findings.map(({ rule, verdict }) => [rule, verdict]))
})
