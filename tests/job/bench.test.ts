// example: tools and meters of a bench that a job names; files made for that
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { benchNamed } from '../../src/job/bench-name.ts'
import { readJob } from '../../src/job/read-job.ts'
import { ran } from '../commands/run.ts'

const JOB = `fettle: 1
job:
  title: a plug
bench: shop.bench.yaml
parts:
  plug: { kind: plug, thread: M12x1.5, thread-length: 11 mm, torque: { card: 20 N·m } }
holes:
  left: { takes: plug, found: { diameter: 9.8 mm, depth: 19.0 mm } }
`
const BENCH = `fettle: 1
tools:
  wrench: { range: 5..25 N·m, accuracy: 4 % }
  stop-error: 0.3 mm
  taps: [{ name: bottoming, chamfer: 2 }]
proof:
  leads: 0.3 ohm
  meter: { volts: { percent: 0.5, digits: 2 } }
`
const bench = (text: string) => ({ file: 'shop.bench.yaml', text })

describe('what stands in both', () => {
  it('a job without tools has those of the bench, and nothing of them is assumed', () => {
    const { job, errors } = readJob('job.yaml', JOB, bench(BENCH))
    expect(errors).toEqual([])
    expect(job.tools['stop-error']).toMatchObject({ value: 0.3, assumed: undefined })
    expect(job.tools.taps.map(({ name }) => name)).toEqual(['bottoming'])
    expect(job.proof.leads?.value).toBe(0.3)
    expect(job.proof.meter.volts?.percent).toBe(0.5)
  })

  it('the job goes before, a wrench as a whole', () => {
    const own = `${JOB}tools: { wrench: { range: 10..50 N·m }, stop-error: 0.1 mm }\n`
    const { tools } = readJob('job.yaml', own, bench(BENCH)).job
    expect(tools['stop-error'].value).toBe(0.1)
    expect(tools.wrench).toMatchObject({ range: { low: 10, high: 50 }, accuracy: null })
    expect(tools.taps).toHaveLength(1)
  })

  it('what neither says is assumed as ever', () => {
    const { tools } = readJob('job.yaml', JOB, bench('fettle: 1\n')).job
    expect(tools['stop-error'].assumed).toContain('exact stop')
  })

  it('a place is told in the file where it stands', () => {
    const { locate } = readJob('job.yaml', JOB, bench(BENCH))
    expect(locate(['tools', 'stop-error'])).toMatchObject({ file: 'shop.bench.yaml', line: 4 })
    expect(locate(['holes', 'left', 'takes'])).toMatchObject({ file: 'job.yaml', line: 8 })
    expect(locate(['tools', 'tap-clear'])).toMatchObject({ file: 'job.yaml' })
  })
})

describe('what cannot be read', () => {
  it.each([
    ['an unknown field of the bench', JOB, bench(BENCH.replace('wrench', 'wrensh')), 'shop.bench.yaml', 3, 'unknown field "wrensh"'],
    ['a bench that is no YAML', JOB, bench('fettle: [\n'), 'shop.bench.yaml', 2, 'left open'],
    ['a bench that is no text', JOB, bench('fettle: 1\0\n'), 'shop.bench.yaml', 1, 'control character'],
    ['a bench that nobody opened', JOB, null, 'job.yaml', 4, 'could not be opened'],
    ['a bench with another name', JOB.replace('shop.bench', 'shop'), null, 'job.yaml', 4, '"shop.yaml"']
  ])('%s', (_, text, at, file, line, found) => {
    const [error] = readJob('job.yaml', text, at).errors
    expect(error?.where).toMatchObject({ file, line })
    expect(error?.found).toContain(found)
  })
})

it.each([
  ['bench: a.bench.yaml', 'a.bench.yaml'],
  ['bench: "a b.bench.yml"  # ours', 'a b.bench.yml'],
  ["bench: '../a.bench.yaml'\r", '../a.bench.yaml'],
  ['  bench: a.bench.yaml', null],
  ['bench: a.yaml', null],
  ['benches: a.bench.yaml', null]
])('%j names %j', (line, name) => {
  expect(benchNamed(`fettle: 1\n${line}\nparts:\n`)).toBe(name)
})

describe('from files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
  mkdirSync(join(folder, 'jobs'))
  writeFileSync(join(folder, 'shop.bench.yaml'), BENCH)
  writeFileSync(join(folder, 'jobs', 'one.yaml'), JOB.replace('bench: shop', 'bench: ../shop'))
  writeFileSync(join(folder, 'jobs', 'lost.yaml'), JOB)

  it('is looked for beside the job, and is no job itself', async () => {
    const { out, exit } = await ran(['check', folder, '--json'])
    const { jobs } = JSON.parse(out) as {
      readonly jobs: readonly { readonly file: string; readonly errors: readonly { readonly found: string }[] }[]
    }
    expect(jobs.map(({ file }) => file.slice(folder.length))).toEqual(['/jobs/lost.yaml', '/jobs/one.yaml'])
    expect(jobs[0]!.errors[0]!.found).toBe('no such file')
    expect(jobs[1]!.errors).toEqual([])
    expect(exit).toBe(2)
  })

  it.each(['plan', 'measure', 'prove'])('%s has it too', async command => {
    expect((await ran([command, join(folder, 'jobs', 'one.yaml')])).exit).toBeLessThan(2)
    expect((await ran([command, join(folder, 'jobs', 'lost.yaml')])).exit).toBe(2)
  })

  it('plan names the taps of the bench', async () => {
    expect((await ran(['plan', join(folder, 'jobs', 'one.yaml')])).out).toMatch(/bottoming/)
  })
})
