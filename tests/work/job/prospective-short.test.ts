// table: breaking capacity is held against the prospective current (IEC 60050-441, memory): a conductor without resistance in place of the
// protector. By hand: U/R, with 4.95 ohm/km of 4 mm2 and 7.98 ohm/km of 2.5 mm2 at 20 °C (IEC 60228, class 5), copper 1 + (T - 20)/254.5
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8')
  .replace('high: 28.4 V, resistance: 32 mohm', 'high: 28.4 V, resistance: 20 mohm')
  .replace('fuse: F9, rating: 5 A, style: blade, at: 25 °C, resistance: 22 mohm', 'FUSE')

const FUSE = 'fuse: F9, rating: 5 A, style: blade, at: 25 °C, resistance: 22 mohm'
/** The source, and 0.15 m of 4 mm2 at 40 °C. */
const BEFORE_OHM = 0.02 + 0.15 * 0.00495 * (1 + 20 / 254.5)

function near(fuse: string, ...changes: readonly (readonly [from: string, to: string])[]) {
  const text = [['FUSE', fuse] as const, ...changes].reduce((now, [from, to]) => {
    expect(now).toContain(from)
    return now.replace(from, to)
  }, JOB)
  const { errors, findings, results } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  const bounded = results.find(({ id }) => id === 'circuit.F9:protect.fault-near')
  return { bounded, verdict: findings.find(({ rule }) => rule === 'protect/interrupting')?.verdict }
}

// The short itself is taken as a thousandth of a milliohm.
const expectA = (found: ReturnType<typeof near>, ohm: number) => {
  expect((found.bounded?.high ?? 0) / (28.4 / ohm)).toBeCloseTo(1, 3)
}

it.each([
  ['22 mohm', '12 mohm'],
  ['200 mohm', '12 mohm'],
  ['22 mohm', '200 mohm']
])('a fuse of %s before a switch of %s: neither is counted', (fuseOhm, switchOhm) => {
  const found = near(FUSE.replace('22 mohm', fuseOhm), ['rating: 16 A, resistance: 12 mohm', `rating: 16 A, resistance: ${switchOhm}`])
  expectA(found, BEFORE_OHM)
  // 1365 A against 1000 A.
  expect(found.verdict).toBe('fail')
})

const WIRED = ['to: switched\n', 'to: switched\n      wire: { size: 2.5 mm2, length: 4 m }\n'] as const
it.each([
  ['where nobody said at which end of it: none', FUSE, 0],
  ['at its start: none', `${FUSE}, along: 0 m`, 0],
  ['a metre along: that metre', `${FUSE}, along: 1 m`, 0.00798],
  ['at its end: all of it', `${FUSE}, along: 4 m`, 4 * 0.00798]
])('of the wire of its own run, %s', (_, fuse, ohm) => {
  expectA(near(fuse, WIRED), BEFORE_OHM + ohm)
})

it('a run that is drawn from its far end counts what stands on the other side', () => {
  const turned = ['- from: panel\n      to: switched\n', '- from: switched\n      to: panel\n'] as const
  const wired = ['to: panel\n      through', 'to: panel\n      wire: { size: 2.5 mm2, length: 4 m }\n      through'] as const
  expectA(near(`${FUSE}, along: 3 m`, turned, wired), BEFORE_OHM + 0.00798)
})

it('what stands before the run counts, what stands behind it does not', () => {
  expectA(near(FUSE, ['length: 4.2 m', 'length: 40 m']), BEFORE_OHM)
  const far = near(FUSE, ['length: 0.15 m', 'length: 3 m'])
  expectA(far, 0.02 + 20 * (BEFORE_OHM - 0.02))
  // 787 A.
  expect(far.verdict).toBe('pass')
})
