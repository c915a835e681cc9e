// example: what sheet writes, what it does not write over, and its exit codes
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { inExampleFolder, outputOf } from '../docs/example-output.ts'

const GOOD = 'examples/gearbox-preheater.yaml'
const sheet = (...words: readonly string[]) => outputOf(['sheet', ...words])

inExampleFolder()

it('writes one page, by the ending of its name', async () => {
  expect(await sheet(GOOD, '-o', 'a.html')).toMatchObject({ exit: 0, out: '', err: expect.stringContaining('wrote a.html') })
  expect(readFileSync('a.html', 'utf8')).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/)
  expect((await sheet(GOOD, '-o', 'a.MD')).exit).toBe(0)
  expect(readFileSync('a.MD', 'utf8')).toMatch(/^# /)
})

it('writes over nothing without --force', async () => {
  writeFileSync('kept.html', 'mine')
  expect(await sheet(GOOD, '-o', 'kept.html')).toMatchObject({ exit: 2, err: expect.stringContaining('--force') })
  expect(readFileSync('kept.html', 'utf8')).toBe('mine')
  expect((await sheet(GOOD, '-o', 'kept.html', '--force')).exit).toBe(0)
  expect(readFileSync('kept.html', 'utf8')).toContain('<!doctype html>')
})

describe('writes nothing', () => {
  it.each([
    ['for an ending it does not know', [GOOD, '-o', 'a.pdf'], 'print the .html from a browser'],
    ['without a name', [GOOD], '--output'],
    ['into a folder that is not there', [GOOD, '-o', 'nowhere/a.html'], 'nowhere/a.html'],
    ['for a job that is not there', ['nowhere.yaml', '-o', 'b.html'], 'no such file'],
    ['for a job that cannot be read', ['broken.yaml', '-o', 'b.html'], 'broken.yaml']
  ])('%s', async (_, words, says) => {
    writeFileSync('broken.yaml', 'fettle: 1\njob: { title: x }\nholez: {}\n')
    const before = readdirSync('.').sort()
    const { exit, out, err } = await sheet(...words)
    expect([2, null]).toContain(exit)
    expect(out).toBe('')
    expect(err).toContain(says)
    expect(readdirSync('.').sort()).toEqual(before)
  })
})

it('a job that fails is written all the same, its failures on top, exit 1', async () => {
  expect((await sheet('examples/bad/floor-too-thin.yaml', '-o', 'bad.html')).exit).toBe(1)
  const page = readFileSync('bad.html', 'utf8')
  expect(page.indexOf('hole/metal-below-thin')).toBeLessThan(page.indexOf('<h2 id="before"'))
})

it('with --json says what was found, and the file is written', async () => {
  const { out } = await sheet(GOOD, '-o', 'json.html', '--json')
  expect(JSON.parse(out)).toMatchObject({
    format: 'fettle/result@1',
    command: 'sheet',
    results: { 'holes.sump:hole.tip-depth': { unit: 'mm' } }
  })
  expect(existsSync('json.html')).toBe(true)
})

it('leaves nothing half written beside it', () => {
  expect(readdirSync('.').filter(name => name.endsWith('.part'))).toEqual([])
})
