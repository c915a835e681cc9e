// property: the built program says the same with the code that the build kept, without it, and with such as V8 does not take
import { execFileSync } from 'node:child_process'
import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'

const WORDS = ['torque', '155 in-lb', '--json']
const PIECES = ['main.cjs', 'torque.run.cjs']
const folder = mkdtempSync(join(tmpdir(), 'fettle-load-'))
afterAll(() => rmSync(folder, { recursive: true }))

mkdirSync(join(folder, 'dist'))
cpSync('bin', join(folder, 'bin'), { recursive: true })
for (const piece of PIECES) copyFileSync(`dist/${piece}`, join(folder, 'dist', piece))

const said = (at: string, ...flags: readonly string[]) =>
  execFileSync(process.execPath, [...flags, join(at, 'bin/fettle.js'), ...WORDS], { encoding: 'utf8' })
const withCode = (code: Buffer) => {
  for (const piece of PIECES) writeFileSync(join(folder, 'dist', `${piece}.code`), code)
  return said(folder)
}

const plain = said(folder)

it('with the code that the build kept, which V8 takes', () => {
  expect(JSON.parse(plain).command).toBe('torque')
  for (const piece of PIECES) expect(existsSync(`dist/${piece}.code`), piece).toBe(true)
  expect(said('.')).toBe(plain)
})

it('where V8 runs with other flags, for which it takes no code', () => {
  expect(said('.', '--no-opt')).toBe(plain)
})

it.each([
  ['nothing in it', Buffer.alloc(0)],
  ['words', Buffer.from('no code\n'.repeat(1000))],
  ['the code of another file', readFileSync('dist/drill.run.cjs.code')],
  ['half of a code', readFileSync('dist/main.cjs.code').subarray(0, 50_000)]
])('where a file of code has %s', (_, code) => {
  expect(withCode(code)).toBe(plain)
})
