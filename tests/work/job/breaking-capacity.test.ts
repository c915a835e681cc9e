// table: what is printed on a fuse or breaker counts instead of what is published of its style. By hand: the prospective short is 28.4 V over
// 20 mohm and 0.15 m of 4 mm2 at 40 °C (4.95 ohm/km at 20 °C, IEC 60228, class 5), 1365 A; a blade fuse breaks 1000 A (ISO 8820-3)
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { measureJob } from '../../../src/work/measure/measure-job.ts'

const DRAWN = '{ fuse: F9, rating: 5 A, style: blade, at: 25 °C, resistance: 22 mohm }'
const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8').replace(
  'high: 28.4 V, resistance: 32 mohm',
  'high: 28.4 V, resistance: 20 mohm'
)
const BREAKER = 'breaker: F9, rating: 5 A, style: thermal, at: 25 °C'
const FUSE = 'fuse: F9, rating: 5 A, style: blade, at: 25 °C'

function withPart(part: string): string {
  expect(JOB).toContain(DRAWN)
  return JOB.replace(DRAWN, `{ ${part} }`)
}

function found(part: string) {
  const { errors, findings, results } = judgeJob('job.yaml', withPart(part))
  expect(errors).toEqual([])
  return { ...findings.find(({ rule }) => rule === 'protect/interrupting')!, breaks: results.find(({ id }) => id === BREAKS) }
}

const BREAKS = 'circuit.F9:protect.breaking-capacity'

it.each([
  ['fail', FUSE],
  ['pass', `${FUSE}, breaking-capacity: 1400 A`],
  ['fail', `${FUSE}, breaking-capacity: 1300 A`],
  ['fail', `${FUSE}, breaking-capacity: 1400 A ± 5 %`],
  ['pass', `${BREAKER}, breaking-capacity: 3 kA`],
  ['fail', `${BREAKER}, breaking-capacity: 1300 A`]
])('%s: %s', (verdict, part) => {
  expect(found(part).verdict).toBe(verdict)
})

it('is told as given, with its bounds', () => {
  const { says, limit, breaks } = found(`${BREAKER}, breaking-capacity: 2000 A ± 5 %`)
  expect(breaks).toMatchObject({ value: 2000, low: 1900, high: 2100 })
  expect(limit).toBe(1900)
  expect(says).toContain('(as given for the bus)')
})

it('where nobody gave it and nothing is published the field is asked for by its place, and measure asks for it', () => {
  const { verdict, lacks, change } = found(BREAKER)
  expect({ verdict, lacks }).toEqual({ verdict: 'not-judged', lacks: 'circuit.runs.1.through.0.breaking-capacity' })
  expect(change).toBe('give circuit.runs.1.through.0.breaking-capacity')
  const asks = (part: string) =>
    measureJob('job.yaml', withPart(part))
      .fields.filter(({ path }) => path.at(-1) === 'breaking-capacity')
      .map(({ path, opens }) => [path.join('.'), opens])
  expect(asks(BREAKER)).toEqual([['circuit.runs.1.through.0.breaking-capacity', ['circuit.F9 protect/interrupting']]])
  expect(asks(FUSE)).toEqual([])
  expect(asks(`${BREAKER}, breaking-capacity: 3 kA`)).toEqual([])
})

it.each([
  ['pass', 'fuse: F9, rating: 5 A, at: 25 °C, breaking-capacity: 1400 A'],
  ['fail', 'fuse: F9, rating: 5 A, at: 25 °C, breaking-capacity: 1300 A'],
  ['pass', 'breaker: F9, at: 25 °C, breaking-capacity: 1400 A'],
  ['pass', 'fuse: F9, style: blade, at: 25 °C, breaking-capacity: 1400 A'],
  ['not-judged', 'fuse: F9, rating: 5 A, at: 25 °C']
])('of no known style or rating it is judged by what was read on it, and nothing else of it is: %s: %s', (verdict, part) => {
  const { errors, findings } = judgeJob('job.yaml', withPart(part))
  expect(errors).toEqual([])
  const of = (rule: string) => findings.find(one => one.rule === rule && one.thing === 'circuit.F9')
  expect(of('protect/interrupting')?.verdict).toBe(verdict)
  expect(of('protect/far-end-short')?.verdict).toBe('not-judged')
  if (verdict !== 'not-judged') expect(of('protect/interrupting')?.value).toBeCloseTo(1365, 0)
})

it('a voltage that such parts are not made for is told beside the figure that was read on one', () => {
  const at = (bus: string) => {
    const text = withPart(`${FUSE}, breaking-capacity: 5 kA`).replace(/bus: 2\d(\.\d)? V, low: [^,]+, high: 28\.4 V/, bus)
    expect(text).toContain(bus)
    return judgeJob('job.yaml', text).findings.find(({ rule }) => rule === 'protect/interrupting')
  }
  // ISO 8820-3 (read-secondary): blade fuses are rated 32 V or 58 V.
  expect(at('bus: 30 V, low: 28 V, high: 32 V')?.verdict).toBe('pass')
  expect(at('bus: 48 V, low: 44 V, high: 56 V')).toMatchObject({
    verdict: 'caution',
    limit: 5000,
    says: expect.stringContaining('56.00 V')
  })
  expect(at('bus: 56 V, low: 50 V, high: 60 V')).toMatchObject({
    verdict: 'caution',
    limit: 5000,
    says: expect.stringContaining('58.00 V at most')
  })
})
