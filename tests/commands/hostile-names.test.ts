// example: names of files and fields that would act in a terminal or pass for another line are shown as codes, by every printer for the eye
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { ran } from './run.ts'

const GOOD = readFileSync('examples/unmeasured/drain-plug.yaml', 'utf8')
const NAMES = ['\u001b[31mred\u001b]0;title\u0007.yaml', 'a\n::error::FAKE.yaml', '\u202egnp.yaml']
const ACTS = /[\u0000-\u0009\u000b-\u001f\u007f\u202a-\u202e]|^::error/m

const folder = mkdtempSync(join(tmpdir(), 'fettle-names-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

describe.each(NAMES)('%j', name => {
  const [good, bad] = [file(name, GOOD), file(`no-${name}`, 'x: 1\n')]

  it.each([
    ['check', good, bad],
    ['check', good, '--quiet'],
    ['plan', good],
    ['plan', bad],
    ['prove', bad],
    ['compare', good, good],
    ['sweep', good, '--field', 'holes.sump.found.depth', '--from', '20 mm', '--to', '22 mm', '--steps', '2'],
    ['solve', bad, '--field', 'holes.sump.found.depth', '--from', '20 mm', '--to', '22 mm', '--want', 'least'],
    ['sheet', good, '-o', join(folder, `${name}.html`), '--force'],
    ['sheet', good, '-o', join(folder, `no/${name}.html`)],
    ['new', '-o', join(folder, `new-${name}`), '--force'],
    ['each', `${bad}.txt`]
  ])('%s', async (...words) => {
    const { out, err } = await ran(words)
    expect(`${out}${err}`).toMatch(/\S/)
    expect(out).not.toMatch(ACTS)
    expect(err).not.toMatch(ACTS)
  })
})

it('a field with such a name is told with its codes', async () => {
  const { exit, err } = await ran(['check', file('field.yaml', `${GOOD}"\\e[31m\\n::error::x": 1\n`)])
  expect(exit).toBe(2)
  expect(err).toContain('\\u{1b}[31m\\u{a}::error::x: error: found the unknown field')
  expect(err).not.toMatch(ACTS)
})

it.each([
  ['a nought byte', 'bench: a\0b.bench.yaml', 'no file can have'],
  ['a folder', 'bench: folder.bench.yaml', 'a folder'],
  ['a file that is not there', 'bench: ../gone.bench.yaml', 'no such file'],
  ['bytes that are no text', 'bench: bytes.bench.yaml', 'no UTF-8']
])('a bench that is %s is a fault of its job', async (_, line, says) => {
  mkdirSync(join(folder, 'folder.bench.yaml'), { recursive: true })
  writeFileSync(join(folder, 'bytes.bench.yaml'), Buffer.from([0xff, 0x61]))
  const { exit, err } = await ran(['check', file('benched.yaml', `${GOOD}${line}\n`)])
  expect(exit).toBe(2)
  expect(err).toContain(line.includes('\0') ? 'control character' : says)
})

it.each(['', '\n\n', '# only a remark\n', '  # one\r\n# another'])('a file with nothing in it, %j, is told so once', async text => {
  const { exit, err } = await ran(['check', '-'], text)
  expect(exit).toBe(2)
  expect(err).toBe('-:1:1: error: found nothing in the file; accepted: a job; "fettle new" writes one to begin with\n')
})

it('a name of nothing is told as one', async () => {
  expect((await ran(['check', ''])).err).toContain('"": error: found no such file')
})

it('a word that new cannot use is told in JSON too', async () => {
  const { exit, out } = await ran(['new', 'nonsense', '--json'])
  expect(exit).toBe(2)
  expect(JSON.parse(out).errors).toHaveLength(1)
})
