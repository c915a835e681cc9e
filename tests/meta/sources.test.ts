// property: every source is used, and every source that is named is known
import { expect, it } from 'vitest'
import { SOURCES } from '../../src/formula/source.ts'
import { naming } from './source-naming.ts'

it.each(Object.keys(SOURCES))('%s is used by something', id => {
  expect(naming(id).length, `${id} stands in source.ts and nowhere else`).toBeGreaterThan(0)
})

it.each(Object.entries(SOURCES))('%s says what it is', (id, source) => {
  expect(source.id).toBe(id)
  expect(id).toMatch(/^[a-z0-9.-]+$/)
  expect(source.title).toMatch(/\S/)
  expect(['read', 'read-secondary', 'memory', 'common practice']).toContain(source.label)
})
