// example: this program fails at one file of several
import { expect, it, vi } from 'vitest'

vi.mock('../../src/work/job/judge-job.ts', async original => {
  const real = await original<typeof import('../../src/work/job/judge-job.ts')>()
  const judgeJob: typeof real.judgeJob = (file, ...rest) => {
    if (file.includes('sensor')) throw new RangeError('a fall of its own')
    return real.judgeJob(file, ...rest)
  }
  return { ...real, judgeJob }
})
const { ran } = await import('./run.ts')

it('the others keep their verdicts, and it ends with 3', async () => {
  const { exit, out, err } = await ran(['check', 'examples/hydraulic-tank-sensor.yaml', 'examples/gearbox-preheater.yaml', '--json'])
  expect(exit).toBe(3)
  expect(JSON.parse(out).jobs.map(({ verdict }: { verdict: string | null }) => verdict)).toEqual([null, 'caution'])
  expect(err).toContain('hydraulic-tank-sensor.yaml: error: found a fault of this program, not of this file: RangeError: a fall of its own')
})
