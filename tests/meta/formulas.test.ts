// property: every formula of a trade room stands in the list that `explain` and the handbook read, and in the handbook
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { FORMULA_FILES, formulasOf } from '../../src/commands/formulas.ts'
import { SOURCES } from '../../src/formula/source.ts'
import { FORMULAS } from '../formula/every-formula.ts'

describe.each(FORMULAS)('$file $name', ({ room, name, formula }) => {
  it('stands in the list, under its room', () => {
    expect(formulasOf(FORMULA_FILES[room] ?? [])).toContain(formula)
  })

  it('names a source of the list', () => {
    expect(Object.values(SOURCES)).toContain(formula.source)
  })

  it('has a section in the handbook', () => {
    expect(readFileSync(`docs/formulas/${room}.md`, 'utf8')).toContain(`\n## ${name}\n`)
  })
})

it('no two formulas have one name', () => {
  const names = FORMULAS.map(({ name }) => name)
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
})

it('nothing stands in the list that is in no trade room', () => {
  const known = new Set<unknown>(FORMULAS.map(({ formula }) => formula))
  expect(formulasOf(Object.values(FORMULA_FILES).flat()).filter(one => !known.has(one))).toEqual([])
})
