// property: whatever stands where a word is expected, a command answers or refuses in words: exit 0, 1 or 2, nothing that acts in a terminal, no number that is none
import { expect, it } from 'vitest'
import type { Description, Row } from '../../src/commands/describe.ts'
import { COMMANDS } from '../../src/commands/list.ts'
import { called } from '../../src/commands/program.ts'
import { faultsText } from '../../src/report/refused.ts'
import { inExampleFolder, wordsOf } from '../docs/example-output.ts'
import { NASTY } from '../fuzz/mutated-text.ts'
import { keptIn } from './out-text.ts'

const WORDS = [
  ...NASTY,
  ...[
    '',
    ' ',
    '\n',
    '-',
    '--',
    '--json',
    '-x',
    'a\nb: FAKE',
    '\u001b[31mred\u0007',
    '\u001b]0;title\u0007',
    '=',
    'x=1 A',
    '1 A=',
    '@',
    ',,,'
  ],
  ...['1 kg @ 1e400 m', '1e400 mm', '0x10 mm', '1_000 mm', '-0 mm', '1 furlong', '1 mm mm', '1 mm ± 1e400 mm', '0..0', '1/0', '0/0 in'],
  ...['M0', 'M1e9', 'M12x0', 'M12x-1', 'M12x1e-9', 'AWG -5', 'AWG 1e9', 'a TO b=1 V', '/dev/null', 'no/such/folder/x.html']
].filter(word => word !== '..')

/** Of the words, those that this row tries; the next row tries others. */
const SHARE = 8
/** A job is read and judged for each call: so it is one that is soon judged, and fewer words are tried. */
const OF_JOBS = ['check', 'measure', 'plan', 'sheet', 'prove', 'compare', 'sweep', 'solve']
const SHARE_OF_JOBS = 60
const SMALL = 'examples/unmeasured/drain-plug.yaml'
/** It would go on for ever. */
const LEFT_OUT = ['watch']

inExampleFolder()

it.each(COMMANDS)('$name', async ({ name, rows, examples }) => {
  const ofJobs = OF_JOBS.includes(name)
  const base = wordsOf(ofJobs ? examples[0]!.replace(/examples\/\S+yaml/g, SMALL) : examples[0]!)
  const share = ofJobs ? SHARE_OF_JOBS : SHARE
  const tried = Object.entries<Row>(rows).filter(([row]) => !LEFT_OUT.includes(row))
  for (const [i, row] of tried.entries())
    for (const word of WORDS.filter((_, j) => (i + j) % (row[1].argument ? SHARE : share) === 0))
      for (const words of callsWith(word, row, base)) await fine(words)
  for (const words of [[name], [name, '--json'], ...repeated(base, rows)]) await fine(words)
})

/** The word in the place of what stood there, and beside it. */
function callsWith(word: string, [name, row]: readonly [string, Row], base: readonly string[]): readonly (readonly string[])[] {
  const firstOption = base.findIndex(one => one.startsWith('--'))
  const options = firstOption < 0 ? [] : base.slice(firstOption)
  if (row.argument)
    return [
      [base[0]!, word, ...options],
      [base[0]!, ...options, '--', word]
    ]
  if (row.takes === 'flag') return [[...base, `--${name}=${word}`]]
  const at = base.indexOf(`--${name}`)
  return [[...(at < 0 ? base : base.toSpliced(at, 2)), `--${name}=${word}`], ...(row.many ? [[...base, `--${name}`, word]] : [])]
}

/** Each option of the call twice, without its value, and left out; every word that all commands take at once. */
function repeated(base: readonly string[], rows: Description['rows']): readonly (readonly string[])[] {
  const options = base.flatMap((word, at) => (word.startsWith('--') && rows[word.slice(2)]?.takes !== 'flag' ? [at] : []))
  return [
    ...options.flatMap(at => [[...base, base[at]!, base[at + 1]!], [...base, base[at]!], base.toSpliced(at, 2)]),
    [...base, '--json', '--json', '--quiet', '--working', '--strict', '--no-color', '--units', 'inch', '--units', 'metric'],
    [...base, '--units', 'nonsense'],
    [...base, '--units']
  ]
}

async function fine(words: readonly string[]): Promise<void> {
  const [out, err]: [string[], string[]] = [[], []]
  const streams = { out: keptIn(out), err: (text: string) => err.push(text), columns: 80, colour: () => false }
  const result = await called(COMMANDS, words, 'test', streams).catch((error: unknown) => ({ exit: String(error) }))
  const exit = 'exit' in result ? result.exit : 2
  if ('errors' in result) err.push(faultsText(result.errors))
  const told = err.join('')
  const context = `${JSON.stringify(words)}\n${told.slice(0, 2000)}`
  expect([0, 1, 2], context).toContain(exit)
  expect(`${out.join('')}${told}`, context).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f\u202a-\u202e\u2028\u2029]/)
  expect(`${out.join('')}${told}`.replace(QUOTED, ''), context).not.toMatch(/\b(NaN|Infinity|undefined)\b|\[object |\bat \S+:\d+:\d+/)
  // What `each` says of a line stands in its document.
  if (exit === 2 && words[0] !== 'each') expect(told, context).toMatch(/\S/)
}

/** What somebody wrote stands in quotes. */
const QUOTED = /"(?:[^"\\\n]|\\.)*"/g
