// property: every rule has its id, its place in the list, its test and its section in the handbook
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../../src/formula/source.ts'
import { RULES } from '../../src/rules/list.ts'
import type { Rule } from '../../src/rules/rule.ts'

const files = import.meta.glob<Record<string, unknown>>(['../../src/rules/*/*.ts', '!../../src/rules/practice/**'], { eager: true })

function isRule(value: unknown): value is Rule<never> {
  return typeof value === 'object' && value !== null && 'judge' in value
}

describe.each(Object.entries(files))('%s', (file, exported) => {
  const [, path] = /src\/rules\/(.*)\.ts$/.exec(file)!
  const rules = Object.values(exported).filter(isRule)

  it('exports one rule and nothing else', () => {
    expect(rules).toHaveLength(1)
    expect(Object.keys(exported)).toHaveLength(1)
  })

  it('has its path for an id', () => {
    expect(rules[0]?.id).toBe(path)
  })

  it('stands in the list', () => {
    expect(RULES).toContain(rules[0])
  })

  it('has a test at the same path', () => {
    expect(existsSync(`tests/rules/${path}.test.ts`), `tests/rules/${path}.test.ts`).toBe(true)
  })

  it('has a section in the handbook', () => {
    expect(readFileSync('docs/rules.md', 'utf8')).toContain(`\n### ${path}\n`)
  })

  it('asks a question, says why it matters and what to change, and names a source', () => {
    expect(rules[0]?.question).toMatch(/^[a-z].*\?$/)
    expect(rules[0]?.why).toMatch(/\.$/)
    expect(rules[0]?.change).not.toBe('')
    expect(Object.values(SOURCES)).toContain(rules[0]?.source)
  })
})

it('nothing stands in the list twice, and nothing without a file', () => {
  const ids = RULES.map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  expect([...ids].sort()).toEqual(
    Object.keys(files)
      .map(file => /src\/rules\/(.*)\.ts$/.exec(file)![1])
      .sort()
  )
})
