// example: heaters that come back through their own bodies; an example job, changed
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8')

function verdictOf(change: (text: string) => string) {
  const { errors, findings } = judgeJob('job.yaml', change(JOB))
  expect(errors).toEqual([])
  return findings.filter(({ rule }) => rule === 'ground/through-body').map(({ verdict }) => verdict)
}

const grounded = (text: string) => text.replace('from: sump+, to: sump- }', 'from: sump+, to: frame }')

it('a wire of its own', () => {
  expect(verdictOf(text => text)).toEqual(['pass'])
})

it('a heater that ends at the 0 V node, and one whose threads are sealed besides', () => {
  expect(verdictOf(grounded)).toEqual(['caution'])
  expect(verdictOf(text => grounded(text).replace('threads-with: nothing', 'threads-with: sealant'))).toEqual(['fail'])
})

it('a point that another load ends at is no terminal of the heater', () => {
  const shared = (text: string) =>
    text.replace(/\n( +)- \{ heater: sump/, '\n$1- { load: lamp, resistance: 50 ohm, from: sump+, to: sump- }\n$1- { heater: sump')
  expect(verdictOf(shared)).toEqual(['caution'])
})
