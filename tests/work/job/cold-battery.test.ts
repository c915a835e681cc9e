// example: 100 Ah at 5 A with an exponent of 1 last 20 h
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const verdictWith = (cold: string) =>
  judgeJob(
    'x.yaml',
    `fettle: 1
job: { title: battery }
parts: { part: { kind: plug, thread: M12x1.5 } }
holes: { left: { takes: part, found: { diameter: 9.8 mm, depth: 19 mm } } }
supply:
  battery: { capacity: 100 Ah, rate: 20 h, peukert: 1, hold: 17 h${cold} }
  loads: [{ load: pump, current: 5 A, on: 100 % }]
`
  ).findings.find(({ rule }) => rule === 'supply/endurance')!.verdict

it.each([
  ['', 'caution'],
  [', cold: 100 %', 'pass'],
  [', cold: 50 %', 'fail']
])('a battery that lasts only where the cold takes nothing off passes where that was told alone: "%s"', (cold, verdict) =>
  expect(verdictWith(cold)).toBe(verdict)
)
