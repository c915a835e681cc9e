// example: completion of every command, asked of a real bash; of zsh and fish the structure of the text
import { execFileSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { outputOf } from '../docs/example-output.ts'

const scriptOf = async (shell: string) => (await outputOf(['completion', shell])).out

/** What bash would offer after these words: the last is the one begun. */
function offered(script: string, ...words: readonly string[]): readonly string[] {
  const ask = `${script}
compopt() { :; }
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _fettle; printf '%s\\n' "\${COMPREPLY[@]}"`
  return execFileSync('bash', ['--norc', '-c', ask, 'bash', ...words], { encoding: 'utf8' })
    .split('\n')
    .filter(line => line !== '')
}

describe('bash', () => {
  it('offers every command, and those that begin as typed', async () => {
    const script = await scriptOf('bash')
    expect(offered(script, 'fettle', '')).toEqual([...COMMANDS.map(({ name }) => name), '--help', '--version'])
    expect(offered(script, 'fettle', 'dr')).toEqual(['drill', 'drop'])
  })

  it.each(COMMANDS)('offers every option of $name', async ({ name, rows }) => {
    const options = Object.entries(rows).flatMap(([option, row]) => (row.argument === true ? [] : [`--${option}`]))
    const found = offered(await scriptOf('bash'), 'fettle', name, '--')
    expect(found).toEqual(expect.arrayContaining([...options, '--json', '--help']))
    expect(new Set(found).size).toBe(found.length)
  })

  it('offers the choices of an option and of an argument', async () => {
    const script = await scriptOf('bash')
    expect(offered(script, 'fettle', 'hole', '--bottom', '')).toEqual(['flat', 'cone', 'radius'])
    expect(offered(script, 'fettle', '--json', 'drop', '--return', 'w')).toEqual(['wire'])
    expect(offered(script, 'fettle', 'new', 's')).toEqual(['sensor'])
  })

  it('offers nothing of its own where text is wanted, and leaves files to bash', async () => {
    const script = await scriptOf('bash')
    expect(offered(script, 'fettle', 'drop', '--current', '')).toEqual([])
    expect(offered(script, 'fettle', 'check', '')).toEqual([])
  })
})

describe.each(['zsh', 'fish'])('%s', shell => {
  it('names every command and every option, and closes its quotes', async () => {
    const script = await scriptOf(shell)
    for (const { name, rows } of COMMANDS) {
      expect(script).toContain(name)
      for (const [option, row] of Object.entries(rows))
        if (row.argument !== true) expect(script).toContain(shell === 'zsh' ? `'--${option}[` : `-l ${option} `)
    }
    // Both shells close a quote as bash does, but for fish's escaped one.
    const asBash = shell === 'fish' ? script.replaceAll("\\'", '') : script
    expect(() => execFileSync('bash', ['-n'], { input: asBash, stdio: ['pipe', 'ignore', 'pipe'] })).not.toThrow()
  })
})

it('another shell is told, with those there are', async () => {
  const { exit, err } = await outputOf(['completion', 'fihs'])
  expect(exit).toBe(2)
  expect(err).toContain('did you mean fish?')
})
