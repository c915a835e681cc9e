// example: words read by rows give what the option parser of the program gives, over every example of every command
import { describe, expect, it } from 'vitest'
import type { Description, Typed } from '../../src/commands/describe.ts'
import { COMMANDS } from '../../src/commands/list.ts'
import { called } from '../../src/commands/program.ts'
import { readOptions } from '../../src/commands/read-options.ts'
import { wordsOf } from '../docs/example-output.ts'

const streams = { out: () => {}, err: () => {}, columns: 80, colour: () => false }

/** What the program hands to the work of a command. */
async function typedBy(command: Description, words: readonly string[]): Promise<Typed | undefined> {
  let typed: Typed | undefined
  const spied = {
    ...command,
    load: async () => ({
      run: (given: Typed) => {
        typed = given
        return 0
      }
    })
  }
  await called([spied], [command.name, ...words], 'test', streams)
  return typed && Object.fromEntries(Object.entries(typed).filter(([, value]) => value !== undefined))
}

const bothWays = async (command: Description, words: readonly string[]) => {
  const read = readOptions(command, words)
  return [read.ok ? { ...read.value.typed } : undefined, await typedBy(command, words)]
}

describe.each(COMMANDS)('$name', command => {
  it.each(command.examples)('%s', async example => {
    const [read, typed] = await bothWays(command, wordsOf(example).slice(1))
    expect(read).toEqual(typed)
  })
})

describe('an option of one value that is given twice is refused', () => {
  it.each([
    ['heater', ['--power', '45W', '--power', '60W', '--voltage', '24V'], '--power twice: "45W" and "60W"', '--power'],
    ['heater', ['--power=45W', '--voltage', '24V', '--power', '45W'], '--power twice: "45W" and "45W"', '--power'],
    ['check', ['-', '--format', 'json', '--format', 'ndjson'], '--format twice: "json" and "ndjson"', '--format'],
    ['drill', ['7 mm', '--units', 'inch', '--units', 'metric'], '--units twice: "inch" and "metric"', '--units'],
    ['new', ['-o', 'a.yaml', '-ob.yaml'], '--output twice: "a.yaml" and "b.yaml"', '--output']
  ])('%s %j', async (name, words, found, path) => {
    expect(readOptions(command(name), words)).toMatchObject({ ok: false, fault: { found } })
    expect(await called(COMMANDS, [name, ...words], 'test', streams)).toMatchObject({
      errors: [{ found, accepted: `${path} once`, where: { path } }]
    })
  })
  it.each([
    ['seat', ['--stack', '1 mm', '--stack', '1 mm']],
    ['drill', ['7 mm', '--json', '--json']]
  ])('but not what may be several, nor a flag: %s %j', (name, words) => {
    expect(readOptions(command(name), words).ok).toBe(true)
  })
})

const command = (name: string) => COMMANDS.find(one => one.name === name)!

it.each([
  ['torque', ['155', 'in-lb', '--to=N·m']],
  ['torque', ['--strict', '155', '--to', 'N·m', 'in-lb', '--json']],
  ['torque', ['155', 'in-lb', '--to']],
  ['torque', ['155', 'in-lb', '--too', 'N·m']],
  ['torque', ['155', 'in-lb', '--angle', '-5 °']],
  ['torque', ['-5', 'N·m']],
  ['torque', ['--', '-5', 'N·m']],
  ['torque', ['1 N·m', '--to', 'N·m', '--to', 'lbf·in']],
  ['seat', ['--stack', '1 mm', '--stack', '2 mm,3 mm', '--thread', 'M12', '--thread-length', '9 mm', '--thread-depth', '10 mm']],
  ['seat', ['a word']],
  ['check', ['-', '--format', 'ndjson']],
  ['new', ['-o', 'a.yaml']],
  ['new', ['-oa.yaml', '--force']]
])('%s %j', async (name, words) => {
  const [read, typed] = await bothWays(command(name), words)
  expect(read).toEqual(typed)
})
