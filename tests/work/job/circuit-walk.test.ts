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
