// example: an invented warm-up, its places by hand
import { describe, expect, it } from 'vitest'
import { svgOf } from '../../../src/report/drawing/svg.ts'
import { type WarmCourse, warmCourseDrawing } from '../../../src/report/drawing/warm-course.ts'

/** Invented: from 0 °C to 100 °C within 10 min, straight. */
const COURSE: WarmCourse = {
  title: 'Warm-up <1>',
  says: 'invented figures',
  points: [
    { timeS: 0, castingC: 0 },
    { timeS: 600, castingC: 100 }
  ],
  levels: [{ name: 'target 50 °C', levelC: 50 }],
  reached: { name: 'there after 5 min', timeS: 300, castingC: 50 }
}

describe('a warm-up', () => {
  const drawing = warmCourseDrawing(COURSE, 'warm')
  const svg = svgOf(drawing)

  it('stands on its axes', () => {
    // 268 wide from 60. 190 tall from 22, with 4 of 108 left free above and below: 0 °C at 22 + 190·104/108, 100 °C at 22 + 190·4/108.
    expect(svg).toContain('<path class="wire" d="M60 204.96L328 29.04"/>')
    expect(svg).toContain('<circle class="arrow" cx="194" cy="117" r="3.5"/>')
  })

  it('names its levels and the moment it is there', () => {
    const texts = drawing.shapes.flatMap(shape => (shape.shape === 'text' ? [shape.text] : []))
    for (const text of ['the casting', 'target 50 °C', 'there after 5 min', '0 min', '5 min', '10 min']) expect(texts).toContain(text)
    expect(texts.filter(text => text === 'A')).toHaveLength(2)
  })

  it('escapes what it is called', () => expect(svg).toContain('Warm-up &lt;1&gt;'))
})

it('one that never gets there has no such moment', () => {
  const svg = svgOf(warmCourseDrawing({ ...COURSE, levels: [], reached: null }, 'warm'))
  expect(svg).not.toContain('circle')
  expect(svg).not.toMatch(/NaN|undefined|Infinity/)
})
