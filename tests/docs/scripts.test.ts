// example: the command lines of the page of scripts, run as they stand
import { spawnSync } from 'node:child_process'
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const page = readFileSync('docs/scripts.md', 'utf8')
const [stop, read, node, pipe, pipeline] = [...page.matchAll(/```sh\n(.*?)```/gs)].map(([, text]) => text!)
const hasJq = spawnSync('which', ['jq']).status === 0

const folder = mkdtempSync(join(tmpdir(), 'fettle-scripts-'))
const job = (name: string) => join(folder, 'jobs', `${name}.yaml`)
mkdirSync(join(folder, 'jobs'))
writeFileSync(job('a'), readFileSync('examples/bad/jams-in-run-out.yaml', 'utf8'))
copyFileSync('examples/hydraulic-tank-sensor.yaml', job('b'))
writeFileSync(join(folder, 'fettle'), `#!/bin/sh\nexec ${process.execPath} ${resolve('bin/fettle.js')} "$@"\n`)
chmodSync(join(folder, 'fettle'), 0o755)
afterAll(() => rmSync(folder, { recursive: true }))

const shell = (line: string) =>
  spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8', env: { ...process.env, PATH: `${folder}:${process.env['PATH']}` } })

it('a script stops at a job that fails, with its exit code', () => {
  const { status, stdout } = shell(`${stop!}\necho went on`)
  expect(status).toBe(1)
  expect(stdout).toContain('seat/jams-in-run-out')
  expect(stdout).not.toContain('went on')
})

describe.skipIf(!hasJq)('outside program: jq', () => {
  it('tells what fails at its place, and one figure', () => {
    const holes = Object.keys(JSON.parse(shell('fettle check jobs/a.yaml --json').stdout).jobs[0].results)
    const id = holes.find(name => name.endsWith(':hole.tip-depth'))!
    const lines = shell(read!.replace('holes.left:hole.tip-depth', id)).stdout.trimEnd().split('\n')
    expect(lines[0]).toMatch(/^jobs\/a\.yaml:\d+ seat\/jams-in-run-out: /)
    expect(Number(lines.at(-1))).toBeGreaterThan(0)
  })

  it('reads a job that is piped in', () => {
    expect(shell(pipe!).stdout).toBe('fail\n')
  })
})

it('without jq', () => {
  shell('fettle check jobs --json > verdicts.json')
  expect(shell(node!).stdout).toContain('jobs/a.yaml seat/jams-in-run-out')
})

it('a pipeline keeps both reports and ends as the check did', () => {
  expect(shell(pipeline!).status).toBe(1)
  expect(readFileSync(join(folder, 'verdicts.xml'), 'utf8')).toContain('<failure')
  expect(readFileSync(join(folder, 'verdicts.sarif'), 'utf8')).toContain('"level": "error"')
})
