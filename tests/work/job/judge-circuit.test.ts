// example: circuits that have no answer say so in words, and no figure of a last try gets out; invented jobs
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = `
fettle: 1
job: { title: circuit }
circuit:
  source: { bus: 12 V, resistance: 20 mohm, ground: frame }
  altitude: 0 m
  runs:
    - { from: bus, to: fed, wire: { size: 1 mm2, length: 9 m, temperature: 20 °C } }
    - { from: back, to: frame, wire: { size: 1 mm2, length: 9 m, temperature: 20 °C } }
  loads:
    - { load: inverter, power: 60 W, from: fed, to: back }
`
const SECOND = '  other-sources: [{ what: second, voltage: 24 V, resistance: 0 ohm, from: frame, to: bus }]\n'

function judged(change: (text: string) => string = text => text) {
  const job = judgeJob('job.yaml', change(JOB))
  expect(job.errors).toEqual([])
  return job
}

describe('a circuit without an answer', () => {
  it.each([
    ['no operating point', (text: string) => text.replace('60 W', '300 W'), /no operating point.*300 W.*most that can arrive.* 97 W/],
    ['an open return', (text: string) => text.replace('to: frame', 'to: nowhere'), /no run leads from "back" to "frame"/],
    ['no return at all', (text: string) => text.replace(/^.*from: back, to: frame.*\n/m, ''), /no run leads from "back" to "frame"/],
    [
      'a floating part',
      (text: string) => `${text}    - { load: lamp, power: 5 W, voltage: 12 V, from: a, to: b }\n`,
      /no run leads from "a" to "bus": load lamp/
    ],
    [
      'sources at odds',
      (text: string) => text.replace('20 mohm', '0 ohm').replace('  altitude', `${SECOND}  altitude`),
      /"source second", "source" has no resistance.*12 V over/
    ]
  ])('%s', (_, change, says) => {
    const job = judged(change)
    expect(job.verdict).toBe('fail')
    expect(job.findings).toEqual([
      expect.objectContaining({ rule: 'circuit/no-answer', verdict: 'fail', says: expect.stringMatching(says) })
    ])
    expect(job.results.filter(({ id }) => id.startsWith('circuit'))).toEqual([])
    expect(JSON.stringify(job)).not.toMatch(/NaN|Infinity|undefined/)
  })
})

describe('a load of constant power', () => {
  it('settles where power, drop and bus agree', () => {
    // By hand: class 5 of 1 mm2 is 19.5 ohm/km, 18 m of it and 20 mohm are 0.371 ohm; v (12 - v)/0.371 = 60 gives v = 9.733 V.
    const drop = judged().results.find(({ id }) => id === 'circuit.inverter:drop.voltage-at-load')
    const v = (12 + Math.sqrt(144 - 4 * 0.371 * 60)) / 2
    expect(drop?.value).toBeCloseTo(v, 6)
  })

  it('what its wire would carry is not judged where nobody told how it lies', () => {
    const verdicts = judged().findings.filter(({ rule }) => rule === 'wire/over-ampacity')
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['not-judged', 'not-judged'])
  })
})

describe('what no fuse stands before', () => {
  const LIES = 'insulation: 105 °C, ambient: 25 °C, bundle: 1'
  const lying = (text: string) => text.replaceAll('temperature: 20 °C', LIES).replace('power: 60 W', 'current: 3 A')
  const verdictsOf = (change: (text: string) => string) =>
    Object.fromEntries(judged(text => change(lying(text))).findings.map(({ rule, verdict }) => [rule, verdict]))

  it('burns when it is shorted, and no place of a protector is known', () => {
    // 12 V over 20 mohm and 9 m of 19.5 ohm/km are 61 A in 1 mm2.
    expect(verdictsOf(text => text)).toMatchObject({
      'circuit/burns': 'fail',
      'protect/too-far': 'not-judged',
      'wire/short-circuit': 'not-judged'
    })
  })
  it('behind a fuse near the source it does not', () => {
    const fused = (text: string) =>
      text.replace('from: bus, to: fed, wire', 'from: bus, to: fed, through: [{ fuse: F1, rating: 5 A, style: blade, along: 0 m }], wire')
    expect(verdictsOf(fused)).toMatchObject({ 'circuit/burns': 'pass' })
  })
  it('a load of constant current feeds no other one backwards', () => {
    const two = (text: string) => `${text}    - { load: lamp, current: 1 A, from: fed, to: back }\n`
    expect(verdictsOf(two)).toMatchObject({ 'circuit/feeds-backwards': 'pass' })
  })
  it('a return through threads fails', () => {
    const threads = (text: string) => text.replace('from: back, to: frame, wire', 'from: back, to: frame, threads: yes, wire')
    expect(verdictsOf(threads)).toMatchObject({ 'ground/through-threads': 'fail' })
  })
  it('what comes back through threads alone is not judged by what they may carry', () => {
    const threads = (text: string) => text.replace('from: back, to: frame, wire', 'from: back, to: frame, threads: yes, wire')
    const found = judged(text => threads(lying(text))).findings.filter(({ rule }) => rule === 'drop/too-much')
    expect(found).toEqual([expect.objectContaining({ verdict: 'not-judged', says: expect.stringContaining('through threads alone') })])
  })
  it('threads beside a bad way back do not better it', () => {
    const bad = (text: string) => text.replace('from: back, to: frame, wire', 'from: back, to: frame, bond: 500 mohm, wire')
    const beside = (text: string) => bad(text).replace('  loads:', '    - { from: back, to: frame, threads: yes, bond: 1 mohm }\n  loads:')
    const dropOf = (change: (text: string) => string) =>
      judged(text => change(lying(text))).results.find(({ id }) => id === 'circuit.inverter:drop.drop')?.value
    expect(dropOf(beside)).toBeCloseTo(Number(dropOf(bad)), 9)
  })
})

it('a run of no length joins without resistance', () => {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: joined }
circuit:
  source: { bus: 12 V, resistance: 100 mohm, ground: frame }
  runs:
    - { from: bus, to: panel, wire: { size: 4 mm2, length: 0 m, ambient: 30 °C, insulation: 105 °C } }
    - { from: panel, to: fed, wire: { size: 2.5 mm2, length: 5 m, temperature: 20 °C } }
  loads: [{ load: pad, resistance: 6 ohm, from: fed, to: frame }]
`
  )
  expect([job.errors, job.findings.filter(({ rule }) => rule === 'circuit/no-answer')]).toEqual([[], []])
  // Class 5 of 2.5 mm2 is 7.98 ohm/km: 0.0399 ohm behind 0.1 ohm.
  const currentA = job.results.find(({ id }) => id === 'circuit.bus-panel:wire.current')?.value
  expect(currentA).toBeCloseTo(12 / 6.1399, 6)
})
