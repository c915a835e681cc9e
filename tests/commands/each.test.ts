// example: one quick command a line in, one result a line out
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { wordsOf } from '../docs/example-output.ts'
import { ran } from './run.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-each-'))
afterAll(() => rmSync(folder, { recursive: true }))

const answers = async (lines: string, ...words: readonly string[]) => {
  const { exit, out, err } = await ran(['each', ...words], lines)
  return {
    exit,
    err,
    documents:
      out === ''
        ? []
        : out
            .trimEnd()
            .split('\n')
            .map(line => JSON.parse(line))
  }
}

describe('every example of every quick command', () => {
  const examples = COMMANDS.flatMap(command => command.examples.map(example => ({ command, example })))

  it.each(examples)('$example', async ({ command, example }) => {
    const { run } = await command.load()
    if (!('quick' in run)) return
    const alone = await ran([...wordsOf(example), '--json'])
    const { exit, documents } = await answers(`${example}\n`)
    const { line, exit: own, ...document } = documents[0]
    expect(document).toEqual(JSON.parse(alone.out))
    expect([line, own, exit]).toEqual([1, alone.exit, alone.exit])
  })
})

it('skips remarks and blank lines, and counts them', async () => {
  const { documents } = await answers('# a remark\n\n  \ndrill 7/16 # and another\r\n  # last\ntorque "1 N·m"')
  expect(documents.map(({ line, command }) => [line, command])).toEqual([
    [4, 'drill'],
    [6, 'torque']
  ])
})

it('the name of the program may stand before the command', async () => {
  expect((await answers('fettle drill 7/16')).documents[0].results.diameter.value).toBe(11.1125)
})

it('takes the words that every command takes', async () => {
  const { documents } = await answers('drill 7/16 --working --json\ndrill 7/16')
  expect([documents[0].working, documents[1].working]).toEqual([[], undefined])
})

describe('a faulty line', () => {
  it.each([
    ['an unknown command', 'torqe 155 in-lb', 'torqe', 'torque'],
    ['an unknown option', 'torque 155 in-lb --tool-acuracy "4 %"', '--tool-acuracy', '--tool-accuracy'],
    ['a quantity that is none', 'torque 155 in-lbb', 'in-lbb', 'lbf'],
    ['a quote left open', 'torque "155 in-lb', 'not closed', null],
    ['a command of jobs', 'check examples', 'no quick command', null],
    ['a missing word', 'drop --current "8 A"', 'nothing', null],
    ['an option without its value', 'torque 155 in-lb --to', 'without a value', null]
  ])('%s', async (_, text, found, near) => {
    const { exit, documents } = await answers(`drill 7/16\n${text}\ndrill 1/2`)
    expect(exit).toBe(2)
    expect(documents).toHaveLength(3)
    const [error] = documents[1].errors
    expect(error.where).toMatchObject({ file: '-', line: 2 })
    expect(error.found).toContain(found)
    if (near !== null) expect(error.near).toContain(near)
    expect([documents[0].exit, documents[1].exit, documents[2].exit]).toEqual([0, 2, 0])
  })

  it('of many thousand letters is not kept', async () => {
    const { exit, documents } = await answers(`${'x'.repeat(100_000)}\ndrill 7/16`)
    expect(exit).toBe(2)
    expect(documents.map(({ line, errors }) => [line, errors?.[0].found])).toEqual([
      [1, 'a line without end'],
      [2, undefined]
    ])
  })
})

it('the highest line sets the end', async () => {
  const fails = 'drop --current "8 A" --wire "0.5 mm2" --length "9 m" --voltage "12 V" --limit "3 %"'
  expect((await answers('drill 7/16')).exit).toBe(0)
  expect((await answers(`${fails}\ndrill 7/16`)).exit).toBe(1)
  expect((await answers(`${fails}\ndrill`)).exit).toBe(2)
})

it('reads a file, and says where a fault of it stands', async () => {
  const file = join(folder, 'lines.txt')
  writeFileSync(file, '\uFEFFdrill 7/16\ndrill 7/17')
  const { documents } = await answers('', file)
  expect(documents[0].exit).toBe(0)
  expect(documents[1].errors[0].where).toMatchObject({ file, line: 2 })
})

it.each(['gone.txt', 'src'])('%s is no file of lines', async file => {
  const { exit, err, documents } = await answers('', file)
  expect([exit, documents.length]).toEqual([2, 0])
  expect(err).toContain(file)
})

it('answers before it is asked again', async () => {
  const seen: number[] = []
  let printed = 0
  async function* slowly() {
    for (const text of ['drill 7/16\n', 'drill 1/2\n']) {
      seen.push(printed)
      yield text
    }
  }
  await ran(['each'], '', {
    input: slowly(),
    drained: async () => {
      printed++
    }
  })
  expect(seen).toEqual([0, 1])
})
