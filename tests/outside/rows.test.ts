// property: every published row is put to a check, and what is left out has its reason
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { leftOut } from '../outside-reporter.ts'

const files = import.meta.glob<Record<string, unknown>>('./rows/*.ts', { eager: true })
const TABLES = Object.entries(files).flatMap(([file, exported]) =>
  Object.entries(exported).flatMap(([name, rows]) => (Array.isArray(rows) ? [{ file, name, rows: rows as readonly object[] }] : []))
)
const CHECKS = ['tests/outside', 'tests/trade'].flatMap(folder =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.test.ts'))
    .map(name => readFileSync(`${folder}/${name}`, 'utf8'))
)

describe.each(TABLES)('$file $name', ({ name, rows }) => {
  it('is put to a check', () => {
    expect(CHECKS.filter(text => new RegExp(`\\b${name}\\b`).test(text)).length).toBeGreaterThan(0)
  })

  it('has rows', () => {
    expect(rows.length).toBeGreaterThan(0)
  })
})

it('counts the rows of the tables', () => {
  // As many as were copied; a row that falls out by mistake is missed here.
  expect(TABLES.reduce((sum, { rows }) => sum + rows.length, 0)).toBeGreaterThanOrEqual(1200)
})

it.each(leftOut())('%s', line => {
  expect(line).toMatch(/^- \S.+: \S.+\.$/)
})
