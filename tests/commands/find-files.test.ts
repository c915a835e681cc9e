// example: what names on the command line come to: folders, patterns, links, nothing
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { expect, it } from 'vitest'
import { findFiles } from '../../src/commands/find-files.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-find-'))
const at = (...names: readonly string[]) => join(folder, ...names)
for (const name of ['deep', 'empty', 'node_modules']) mkdirSync(at(name))
for (const name of ['b.yaml', 'a.yml', 'deep/c.yaml', 'deep/notes.txt', 'node_modules/d.yaml']) writeFileSync(at(name), '')
symlinkSync('..', at('deep', 'up'))

it('a folder gives its job files and those deeper down, none twice by a circle of links', async () => {
  expect(await findFiles([folder])).toEqual([at('a.yml'), at('b.yaml'), at('deep', 'c.yaml')])
})

it('a file named twice is judged once, under its first name', async () => {
  const long = `${at('deep')}/../b.yaml`
  expect(await findFiles([long, at('b.yaml'), at('*.yaml')])).toEqual([long])
})

it('a bench among jobs is left out, by its name or by a pattern, and alone is left to be read', async () => {
  const bench = at('deep', 'shop.bench.yaml')
  writeFileSync(bench, '')
  expect(await findFiles([bench, at('b.yaml')])).toEqual([at('b.yaml')])
  expect((await findFiles([at('deep', '*.yaml')])).map(file => resolve(file))).toEqual([at('deep', 'c.yaml')])
  expect(await findFiles([bench])).toEqual([bench])
})

it('a folder without any, a pattern without a match and a name of nothing are left to be missed', async () => {
  const nothing = [at('empty'), at('*.json'), at('nowhere.yaml')]
  expect(await findFiles(nothing)).toEqual(nothing)
})
