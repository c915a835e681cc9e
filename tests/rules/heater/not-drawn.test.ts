// table: holes that take a heater beside the loads that are drawn, by eye; names are invented
import { expect, it } from 'vitest'
import { notDrawn } from '../../../src/rules/heater/not-drawn.ts'
import { asked } from '../../../src/rules/rule.ts'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { jobText } from '../../work/prove/invented.ts'

it.each([
  ['each has its load', ['left', 'right'], ['left', 'right', 'lamp'], 'pass'],
  ['no hole takes one', [], ['lamp'], 'pass'],
  ['one is forgotten', ['left', 'right'], ['left', 'lamp'], 'caution'],
  ['none is drawn', ['left'], [], 'caution']
])('%s', (_, heaterHoles, loadNames, verdict) => {
  expect(asked(notDrawn, { heaterHoles, loadNames }).verdict).toBe(verdict)
})

it('every hole is named, the first with its place', () => {
  const found = asked(notDrawn, { heaterHoles: ['left', 'mid', 'right'], loadNames: ['mid'] })
  expect(found.says).toBe(
    'hole left takes a heater, the circuit has no load of it; hole right takes a heater, the circuit has no load of it'
  )
  expect(found.at).toEqual(['holes', 'left', 'takes'])
})

const RIGHT = '    - { heater: right, from: right+, to: right- }\n'
const found = (text: string) => {
  const { errors, findings } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  return findings.find(({ rule }) => rule === 'heater/not-drawn')
}

it('a job of two heaters whose second load is forgotten is told, at the hole', () => {
  expect(found(jobText())?.verdict).toBe('pass')
  expect(found(jobText().replace(RIGHT, ''))).toMatchObject({
    verdict: 'caution',
    says: 'hole right takes a heater, the circuit has no load of it'
  })
})

it('a plug is no heater, and a load of the name of the hole is one', () => {
  const plugged = jobText()
    .replace('holes:', '  blank: { kind: plug, thread: M12x1.5 }\nholes:')
    .replace('right: *head', 'right: { takes: blank, found: { diameter: 9.6 mm, depth: 22 mm } }')
    .replace(RIGHT, '')
  expect(found(plugged)?.verdict).toBe('pass')
  expect(found(jobText().replace('heater: right,', 'load: right, resistance: 12 ohm,'))?.verdict).toBe('pass')
})

it('a job without a circuit is not asked', () => {
  const text = jobText()
  expect(found(text.slice(0, text.indexOf('circuit:')))).toBeUndefined()
})
