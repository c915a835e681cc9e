// example: a load that is switched off; figures invented
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const text = readFileSync('examples/bad/too-much-drop.yaml', 'utf8')
const off = text.replace('switch: S2, rating: 16 A', 'switch: S2, rating: 16 A, state: open')

it('takes nothing, and is told so without a fault', () => {
  const { errors, results } = judgeJob('off.yaml', off)
  expect(errors).toEqual([])
  for (const id of ['drop.voltage-at-load', 'drop.current', 'drop.power'])
    expect(results.find(one => one.id === `circuit.sump:${id}`)).toMatchObject({ value: expect.closeTo(0, 12) })
})

// What the network refuses has to reach the reader in words, whatever the job.
it('a part that hangs on nothing is refused in words', () => {
  const loose = text.replace('  runs:\n', '  runs:\n    - { from: spare+, to: spare-, bond: 1 ohm }\n')
  const { findings } = judgeJob('x.yaml', loose)
  expect(findings.map(({ says }) => says).join(' ')).toMatch(/no path to the 0 V node/)
})

it('a return that was not drawn fails, and the run to draw is named', () => {
  const { findings, results } = judgeJob('x.yaml', text.replace('      to: frame\n', '      to: nowhere\n'))
  expect(findings.find(({ rule }) => rule === 'circuit/no-answer')).toMatchObject({
    verdict: 'fail',
    says: expect.stringMatching(/no run leads from ".+" to "frame": load sump gets nothing/),
    change: expect.stringContaining('to: frame, wire:')
  })
  expect(JSON.stringify([findings, results])).not.toMatch(/NaN|Infinity/)
})

it('constant power without an operating point is refused in words', () => {
  const heavy = text.replace('- { heater: sump', '- { load: pump, power: 90 kW, from: sump+, to: sump- }\n    - { heater: sump')
  const { findings, errors } = judgeJob('x.yaml', heavy)
  expect(errors).toEqual([])
  expect(findings.map(({ says }) => says).join(' ')).toMatch(/no operating point/)
  expect(JSON.stringify(findings)).not.toMatch(/NaN|Infinity/)
})

it('sources that contradict each other are refused in words', () => {
  const two = text
    .replace('  runs:\n', '  other-sources: [{ what: second, voltage: 12 V, resistance: 0 ohm, from: frame, to: bus }]\n  runs:\n')
    .replace('resistance: 32 mohm, ground', 'resistance: 0 ohm, ground')
  const { findings } = judgeJob('x.yaml', two)
  expect(findings.map(({ says }) => says).join(' ')).toMatch(/has no resistance, and its sources leave/)
})
