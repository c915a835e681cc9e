// property: laws of the drawing as SVG; example: its sizes by hand
import { describe, expect, it } from 'vitest'
import { sectionSvg } from '../../../src/report/drawing/section-svg.ts'
import { BOSS, SEATED } from './invented.ts'

/** Every tag opened is closed, in order. */
function openTags(svg: string): readonly string[] {
  const open: string[] = []
  for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
    if (close === '/') expect(open.pop()).toBe(name)
    else if (self !== '/') open.push(name!)
  }
  return open
}

describe.each([
  ['a boss', BOSS],
  ['with a part', SEATED]
])('%s', (_, section) => {
  const svg = sectionSvg(section)

  it('is whole, and has no figure that is none', () => {
    expect(openTags(svg)).toEqual([])
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  })

  it('says what it is to whoever does not see it', () => {
    expect(svg).toContain('role="img" aria-labelledby="section-title section-says"')
    expect(svg).toContain('<title id="section-title">A hole in section</title>')
    expect(svg).toContain('<desc id="section-says">an old hole, opened and tapped</desc>')
  })
})

// Ten units to the millimetre: a hole of 8 mm, 20 deep, from its left wall round to its right.
it('is to scale', () => {
  const svg = sectionSvg(BOSS)
  expect(svg).toContain('class="found" points="-40,0 -40,0 -40,200 0,200 0,200 40,200 40,0 40,0"')
  expect(svg).toContain('class="drilled" points="-50,0 -50,0 -50,150 0,180 0,180 50,150 50,0 50,0"')
  expect(svg).toMatch(/class="thread" x="50" y="0" width="10" height="100"/)
  expect(svg).toMatch(/class="metal" x="-[\d.]+" y="0" width="[\d.]+" height="250"/)
})

it('two drawings on one page keep their names apart', () => {
  expect(sectionSvg(BOSS, { id: 'left' })).toContain('aria-labelledby="left-title left-says"')
})

it('whatever a title holds is text', () => {
  const svg = sectionSvg({ ...BOSS, title: '</title><script>x</script>&"\u001b[31m' })
  expect(svg).toContain('<title id="section-title">&lt;/title&gt;&lt;script&gt;x&lt;/script&gt;&amp;&quot; [31m</title>')
  expect(openTags(svg)).toEqual([])
})
