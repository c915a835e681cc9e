// property: a line of many is the document of its answer, letter for letter
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import type { QuickRun } from '../../src/commands/quick-sum.ts'
import { readOptions } from '../../src/commands/read-options.ts'
import { onCommandLine } from '../../src/quantity/diagnostic.ts'
import type { Answer } from '../../src/report/answer.ts'
import { documentOf } from '../../src/report/json.ts'
import { lineText } from '../../src/report/json-line.ts'
import { wordsOf } from '../docs/example-output.ts'

const locate = (path: readonly (string | number)[]) => onCommandLine(path.join('.'))

function expected(answer: Answer, line: number, exit: number): string {
  const { format, command, ...rest } = documentOf(answer, locate) as Record<string, unknown>
  return `${JSON.stringify({ format, command, line, exit, ...rest })}\n`
}

describe('every example of every quick command, twice', () => {
  const examples = COMMANDS.flatMap(command => command.examples.map(example => ({ command, example })))

  it.each(examples)('$example', async ({ command, example }) => {
    const { run } = await command.load()
    if (!('quick' in run)) return
    const { quick } = run as QuickRun
    const options = readOptions(command, wordsOf(example).slice(1))
    if (!options.ok) throw new Error(options.fault.found)
    for (const working of [false, true]) {
      const { answer } = quick(options.value.typed, { working, strict: false })
      for (const line of [1, 2]) expect(lineText(answer, { line, exit: 0 }, locate)).toBe(expected(answer, line, 0))
    }
  })
})

it('whatever the words and numbers', () => {
  const text = fc.string({ unit: 'binary' })
  const numbers = fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }), { nil: null })
  const result = fc.record({ id: fc.constantFrom('a', 'b', 'turns."x"'), name: text, symbol: text, value: fc.oneof(numbers, text) })
  const input = fc.record({ value: numbers, low: numbers, high: numbers, unit: text, assumed: fc.option(text, { nil: null }), text })
  fc.assert(
    fc.property(result, numbers, input, text, ({ id, name, symbol, value }, low, held, command) => {
      const ends = low === null ? null : ([low, low] as const)
      const one = { id, name, symbol, value, unit: 'mm', low, high: low, rss: ends, source: 'arithmetic', shown: 'length' } as const
      const answer = { command, title: '', inputs: { 'found-depth': held }, results: [one], tables: {}, findings: [], cautions: [] }
      expect(lineText(answer, { line: 7, exit: 1 }, locate)).toBe(expected(answer, 7, 1))
    })
  )
})
