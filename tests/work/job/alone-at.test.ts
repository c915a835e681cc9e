// example: heaters that come back by wires of their own or share one; an invented circuit, volts by hand with Ohm's law
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const WIRE = 'wire: { size: 2.5 mm2, length: 6 m, temperature: 20 °C }'

// 6.25 A in 6 m of 2.5 mm², some 7.4 milliohm a metre, are some 0.28 V: more than 0.2 V.
const verdictOf = (returns: string, { limit = '', loads = 1, back = 'h-' } = {}) => {
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
  .map(i => `    - { load: l${i}, resistance: 3.84 ohm, from: h+, to: ${back} }\n`)
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

it('a body is grounded, and so is what has a joint: what is screwed into it is lifted, drawn or not', () => {
  const block = (run: string) => verdictOf(OWN.replace('h-', 'block').replace(WIRE, `${WIRE}${run}`), { back: 'block' })
  expect(block('')).toBe('fail')
  expect(verdictOf(OWN.replace(' }\n', ', bond: 20 mohm }\n').replace(/ }$/, ', bond: 20 mohm }'))).toBe('fail')
})

// l2 and l3 of 0.96 ohm share a wire of 2.5 mm², 50 A over 6 m; l1 alone is lifted by more still while these are off and the bus is high.
it.each(['closed', 'open'])('what is shared is asked in the position that lifts it most, though the switch is drawn %s', state => {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: returns, practice: boat }
circuit:
  source: { bus: 24 V, ground: frame, resistance: 0.05 ohm }
  runs:
    - { from: bus, to: h+, wire: { size: 2.5 mm2, length: 1 m, temperature: 20 °C } }
    - { from: bus, to: s+, wire: { size: 2.5 mm2, length: 1 m, temperature: 20 °C }, through: [{ switch: S2, state: ${state} }] }
    - { from: h-, to: frame, wire: { size: 2.5 mm2, length: 12 m, temperature: 20 °C } }
    - { from: bar, to: frame, wire: { size: 2.5 mm2, length: 6 m, temperature: 20 °C } }
  loads:
    - { load: l1, resistance: 3.84 ohm, from: h+, to: h- }
    - { load: l2, resistance: 7.68 ohm, from: s+, to: bar }
    - { load: l3, resistance: 7.68 ohm, from: s+, to: bar }
`
  )
  expect(errors).toEqual([])
  expect(findings.find(({ rule }) => rule === 'ground/shift')).toMatchObject({
    verdict: 'fail',
    says: expect.stringContaining('voltage of bar')
  })
})

it('a limit of the job is for every point', () => {
  expect(verdictOf(OWN, { limit: 'limits: { ground-shift: { greatest: 0.2 V, reason: a sender sits there } }' })).toBe('fail')
})
