// example: a file is written whole or not at all, through no link that was laid there, and to no name of a pipe
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { writeWhole } from '../../src/commands/write-whole.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-whole-'))
afterAll(() => rmSync(folder, { recursive: true }))
const at = (name: string) => join(folder, name)
const over = (file: string, text: string) => writeWhole(file, text, { over: true })

it('who reads meanwhile sees the old or the new, whole', async () => {
  const texts = ['a', 'b'].map(letter => letter.repeat(3_000_000))
  await over(at('page.html'), texts[0]!)
  let writing = true
  const seen = new Set<string>()
  const reader = async () => {
    while (writing) seen.add(await readFile(at('page.html'), 'utf8'))
  }
  const reading = reader()
  for (let i = 0; i < 10; i++) await over(at('page.html'), texts[i % 2]!)
  writing = false
  await reading
  expect([...seen].filter(text => !texts.includes(text))).toEqual([])
  expect(readdirSync(folder)).toEqual(['page.html'])
})

it('a file that is closed to others stays so', async () => {
  writeFileSync(at('closed.md'), 'old')
  chmodSync(at('closed.md'), 0o600)
  expect(await over(at('closed.md'), 'new')).toBeUndefined()
  expect([statSync(at('closed.md')).mode & 0o777, readFileSync(at('closed.md'), 'utf8')]).toEqual([0o600, 'new'])
})

it('a link laid where the unfinished file would stand is not followed', async () => {
  writeFileSync(at('victim'), 'mine')
  symlinkSync('victim', at(`laid.md.${process.pid}.part`))
  expect(await over(at('laid.md'), 'new')).toMatchObject({ found: expect.stringContaining('refuses') })
  expect(readFileSync(at('victim'), 'utf8')).toBe('mine')
})

it.each(['-', '/dev/stdout', '/dev/fd/1', '/proc/self/fd/1', '/dev/../dev/stdout'])('%s is no file to be written', async name => {
  expect(await over(name, 'new')).toMatchObject({ found: `"${name}", which is no file` })
})

it('nor is a name with a nought byte', async () => {
  expect(await over(at('a\0b'), 'new')).toMatchObject({ found: expect.stringContaining('no file can have') })
})
