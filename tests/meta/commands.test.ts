// example: every command stands in the list and says what its words are; every example of every command runs
import { describe, expect, it } from 'vitest'
import type { Row } from '../../src/commands/describe.ts'
import { COMMANDS } from '../../src/commands/list.ts'
import { rowOf } from '../../src/quantity/kinds.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { inExampleFolder, outputOf, wordsOf } from '../docs/example-output.ts'

const runs = import.meta.glob<{ readonly run: unknown }>('../../src/commands/*.run.ts')
const NO_FIGURE = /\b(NaN|Infinity|undefined)\b|\[object /

/** One document a line. */
const IN_LINES = /^each\b|--format ndjson/
/** A file to be edited and a document for a program: neither is wrapped. */
const WIDE_BY_NATURE = /^(new|schema|completion|each)\b|--json|--format/

inExampleFolder()

it.each(Object.entries(runs))('%s stands in the list', async (file, load) => {
  const name = /([a-z-]+)\.run\.ts$/.exec(file)![1]
  const command = COMMANDS.find(one => one.name === name)
  expect(command, `no command ${name} in list.ts`).toBeDefined()
  expect((await command!.load()).run).toBe((await load()).run)
})

it('no command stands in the list twice, and none without its work', () => {
  expect(COMMANDS.map(({ name }) => `../../src/commands/${name}.run.ts`).sort()).toEqual(Object.keys(runs).sort())
})

describe.each(COMMANDS)('$name', ({ name, summary, rows, examples }) => {
  it('says in a few words what it does', () => {
    expect(summary).toMatch(/^[a-z].*[^.]$/)
  })

  it('has two examples or more', () => {
    expect(examples.length).toBeGreaterThanOrEqual(2)
    expect(examples.filter(example => !example.startsWith(name))).toEqual([])
  })

  it.each(Object.entries<Row>(rows))('%s is described', (option, row) => {
    expect(option).toMatch(/^[a-z]+(-[a-z]+)*$/)
    expect(row.says).toMatch(/\S/)
    if (row.short !== undefined) expect(row.short).toMatch(/^[a-z]$/)
    expect(row.takes === 'flag' ? row.value : 'none').toBe(row.takes === 'flag' ? '' : 'none')
    if (row.takes === 'quantity' || row.takes === 'span') expect(rowOf(row.kind!)).toBeDefined()
    if (row.takes === 'choice') expect(row.of!.length).toBeGreaterThan(1)
  })

  it.each(Object.entries<Row>(rows).filter(([, row]) => row.default !== undefined))(
    '%s has a default that can be read, and a reason for it',
    (_, row) => {
      expect(row.why).toMatch(/\S/)
      expect(row.required).toBeUndefined()
      if (row.takes === 'quantity') expect(parseQuantity(row.kind!, row.default!).ok).toBe(true)
      if (row.takes === 'choice') expect(row.of).toContain(row.default)
    }
  )

  it('shows its examples with --help', async () => {
    const { exit, out } = await outputOf([name, '--help'])
    expect(exit).toBe(0)
    for (const example of examples) expect(out).toContain(`fettle ${example}`)
  })

  describe.each(examples)('%s', example => {
    it.each([[], ['--json'], ['--working'], ['--json', '--working', '--strict']])('runs with %j', async (...more) => {
      const { exit, out, err } = await outputOf([...wordsOf(example), ...more.flat()])
      expect([0, 1], err).toContain(exit)
      expect(out + err).toMatch(/\S/)
      expect(out + err).not.toMatch(NO_FIGURE)
      expect(out + err).not.toMatch(/\bsafe\b/i)
    })

    it('prints one JSON document with --json', async () => {
      const { out } = await outputOf([...wordsOf(example), '--json'])
      const documents = IN_LINES.test(example) ? out.trim().split('\n') : [out]
      for (const document of documents) if (document !== '') expect(JSON.parse(document)).toBeTypeOf('object')
    })

    it.each([80, 100])('fits a page of %d columns', async columns => {
      const { out } = await outputOf(wordsOf(example), columns)
      const wide = out.split('\n').filter(line => [...line].length > columns)
      expect(WIDE_BY_NATURE.test(example) ? [] : wide).toEqual([])
    })

    it.each([20, 60, 200])('runs on a page of %d columns', async columns => {
      expect([0, 1]).toContain((await outputOf(wordsOf(example), columns)).exit)
    })
  })
})
