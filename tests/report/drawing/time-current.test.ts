// snapshot: layout of a protector against its wire in characters; example: places on the axes by hand; property: it fits
import { describe, expect, it } from 'vitest'
import { svgOf } from '../../../src/report/drawing/svg.ts'
import { currentsOf, type TimeCurrent } from '../../../src/report/drawing/time-current.ts'
import { timeCurrentDrawing } from '../../../src/report/drawing/time-current-drawing.ts'
import { timeCurrentText } from '../../../src/report/drawing/time-current-text.ts'

/** Invented: from 1 A to 100 A; opens between 0.1 s and 100 s from 10 A on. */
const DRAWING: TimeCurrent = {
  title: 'A fuse <5 A> against its wire',
  says: 'invented figures',
  band: [
    { currentA: 1, shortestS: 1e6, longestS: null },
    { currentA: 10, shortestS: 0.1, longestS: 100 },
    { currentA: 100, shortestS: null, longestS: 1 }
  ],
  wire: [
    { currentA: 10, timeS: null },
    { currentA: 100, timeS: 10 }
  ],
  marks: [
    { name: 'load 3 A', currentA: 3, timeS: null },
    { name: 'short 50 A', currentA: 50, timeS: 1 }
  ]
}

it('runs from its least current to its greatest', () => {
  expect(currentsOf(DRAWING)).toEqual({ by: 'log', least: 1, most: 100 })
})

it('in characters', () => {
  expect(timeCurrentText(DRAWING, 40).join('\n')).toMatchInlineSnapshot(`
    "10000 s ┤       ┊
            │       ┊
            │       ┊
     1000 s ┤       ┊
            │       ┊
            │       ┊
      100 s ┤       ┊░░░░░░░░░░░░░░░
            │       ┊░░░░░░░░░░░░░░░
            │       ┊░░░░░░░░░░░░░░░
       10 s ┤       ┊░░░░░░░░░░░░░░░••••••••
            │       ┊░░░░░░░░░░░░░░░
            │       ┊░░░░░░░░░░░░░░░
        1 s ┤       ┊░░░░░░░░░░░░░░░░░◆░░░░░
            │       ┊░░░░░░░░░░░░░░░░░░░░░░░
            │       ┊░░░░░░░░░░░░░░░░░░░░░░░
      0.1 s ┤       ┊░░░░░░░░░░░░░░░░░░░░░░░
            │       ┊               ░░░░░░░░
            │       ┊               ░░░░░░░░
     0.01 s ┤       ┊               ░░░░░░░░
            └┴──────────────┴──────────────┴
             1 A            10 A       100 A
    ░ the band in which it opens
    • the wire stands it so long
    ┊ load 3 A   ◆ short 50 A"
  `)
})

describe.each([30, 60, 80, 160])('on %d columns', width => {
  const lines = timeCurrentText(DRAWING, width)
  it('it fits, and has no figure that is none', () => {
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(width)
    expect(lines.join('\n')).not.toMatch(/NaN|undefined|Infinity/)
  })
})

describe('as a drawing', () => {
  const drawing = timeCurrentDrawing(DRAWING, 'fuse')
  const svg = svgOf(drawing)
  it('says what it is, text as text', () => {
    expect(svg).toContain('<title id="fuse-title">A fuse &lt;5 A&gt; against its wire</title>')
    expect(svg).toContain('<desc id="fuse-words">invented figures</desc>')
  })
  it('has no figure that is none', () => {
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  })
  // 268 wide from 60: 10 A of 1 to 100 A is halfway, at 194. 190 tall from 22 over six powers of ten: 100 s is two below the top, at 85.33.
  it('stands on its axes', () => {
    expect(svg).toContain('<path class="band" d="M60 22L194 85.33L328 148.67L328 212L194 180.33L60 22Z"/>')
  })
  it('names each mark by a letter, below as in the plot', () => {
    const texts = drawing.shapes.flatMap(shape => (shape.shape === 'text' ? [shape.text] : []))
    for (const [letter, name] of [
      ['A', 'load 3 A'],
      ['B', 'short 50 A']
    ]) {
      expect(texts.filter(text => text === letter)).toHaveLength(2)
      expect(texts).toContain(name)
    }
  })
})
