// example: jobs for the eye
import { expect, it } from 'vitest'
import { printer } from '../../src/report/jobs-page.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { JOBS, printed } from './jobs.ts'

const job = (rest: string) => judgeJob('one.yaml', `fettle: 1\njob: { title: One }\n${rest}`)

it('says once what several rules lack, and names them all', () => {
  const unknown = job(`parts: { plug: { kind: plug, thread: M10x1, thread-length: 9 mm, torque: { card: 8 N·m } } }
holes: { left: { takes: plug, casting: { alloy: unobtainium }, found: { diameter: 8.5 mm, depth: 15 mm } } }
`)
  const lacking = unknown.findings.filter(({ says }) => says.includes('unknown casting alloy'))
  expect(lacking.length).toBeGreaterThan(2)
  const text = printed(printer, [unknown], { columns: 400 })
  expect(text.match(/unknown casting alloy/g)).toHaveLength(1)
  expect(text).toContain(`NOT JUDGED  ${lacking.map(({ rule }) => rule).join(', ')}  `)
})

it('tells an assumed number without the last digits of a sum in binary', () => {
  const binary = { value: 0.1 + 0.2, low: null, high: null, unit: 'ohm', assumed: 'default: a sum', text: '0.3 ohm' }
  const told = printed(printer, [{ ...JOBS[0]!, inputs: { 'circuit.sum': binary } }], { columns: 400 })
  expect(told).toContain('circuit.sum 0.3 ohm (a sum)')
})
