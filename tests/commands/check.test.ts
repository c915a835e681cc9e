// example: the words of `check`, what each changes, and how it ends
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { check as description } from '../../src/commands/check.ts'
import { drop } from '../../src/commands/drop.ts'
import { PRACTICE_NAMES } from '../../src/trade/practice-names.ts'
import { ran } from './run.ts'

const GOOD = 'examples/gearbox-preheater.yaml'
const BAD = 'examples/bad/wrench-too-large.yaml'
const BAD_ONES = readdirSync('examples/bad').filter(name => name.endsWith('.yaml')).length
const folder = mkdtempSync(join(tmpdir(), 'fettle-check-'))
afterAll(() => rmSync(folder, { recursive: true }))
const document = async (...words: readonly string[]) => JSON.parse((await ran(['check', ...words, '--json'])).out)

it('knows the practices that there are', () => {
  expect(description.rows.practice.of).toEqual(PRACTICE_NAMES)
  expect(drop.rows.practice.of).toEqual(PRACTICE_NAMES)
})

describe('which rules are asked', () => {
  it.each([
    ['hole/broken-through', '"hole/broken-through", which a quick sum asks and no job is asked'],
    ['prove/loop-open', '"prove/loop-open", which "fettle prove" asks and no job is asked']
  ])('--only %s would pass every job: it is refused', async (rule, found) => {
    const { exit, err } = await ran(['check', BAD, '--only', rule])
    expect(exit).toBe(2)
    expect(err).toContain(found)
    expect((await ran(['check', BAD, '--skip', rule])).exit).toBe(1)
  })

  it('--only asks those and no others', async () => {
    const { findings } = await document(BAD, '--only', 'seat/jams-in-run-out,hole/wall-broken')
    expect([...new Set(findings.map(({ rule }: { rule: string }) => rule))].sort()).toEqual(['hole/wall-broken', 'seat/jams-in-run-out'])
  })

  it('--skip leaves one out, and the job is judged by the rest', async () => {
    expect((await ran(['check', BAD])).exit).toBe(1)
    const { exit, out } = await ran(['check', BAD, '--skip', 'torque/outside-wrench-range', '--json'])
    expect(exit).toBe(0)
    expect(out).not.toContain('torque/outside-wrench-range')
  })

  it('an unknown id is an error with the nearest, before any file is read', async () => {
    const { exit, out, err } = await ran(['check', 'nowhere.yaml', '--only', 'seat/jams-in-runout'])
    expect([exit, out]).toEqual([2, ''])
    expect(err).toContain('did you mean seat/jams-in-run-out?')
    expect((await ran(['check', GOOD, '--skip', 'wall-brokn'])).err).toContain('did you mean hole/wall-broken?')
  })

  it('where none has anything to say, the job is not judged, and strictly that is a 1', async () => {
    const words = ['check', 'examples/hydraulic-tank-sensor.yaml', '--only', 'drop/too-much']
    expect((await document(...words.slice(1))).jobs[0].verdict).toBe('not-judged')
    expect((await ran(words)).exit).toBe(0)
    expect((await ran([...words, '--strict'])).exit).toBe(1)
    expect((await ran(words)).out).toContain('NOT JUDGED')
  })

  it('what has no answer is told whatever is asked for, unless skipped by name', async () => {
    const file = join(folder, 'shallow.yaml')
    writeFileSync(file, readFileSync(GOOD, 'utf8').replace('keep-clear: 0.8 mm', 'keep-clear: 40 mm'))
    const { out } = await ran(['check', file, '--only', 'torque/card-condition', '--json'])
    expect(out).toContain('hole/no-answer')
    expect((await ran(['check', file, '--skip', 'hole/no-answer', '--json'])).out).not.toContain('"rule": "hole/no-answer"')
  })
})

it('--practice goes before that of the job', async () => {
  const limit = async (...more: readonly string[]) =>
    (await document(GOOD, ...more)).findings.find(({ rule }: { rule: string }) => rule === 'drop/too-much')
  expect(await limit()).toMatchObject({ limit: 3, unit: '%' })
  expect(await limit('--practice', 'aircraft')).toMatchObject({ limit: 1, unit: 'V', source: 'ac-43.13-1b-11-6' })
})

describe('--samples', () => {
  it('puts an estimate beside the root sum of squares, inside the worst case', async () => {
    const { jobs } = await document(GOOD, '--samples', '500')
    const { low, high, rss, samples } = jobs[0].results['holes.sump:hole.metal-left']
    expect(rss).toHaveLength(2)
    expect(low <= samples[0] && samples[0] < samples[1] && samples[1] <= high).toBe(true)
    expect((await document(GOOD)).jobs[0].results['holes.sump:hole.metal-left'].samples).toBeUndefined()
  })

  it.each(['0', '-5', '1000000000', 'many'])('%s is refused', async text => {
    expect((await ran(['check', GOOD, '--samples', text])).exit).toBe(2)
  })
})

describe('what is read', () => {
  it('- is what is piped in', async () => {
    const { exit, out } = await ran(['check', '-', '--json'], readFileSync(BAD, 'utf8'))
    expect(exit).toBe(1)
    expect(JSON.parse(out).findings[0].where.file).toBe('-')
  })

  it('letters of several bytes come through a pipe whole', async () => {
    const { err, out } = await ran(['check', '-'], readFileSync(GOOD, 'utf8').replace('rail tamper', 'Brüche ± Ω 雪'))
    expect(err).toBe('')
    expect(out).toContain('Brüche ± Ω 雪')
  })

  it('a folder without jobs and a file that is not there are faults', async () => {
    expect(await ran(['check', folder, 'gone.yaml', '--json'])).toMatchObject({ exit: 2 })
    expect((await ran(['check', 'src'])).err).toContain('a folder without job files')
  })

  it('the worst file sets the end', async () => {
    expect((await ran(['check', GOOD])).exit).toBe(0)
    expect((await ran(['check', GOOD, BAD])).exit).toBe(1)
    expect((await ran(['check', GOOD, BAD, 'gone.yaml'])).exit).toBe(2)
  })
})

it('a job that fails ends with the rules that do, at its end', async () => {
  const { out } = await ran(['check', BAD])
  expect(out).toMatch(/\nfails: torque\/outside-wrench-range of holes\.\S+\n\n1 job: 1 FAIL\n$/)
  expect((await ran(['check', GOOD])).out).not.toContain('fails:')
})

describe('formats', () => {
  it.each(['table', 'json', 'ndjson', 'junit', 'sarif', 'markdown'])('%s ends the same way', async format => {
    const { exit, out } = await ran(['check', GOOD, BAD, '--format', format])
    expect(exit).toBe(1)
    expect(out.trim()).not.toBe('')
  })

  it('--json is --format json, and goes before another format', async () => {
    expect((await ran(['check', BAD, '--json'])).out).toBe((await ran(['check', BAD, '--format', 'json'])).out)
    expect((await ran(['check', BAD, '--json', '--format', 'sarif'])).out).toContain('fettle/result@1')
  })

  it('lines are written as each file is judged', async () => {
    const written: number[] = []
    let lines = 0
    const drained = async () => {
      written.push(++lines)
    }
    await ran(['check', 'examples/bad', '--format', 'ndjson'], '', { drained })
    expect(written).toEqual(Array.from({ length: BAD_ONES }, (_, i) => i + 1))
  })
})

it('says how far it is to whoever watches, and wipes that away', async () => {
  const { told } = await ran(['check', 'examples/bad', '--format', 'ndjson'])
  expect(told[0]).toContain(`1 of ${BAD_ONES} `)
  expect(told.at(-1)).toBe('')
})

it('stops when nobody takes what it prints', async () => {
  const { out } = await ran(['check', 'examples', '--format', 'ndjson'], '', { stop: AbortSignal.abort() })
  expect(out).toBe('')
})

describe('--watch', () => {
  it('judges again what changes, until it is stopped', async () => {
    const file = join(folder, 'watched.yaml')
    writeFileSync(file, readFileSync(GOOD, 'utf8'))
    const stop = new AbortController()
    let printed = 0
    const drained = async () => {
      if (++printed === 1) setTimeout(() => writeFileSync(file, readFileSync(BAD, 'utf8')), 100)
      else stop.abort()
    }
    const { exit, out } = await ran(['check', file, '--watch', '--format', 'ndjson'], '', { drained, stop: stop.signal })
    expect(exit).toBe(0)
    expect(
      out
        .trim()
        .split('\n')
        .map(line => JSON.parse(line).jobs[0].verdict)
    ).toEqual(['caution', 'fail'])
  })

  it('misses nothing that changes while the others are judged for the first time', async () => {
    const file = join(folder, 'changed-early.yaml')
    writeFileSync(file, readFileSync(GOOD, 'utf8'))
    const stop = new AbortController()
    let printed = 0
    const drained = async () => {
      printed++
      if (printed === 1) writeFileSync(file, readFileSync(BAD, 'utf8'))
      if (printed === 3) stop.abort()
    }
    const { out } = await ran(['check', file, GOOD, '--watch', '--format', 'ndjson'], '', { drained, stop: stop.signal })
    const seen = out
      .trim()
      .split('\n')
      .map(line => JSON.parse(line).jobs[0])
    expect(seen.map(({ verdict }) => verdict)).toEqual(['caution', 'caution', 'fail'])
  })

  it('judges again every job of a bench that changes, comes or goes', async () => {
    const bench = join(folder, 'watched.bench.yaml')
    const jobs = ['first', 'second'].map(name => join(folder, `at-${name}.yaml`))
    for (const job of jobs) writeFileSync(job, readFileSync(GOOD, 'utf8').replace(/^tools:\n(?: .*\n)*/m, 'bench: watched.bench.yaml\n'))
    const wrench = (range: string) => writeFileSync(bench, `fettle: 1\ntools: { wrench: { range: ${range} } }\n`)
    wrench('5..30 N·m')
    const stop = new AbortController()
    const steps = [() => wrench('100..200 N·m'), () => rmSync(bench), () => stop.abort()]
    let printed = 0
    const drained = async () => {
      if (++printed % 2 === 0) setTimeout(steps[printed / 2 - 1]!, 100)
    }
    const { out } = await ran(['check', ...jobs, '--watch', '--format', 'ndjson'], '', { drained, stop: stop.signal })
    const seen = out
      .trim()
      .split('\n')
      .map(line => JSON.parse(line).jobs[0])
    expect(seen.map(({ verdict }) => verdict)).toEqual(['caution', 'caution', 'fail', 'fail', null, null])
    expect(seen.map(({ file }) => file)).toEqual([...jobs, ...jobs, ...jobs])
  })

  it.each([['--json'], ['--format', 'sarif']])('has no end for %s', async (...format) => {
    expect((await ran(['check', GOOD, '--watch', ...format])).exit).toBe(2)
  })

  it('of what is piped in is refused', async () => {
    expect((await ran(['check', '-', '--watch'])).exit).toBe(2)
  })
})
