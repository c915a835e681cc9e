// example: single faults in an example job, with what switches it off as well; changed
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8')
const SWITCH = '{ switch: S2, rating: 16 A, resistance: 12 mohm }'

function backwards(change: (text: string) => string) {
  const text = change(JOB)
  expect(text).not.toBe(JOB)
  const { errors, findings } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  return findings.find(({ rule }) => rule === 'circuit/feeds-backwards')!
}
/** The same part in the return: its lead chafes, and the load is on though it is off. */
const inReturn = (item: string) => (text: string) =>
  text.replace(`, ${SWITCH}`, '').replace('      to: frame\n', `      to: frame\n      through: [${item}]\n`)

describe('what switches in the return', () => {
  it.each([
    ['a switch', SWITCH, 'switch S2'],
    ['a thermostat', '{ thermostat: S2, rating: 16 A }', 'thermostat S2'],
    ['a relay', '{ what: relay S2 }', 'relay S2'],
    ['a switch drawn open', SWITCH.replace(' }', ', state: open }'), 'load']
  ])('%s leaves its load on at a short, and fails', (_, item, says) => {
    const found = backwards(inReturn(item))
    expect(found).toMatchObject({ verdict: 'fail', change: expect.stringContaining('in its feed') })
    expect(found.says).toContain('sump- shorted to ground')
    expect(found.says).toContain('load sump is fed though switched off with 2')
    expect(found.says).toContain(says)
  })
})

describe('what switches in the feed', () => {
  it('leaves nothing on, and is said to have been switched off', () => {
    const found = backwards(text => text.replace(SWITCH, '{ thermostat: T1, rating: 16 A }').replace('S2: GEAR', 'T1: GEAR'))
    expect(found).toMatchObject({
      verdict: 'pass',
      says: expect.stringMatching(/single faults walked .* also with thermostat T1 off: none/)
    })
  })
  it('feeds its loads through others where a shared return opens, though it is drawn closed', () => {
    const text = readFileSync('examples/bad/feeds-backwards.yaml', 'utf8')
    const { findings } = judgeJob('job.yaml', text.replace(', state: open', ''))
    expect(findings.find(({ rule }) => rule === 'circuit/feeds-backwards')).toMatchObject({
      verdict: 'fail',
      says: expect.stringMatching(/block-frame open, with switch S3 off: load .* is fed/)
    })
  })
})

describe('a circuit that another position of its switches feeds from another source', () => {
  const LIES = 'ambient: 40 °C, insulation: 105 °C, bundle: 2'
  const FUSED = `wire: { size: 2.5 mm2, length: 2 m, ${LIES} }`
  const burns = (states: readonly [string, string], aux = 'from: b2+, to: a+', fuses = '', main = FUSED) => {
    const text = `
fettle: 1
job: { title: two batteries, practice: road }
circuit:
  source: { bus: 13.8 V, low: 12.2 V, high: 14.6 V, resistance: 20 mohm, ground: chassis }
  altitude: 0 m
  other-sources: [{ what: second battery, voltage: 12.8 V, resistance: 5 mohm, from: chassis, to: b2+ }]
  runs:
    - from: bus
      to: a+
      ${main}
      through:
${main === FUSED ? '        - { fuse: F1, rating: 10 A, style: blade, at: 25 °C, along: 0 m, resistance: 6 mohm }\n' : ''}        - { switch: S1, rating: 20 A, state: ${states[0]}, resistance: 4 mohm }
    - { ${aux}, name: aux, wire: { size: 1 mm2, length: 2 m, ${LIES} }, through: [${fuses}{ switch: S2, rating: 20 A, state: ${states[1]}, resistance: 4 mohm }] }
    - { from: a-, to: chassis, wire: { size: 2.5 mm2, length: 2 m, ${LIES} } }
  loads: [{ load: A, power: 60 W, voltage: 12 V, from: a+, to: a-, kind: resistive }]
`
    const { errors, findings } = judgeJob('job.yaml', text)
    expect(errors).toEqual([])
    return findings.find(({ rule }) => rule === 'circuit/burns')!
  }
  // By hand: 12.8 V over 5 + 4 + 1 mohm and 2 m of 19.5 mohm/m (IEC 60228, 20 °C), 39 mohm, are 261 A cold; no fuse stands in it.
  it.each([
    [['closed', 'open'] as const, /^a\+ shorted to ground, with switch S2 on, switch S1 off: run aux carries 2[345]\d A/],
    [['open', 'closed'] as const, /^a\+ shorted to ground: run aux carries 2[345]\d A/]
  ])('drawn %s it burns the wire of the other', (states, says) => {
    expect(burns(states)).toMatchObject({ verdict: 'fail', says: expect.stringMatching(says) })
  })
  // By hand: 12.8 V over 5 + 4 + 1 mohm and 39 mohm are 261 A at 20 °C, and over 39 · 1.334 mohm at 105 °C 206 A; through F2 in the
  // middle over 5 + 1 and 19.5 mohm 502 A, and over 26 mohm 400 A.
  it.each([
    ['no fuse', '', /^bus shorted to ground, with switch S2 on: run aux carries (\d+) A/, [206, 261]],
    [
      'a fuse in the middle',
      '{ fuse: F2, rating: 10 A, style: blade, at: 25 °C, along: 1 m }, ',
      /^F2 at its b2\+ side shorted to ground, with switch S2 on: run aux \(b2\+ to F2\) carries (\d+) A/,
      [400, 502]
    ]
  ] as const)('what would join two sources burns with %s', (_, fuses, pattern, [least, most]) => {
    const { verdict, says } = burns(['closed', 'open'], 'from: b2+, to: bus', fuses)
    const carries = Number(pattern.exec(says)?.[1])
    expect([verdict, carries >= least && carries <= most]).toEqual(['fail', true])
  })
  // 13.8 V over 20 + 4 + 4 mohm and 39 to 52 mohm, cold and hot, drive 172 to 206 A back through aux to its fuse.
  it('what burns with switches on together that each may be on is not judged', () => {
    const fuse = '{ fuse: F2, rating: 10 A, style: blade, at: 25 °C, along: 0 m }, '
    const { verdict, says } = burns(['closed', 'open'], 'from: b2+, to: a+', fuse, 'bond: 0 mohm')
    expect(verdict).toBe('not-judged')
    expect(says).toMatch(
      /^F2 at its a\+ side shorted to ground, with switch S2 on: run aux.* carries (1[789]\d|20\d) A, .* whether the switches can stand so is not told$/
    )
  })
  it('what is fused at both ends and would join two sources is walked with it closed, too', () => {
    const fuses = ['F2', 'F3'].map((mark, i) => `{ fuse: ${mark}, rating: 10 A, style: blade, at: 25 °C, along: ${2 * i} m }, `).join('')
    expect(burns(['closed', 'open'], 'from: b2+, to: bus', fuses)).toMatchObject({
      verdict: 'pass',
      says: expect.stringContaining('with switch S2 on')
    })
  })
})
