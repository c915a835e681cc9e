// property: laws of the drawing in a terminal; snapshot: its layout
import stringWidth from 'fast-string-width'
import { describe, expect, it } from 'vitest'
import { sectionText } from '../../../src/report/drawing/section-text.ts'
import { BOSS, SEATED } from './invented.ts'

const WIDTHS = Array.from({ length: 120 }, (_, i) => i + 20)

describe.each([
  ['a boss', BOSS],
  ['with a part', SEATED]
])('%s', (_, section) => {
  it('is never wider than the page', () => {
    for (const width of WIDTHS) expect(Math.max(...sectionText(section, width).map(line => stringWidth(line)))).toBeLessThanOrEqual(width)
  })

  it('names every depth and everything that it shows', () => {
    for (const width of [20, 40, 80]) {
      const text = sectionText(section, width).join('\n')
      for (const { text: name } of section.marks) expect(text).toContain(name)
      expect(text).toContain(section === SEATED ? '╪ threads engaged' : '≡ full thread')
    }
  })
})

// A column is c mm wide and a row 2c tall: 8 mm of old hole and 20 mm of its depth have to agree on c, within one character each.
it('is to scale both ways', () => {
  for (const width of [50, 80, 120]) {
    const lines = sectionText({ ...BOSS, marks: [] }, width)
    const columns = / +/.exec(lines[2]!.replace(/^[^ ]*/, ''))![0].length
    const rows = lines.filter(line => /[░·≡] +[░·≡]/.test(line)).length
    const [least, greatest] = [8 / (columns + 1), 8 / (columns - 1)]
    expect(20 / (2 * (rows + 1))).toBeLessThanOrEqual(greatest)
    expect(20 / (2 * (rows - 1))).toBeGreaterThanOrEqual(least)
  }
})

it('two depths in one row stand under each other', () => {
  const marks = [10, 10.1, 10.2].map(depthMm => ({ depthMm, text: `at ${depthMm}` }))
  const text = sectionText({ ...BOSS, marks }, 80).filter(line => line.includes('at 10'))
  expect(text).toHaveLength(3)
})

it('looks so', () => {
  expect(`\n${sectionText(SEATED, 60).join('\n')}\n`).toMatchSnapshot()
})
