// table: lines split as a POSIX shell splits them (its own answers where bash is there, and a few by hand)
import { spawnSync } from 'node:child_process'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { splitLine } from '../../src/commands/split-line.ts'

const words = (line: string) => {
  const split = splitLine(line)
  return split.ok ? split.value : split.fault.found
}

it.each([
  ['torque 155 in-lb', ['torque', '155', 'in-lb']],
  ['drop  --bus\t"27 V"', ['drop', '--bus', '27 V']],
  [`thread 'M12x1.5' # the usual one`, ['thread', 'M12x1.5']],
  ['drill "#7"', ['drill', '#7']],
  ['drill 7#', ['drill', '7#']],
  [`a"b c"'d e'f\\ g`, ['ab cd ef g']],
  [`"5/16\\" deep" ""`, ['5/16" deep', '']],
  ['', []],
  ['   # only a remark', []]
])('%s', (line, expected) => {
  expect(words(line)).toEqual(expected)
})

it.each(['torque "155 in-lb', `drill '7/16`, 'a\\'])('%s is not closed', line => {
  expect(words(line)).toContain('not closed')
})

const bash = spawnSync('bash', ['--version']).status === 0

describe.skipIf(!bash)('outside program: bash', () => {
  it('splits the same', () => {
    const part = fc.oneof(
      fc.stringMatching(/^[a-z0-9.=+%-]{1,4}$/),
      fc.stringMatching(/^'[a-z "#]{0,4}'$/),
      fc.stringMatching(/^"[a-z '#]{0,4}"$/),
      fc.constantFrom(' ', '\t', '\\ ', '\\"', '"\\""')
    )
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), parts => {
        const line = parts.join('')
        const { stdout } = spawnSync('bash', ['--norc', '-c', `set -f; printf '%s\\0' ${line}`], { encoding: 'utf8' })
        // printf prints once where there is no word at all.
        const expected = /^[ \t]*$/.test(line) ? [] : stdout.split('\0').slice(0, -1)
        expect(words(line)).toEqual(expected)
      }),
      { numRuns: 60 }
    )
  })
})
