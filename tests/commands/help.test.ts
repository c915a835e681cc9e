// example: help is as wide as its page, and names every word that a choice takes
import { expect, it } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { ran } from './run.ts'

it.each(COMMANDS.map(({ name }) => name))('%s fits a page of 100 columns, examples apart', async name => {
  const { out } = await ran([name, '--help'])
  const wide = out.split('\n').filter(line => line.length > 100 && !line.startsWith('  fettle '))
  expect(wide).toEqual([])
  const choices = Object.values(COMMANDS.find(one => one.name === name)!.rows).flatMap(row => ('of' in row ? (row.of ?? []) : []))
  for (const word of choices) expect(out).toContain(word)
})

it('lists every command, whatever word stands behind it', async () => {
  const { out } = await ran(['--help', 'torque'])
  for (const { name } of COMMANDS) expect(out).toContain(`\n  ${name} `)
})
