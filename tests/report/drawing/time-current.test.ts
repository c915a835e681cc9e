// snapshot: layout of a protector against its wire in characters; example: places on the axes by hand; property: it fits
import { describe, expect, it } from 'vitest'
import { along, currentsOf, decadesOf, type TimeCurrent } from '../../../src/report/drawing/time-current.ts'
import { timeCurrentSvg } from '../../../src/report/drawing/time-current-svg.ts'
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

it('stands on its axes by powers of ten', () => {
  expect(currentsOf(DRAWING)).toEqual({ least: 1, most: 100 })
  expect(along({ least: 1, most: 100 }, 10)).toBeCloseTo(0.5, 12)
  expect(along({ least: 1, most: 100 }, 0.1)).toBe(0)
  expect(along({ least: 1, most: 100 }, 1e4)).toBe(1)
  expect(decadesOf({ least: 2, most: 250 })).toEqual([10, 100])
  expect(decadesOf({ least: 0.01, most: 1 })).toEqual([0.01, 0.1, 1])
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

describe('as SVG', () => {
  const svg = timeCurrentSvg(DRAWING)
  it('says what it is, text as text', () => {
    expect(svg).toContain('<title id="time-current-title">A fuse &lt;5 A&gt; against its wire</title>')
    expect(svg).toContain('<desc id="time-current-says">invented figures</desc>')
  })
  it('has no figure that is none', () => {
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  })
  // 560 wide from 64: 10 A of 1 to 100 A is halfway, at 344. 360 tall from 12 over six powers of ten: 100 s is two below the top, at 132.
  it('stands on its axes', () => {
    expect(svg).toContain('class="band" points="64,12 344,132 624,252 624,372 344,312 64,12"')
    expect(svg).toContain('class="wire" points="624,192"')
    expect(svg).toMatch(/<circle cx="539.7" cy="252" r="5"/)
  })
})
