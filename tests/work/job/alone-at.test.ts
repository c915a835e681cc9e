// example: heaters that come back by wires of their own or share one; an invented circuit, volts by hand with Ohm's law
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const WIRE = 'wire: { size: 2.5 mm2, length: 6 m, temperature: 20 °C }'

// 6.25 A in 6 m of 2.5 mm², some 7.4 milliohm a metre, are some 0.28 V: more than 0.2 V.
const verdictOf = (returns: string, { limit = '', loads = 1 } = {}) => {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: returns, practice: boat }
${limit}
circuit:
  source: { bus: 24 V, ground: frame, resistance: 0.01 ohm }
  runs:
    - { from: bus, to: h+, wire: { size: 2.5 mm2, length: 1 m, temperature: 20 °C } }
${returns}
  loads:
${[1, 2]
  .slice(0, loads)
  .map(i => `    - { load: l${i}, resistance: 3.84 ohm, from: h+, to: h- }\n`)
  .join('')}`
  )
  expect(errors).toEqual([])
  return findings.find(({ rule }) => rule === 'ground/shift')?.verdict
}
const OWN = `    - { from: h-, to: frame, ${WIRE} }`

it('a wire of its own lifts nothing', () => {
  expect(verdictOf(OWN)).not.toBe('fail')
})

it('a wire that two share does, and so does what goes on through the metal', () => {
  expect(verdictOf(OWN, { loads: 2 })).toBe('fail')
  expect(verdictOf(`    - { from: h-, to: block, bond: 1 mohm }\n    - { from: block, to: frame, ${WIRE} }`)).toBe('fail')
})

it('a limit of the job is for every point', () => {
  expect(verdictOf(OWN, { limit: 'limits: { ground-shift: { greatest: 0.2 V, reason: a sender sits there } }' })).toBe('fail')
})
