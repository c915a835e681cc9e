// property: the shape of every file of the program
import { expect, it } from 'vitest'
import { SOURCE_FILES } from './source-files.ts'

/** An alarm, not an aim: files are near 100 lines. The list of sources is rows alone and grows with them. */
const ALARM = 200

it('no file is longer than the alarm', () => {
  const sizes = SOURCE_FILES.filter(({ file }) => !file.endsWith('formula/source.ts'))
    .map(({ file, text }) => ({ file, lines: text.split('\n').length - 1 }))
    .sort((a, b) => b.lines - a.lines)
  const longest = sizes.slice(0, 10).map(({ file, lines }) => `${lines} ${file}`)
  expect(sizes[0]!.lines, `the ten longest files:\n${longest.join('\n')}`).toBeLessThanOrEqual(ALARM)
})

it.each([
  ['hands on what another file exports', /^export\s+(type\s+)?(\*|\{[^}]*\})\s+from\b/m],
  ['has a default export', /^export\s+(default\b|\{[^}]*\bas\s+default\b)/m],
  ['has an enum', /^\s*(export\s+)?(const\s+)?enum\s/m]
])('no file %s', (_, pattern) => {
  expect(SOURCE_FILES.filter(({ text }) => pattern.test(text)).map(({ file }) => file)).toEqual([])
})

it('names are kebab-case and say what the file holds', () => {
  const names = SOURCE_FILES.map(({ file }) => file.split('/').at(-1)!)
  expect(names.filter(name => !/^[a-z0-9]+(-[a-z0-9]+)*(\.run|\.d)?\.ts$/.test(name))).toEqual([])
  expect(names.filter(name => /\b(utils?|helpers?|common|manager|misc|index)\b/.test(name))).toEqual([])
})
