// example: what flows at switch-on, load by load, and what the switch before it must be rated for; invented jobs, figures by hand
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const HEATER = '{ load: pad, resistance: 6 ohm, kind: resistive, inrush: { times: 2, lasts: 3 s }, from: fed, to: frame }'
const LAMP = '{ load: lamp, resistance: 12 ohm, kind: lamp, inrush: { times: 10, lasts: 100 ms }, from: fed, to: frame }'
const FAN = '{ load: fan, resistance: 12 ohm, kind: motor, inrush: { times: 5, lasts: 500 ms }, from: fed, to: frame }'

function judged(...loads: readonly string[]) {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: switched on }
circuit:
  source: { bus: 12 V, resistance: 50 mohm, ground: frame }
  runs:
    - { from: bus, to: panel, bond: 20 mohm, through: [{ fuse: F1, rating: 10 A, style: blade, resistance: 10 mohm }] }
    - { from: panel, to: fed, bond: 10 mohm, through: [{ switch: S1, rating: 20 A, resistance: 10 mohm }] }
  loads:
${loads.map(load => `    - ${load}\n`).join('')}`
  )
  expect(job.errors).toEqual([])
  const figureOf = (id: string) => job.results.find(one => one.id === `circuit.${id}`)?.value
  const found = (rule: string) => job.findings.find(one => one.rule === rule)!
  return { figureOf, found }
}

const without = (load: string) => load.replace(/inrush: \{.*?\}, /, '')

describe('a heater, a lamp and a fan on one switch', () => {
  // 6 ohm beside 12 ohm and 12 ohm are 3 ohm, behind 0.1 ohm: 12 V over 3.1 ohm, half of it in the heater, a quarter in each of the others.
  const quarterA = 12 / 3.1 / 4

  it('each takes its own inrush, and the fuse is asked about the same current as the switch', () => {
    const { figureOf, found } = judged(HEATER, LAMP, FAN)
    const closingA = quarterA * (2 * 2 + 10 + 5)
    expect(figureOf('S1:protect.switch.make')).toBeCloseTo(closingA, 6)
    expect(figureOf('S1:protect.switch.needed')).toBeCloseTo(closingA, 6)
    expect(closingA.toFixed(2)).toBe('18.39')
    expect(found('protect/inrush').says).toContain('at 18.39 A: there it')
    // AC 43.13-1B table 11-4 (read-secondary), 12 V DC: resistive 1, lamp 5, motor 2.
    expect(found('switch/under-rated')).toMatchObject({
      verdict: 'pass',
      says: expect.stringContaining('pad times 1, lamp times 5, fan times 2 (12 V DC row), closing on 18.39 A')
    })
  })

  it('the order of the loads changes nothing', () => {
    const makes = [judged(HEATER, LAMP, FAN), judged(FAN, LAMP, HEATER)].map(({ figureOf }) => figureOf('S1:protect.switch.make') as number)
    expect(makes[0]).toBeCloseTo(makes[1]!, 9)
  })

  it('where a lamp tells none, the fuse is not judged and names it; the switch counts it by its factor', () => {
    const { figureOf, found } = judged(HEATER, without(LAMP), FAN)
    expect(found('protect/inrush')).toMatchObject({ verdict: 'not-judged', lacks: 'circuit.loads.1.inrush' })
    expect(found('protect/inrush').says).toMatch(/^circuit\.loads\.1\.inrush is not given: of lamp, /)
    expect(figureOf('S1:protect.switch.make')).toBeUndefined()
    expect(figureOf('S1:protect.switch.needed')).toBeCloseTo(quarterA * (2 * 2 + 5 + 5), 6)
    expect(found('switch/under-rated')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('the inrush of lamp is not given')
    })
  })

  it('the factors are added load by load too', () => {
    const steady = (load: string) => load.replace(/times: \d+/, 'times: 1')
    const { figureOf } = judged(steady(HEATER), steady(LAMP), steady(FAN))
    expect(figureOf('S1:protect.switch.needed')).toBeCloseTo(quarterA * (2 * 1 + 5 + 2), 6)
  })
})

// 24 ohm three times behind 0.1 ohm take 12 V/8.1 ohm, a third each, and at first the lamp 30 times that: 1.580 times the rating, at which the
// straight line of the sheet between 0.75 s and 0.25 s has 0.2709 s. 20 ms of it are 7.38 %; the pads that take no more for 5 s are nothing.
it('a lamp that is cold for an instant is not held against the time of a heater', () => {
  const pad = (name: string, times: number) =>
    `{ load: ${name}, resistance: 24 ohm, kind: resistive, inrush: { times: ${times}, lasts: 5 s }, from: fed, to: frame }`
  const lamp = LAMP.replace('12 ohm', '24 ohm').replace('times: 10, lasts: 100 ms', 'times: 30, lasts: 20 ms')
  const found = judged(pad('one', 1), pad('two', 1), lamp).found('protect/inrush')
  expect(found).toMatchObject({ verdict: 'pass', says: expect.stringContaining('most of it at 15.80 A: there it may open in 0.27 s') })
  expect(found.value).toBeCloseTo(7.38, 2)
  // Four times as much for 5 s is beyond it by itself.
  expect(judged(pad('one', 30), pad('two', 1), lamp).found('protect/inrush').verdict).toBe('fail')
})

// 12 V over 6.1 ohm are 1.967 A.
const HELD = 'nothing behind it takes more when it is switched on'
it.each([
  ['a coil', '{ load: coil, resistance: 6 ohm, kind: inductive, from: fed, to: frame }', 'pass', HELD],
  ['a resistance that is called one', '{ load: pad, resistance: 6 ohm, kind: resistive, from: fed, to: frame }', 'pass', HELD],
  [
    'a resistance of no kind',
    '{ load: pad, resistance: 6 ohm, from: fed, to: frame }',
    'caution',
    'neither kind nor inrush of pad is given'
  ],
  ['what takes one current at any voltage', '{ load: radio, current: 2 A, from: fed, to: frame }', 'not-judged', 'of radio'],
  ['a motor', '{ load: fan, resistance: 6 ohm, kind: motor, from: fed, to: frame }', 'not-judged', 'of fan']
])('without an inrush, %s', (_, load, verdict, says) => {
  const { found } = judged(load)
  expect(found('protect/inrush')).toMatchObject({ verdict, says: expect.stringContaining(says) })
})

it('of a heater nobody knows it but its maker: beside a lamp that tells its own the fuse is not judged', () => {
  const job = readFileSync('examples/gearbox-preheater.yaml', 'utf8')
    .replace('inrush: { times: 1.05, lasts: 10 s }, ', '')
    .replace(/( +)- \{ heater: sump.*\n/, `$&$1- ${LAMP.replaceAll('fed', 'sump+')}\n`)
  const found = judgeJob('job.yaml', job).findings.find(({ rule }) => rule === 'protect/inrush')
  expect(found).toMatchObject({ verdict: 'not-judged', lacks: 'circuit.loads.0.inrush' })
})
