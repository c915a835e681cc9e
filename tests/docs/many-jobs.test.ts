// example: the command lines of the page of many jobs, run as they stand
import { spawnSync } from 'node:child_process'
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

const page = readFileSync('docs/many-jobs.md', 'utf8')
const [check, worst, verdicts, machines, each] = [...page.matchAll(/```sh\n(.*?)```/gs)].map(([, text]) => text!)
const hasParallel = ['parallel', 'jq'].every(program => spawnSync('which', [program]).status === 0)

const folder = mkdtempSync(join(tmpdir(), 'fettle-many-'))
mkdirSync(join(folder, 'jobs'))
const GOOD = 'examples/hydraulic-tank-sensor.yaml'
const FILES = ['a', 'b', 'c'].map(name => join(folder, 'jobs', `${name}.yaml`))
for (const file of FILES) copyFileSync(GOOD, file)
copyFileSync('examples/bad/jams-in-run-out.yaml', join(folder, 'jobs', 'd.yaml'))
writeFileSync(join(folder, 'jobs', 'shop.bench.yaml'), 'fettle: 1\n')
writeFileSync(join(folder, 'machines'), ':\n')
writeFileSync(join(folder, 'lines.txt'), Array.from({ length: 50 }, (_, i) => `torque ${i + 1} in-lb\n`).join(''))
writeFileSync(join(folder, 'fettle'), `#!/bin/sh\nexec ${process.execPath} ${resolve('bin/fettle.js')} "$@"\n`)
chmodSync(join(folder, 'fettle'), 0o755)

const shell = (line: string) =>
  spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8', env: { ...process.env, PATH: `${folder}:${process.env['PATH']}` } })
const linesIn = (name: string) => readFileSync(join(folder, name), 'utf8').trimEnd().split('\n')

describe.skipIf(!hasParallel)('outside program: GNU parallel', () => {
  it('a line for each job, whatever way it is split', () => {
    shell(check!.replace('-N 100', '-N 1'))
    const apart = linesIn('verdicts.ndjson').sort()
    expect(apart).toHaveLength(4)
    shell(machines!)
    expect(linesIn('verdicts.ndjson').sort()).toEqual(apart)
  })

  it('the worst exit code is in the log, the verdicts are counted', () => {
    shell(check!)
    expect(shell(worst!).status).toBe(1)
    expect(shell(verdicts!).stdout).toMatch(/1 fail[\s\S]*jobs\/d\.yaml/)
  })

  it('an answer for each line', () => {
    shell(each!)
    const whole = shell('fettle each lines.txt').stdout.trimEnd().split('\n')
    const results = (line: string) => (JSON.parse(line) as { readonly results: object }).results
    expect(linesIn('answers.ndjson').map(results)).toEqual(whole.map(results))
  })
})
