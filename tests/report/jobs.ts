import { readFileSync } from 'node:fs'
import type { JobAnswer } from '../../src/report/jobs-answer.ts'
import type { JobsPage, JobsPrinter } from '../../src/report/jobs-printer.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const EXAMPLES = ['gearbox-preheater', 'hydraulic-tank-sensor', 'bad/floor-too-thin', 'bad/too-much-drop', 'bad/wrench-too-large']
const SHORT = `fettle: 1
job: { title: 'less <known> & "quoted" | *more*' }
parts: { plug: { kind: plug, thread: M12x1.5 } }
holes: { left: { takes: plug, found: { diameter: 9.8 mm, depth: 19.0 mm } } }
`

/** Jobs with every verdict and with faults: examples, one that knows little, one that cannot be read, one that is missing. */
export const JOBS: readonly JobAnswer[] = [
  ...EXAMPLES.map(name => `examples/${name}.yaml`).map(file => judgeJob(file, readFileSync(file, 'utf8'))),
  judgeJob('a folder/"short" & sweet.yaml', SHORT),
  judgeJob('broken.yaml', SHORT.replace('diameter', 'diametr')),
  { file: '/gone.yaml', title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [], errors: [missing('/gone.yaml')] }
]

function missing(file: string) {
  return { found: 'no such file', accepted: 'a job file that can be read', where: { file, line: null, column: null, path: '' } }
}

export function printed(printer: (page: JobsPage) => JobsPrinter, jobs = JOBS, page: Partial<JobsPage> = {}): string {
  const { job, end } = printer({ columns: 100, colour: false, command: 'check', strict: false, ...page })
  return [...jobs.map(job), end(2)].join('')
}
