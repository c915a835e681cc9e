// example: a file for each message about a faulty job; its first line says every fault, with its place, as somebody sees it who reads the file
import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const FOLDER = 'tests/job/faults'
const FILES = readdirSync(FOLDER)
const textOf = (file: string) => readFileSync(`${FOLDER}/${file}`, 'utf8')
const saidIn = (file: string) => textOf(file).split('\n', 1)[0]!.replace(/^# /, '').split(' | ')

it.each(FILES)('%s', file => {
  const told = judgeJob(file, textOf(file)).errors.map(({ found, where: { line, column } }) => `${line}:${column} ${found}`)
  expect(told).toEqual(saidIn(file))
})

/** Too large to lie about as files: `hostile.test.ts` makes them. Benches and formulas have tests of their own. */
const MADE_ELSEWHERE = [/^a file of/, /^more fields than a job has/, /more faults$/]

const sources = import.meta.glob<string>(['../../src/job/**/*.ts', '../../src/quantity/*.ts', '!**/parse-ratio.ts'], {
  eager: true,
  query: '?raw',
  import: 'default'
})
/** No field of a job is a ratio. What the source says that was found: a text, or one with holes in it. */
const TOLD = /(?:\bbad\(|\bfound: (?:[^'`\n]*\? )?)(?:'([^'\n]+)'|`((?:[^`\\$]|\$(?!\{)|\$\{(?:[^{}`]|`[^`]*`|\{[^{}]*\})*\})+)`)/g
const ROWS = /^ {2}[A-Z_]+: \['([^']+)'/gm

function patternOf(text: string): RegExp {
  const parts = text.split(/\$\{(?:[^{}`]|`[^`]*`|\{[^{}]*\})*\}/)
  return new RegExp(`^${parts.map(part => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.*')}$`, 's')
}

const messages = Object.entries(sources).flatMap(([file, text]) =>
  [...text.matchAll(TOLD), ...text.matchAll(ROWS)].map(match => ({ file, text: match[1] ?? match[2]! }))
)
const seen = FILES.flatMap(file => saidIn(file).map(said => said.replace(/^\d+:\d+ /, '')))

it('messages are found in the source', () => {
  expect(messages.length).toBeGreaterThan(60)
})

it.each(messages)('$text ($file) has its file', ({ text }) => {
  const pattern = patternOf(text)
  expect(MADE_ELSEWHERE.some(made => made.test(text)) || seen.some(found => pattern.test(found))).toBe(true)
})
