// table: contrast of text by the formula of WCAG 2.1 (read-secondary): 4.5 or more at level AA, success criterion 1.4.3; 3 or more for lines that are looked at, 1.4.11
import { describe, expect, it } from 'vitest'
import { DARK, LIGHT, PAIRS, type Palette } from '../../../src/report/sheet/palette.ts'

const linear = (part: number) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4)
const luminance = (colour: string) => {
  const [r, g, b] = [1, 3, 5].map(at => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255)) as [number, number, number]
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
const contrast = (a: string, b: string) => {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

it.each([
  ['#000000', '#ffffff', 21],
  ['#777777', '#ffffff', 4.48]
])('the formula gives what is published for %s on %s', (a, b, published) => {
  expect(contrast(a, b)).toBeCloseTo(published, 2)
})

describe.each<[string, Palette]>([
  ['light', LIGHT],
  ['dark', DARK]
])('%s', (_, palette) => {
  it.each(PAIRS)('%s on %s', (ink, ground) => {
    expect(contrast(palette[ink], palette[ground])).toBeGreaterThanOrEqual(4.5)
  })

  it.each(['ink', 'line', 'fail', 'caution', 'unjudged'] as const)('a line of %s is seen', colour => {
    expect(contrast(palette[colour], palette.page)).toBeGreaterThanOrEqual(3)
  })
})
