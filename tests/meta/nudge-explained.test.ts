// property: every remark on a constant that may move unnoticed is about code that is there, once
import { existsSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const remarks = readFileSync('tests/scripts/nudge-explained.md', 'utf8').split(/^## /m).slice(1)

it.each(remarks.map(text => [text.slice(0, text.indexOf('\n')), text] as const))('of %s', (file, text) => {
  expect(existsSync(file)).toBe(true)
  const code = readFileSync(file, 'utf8')
  const asked = [...text.matchAll(/^- `([^`]+)`: \S/gm)].map(([, piece]) => piece!)
  expect(asked.length).toBeGreaterThan(0)
  expect(asked.filter(piece => code.split(piece).length !== 2)).toEqual([])
})
