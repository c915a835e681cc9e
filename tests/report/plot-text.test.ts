// snapshot: layout of a curve of characters; example: widths, and levels that meet
import { describe, expect, it } from 'vitest'
import { plotText } from '../../src/report/plot-text.ts'

const columns = [
  { key: 'time', name: 'time', unit: 's', shown: 'time' },
  { key: 'temperature', name: 'temperature', unit: '°C', shown: 'temperature' }
] as const
const rows = Array.from({ length: 61 }, (_, i) => ({ time: 30 * i, temperature: 30 * (1 - Math.exp(-i / 20)) - 5 }))
const drawn = (levels: readonly { name: string; value: number }[], width = 60) =>
  plotText({ columns, rows, plot: { x: 'time', y: 'temperature', levels } }, width)

it('draws curve, levels and axis', () => {
  expect(
    drawn(
      [
        { name: 'steady', value: 25 },
        { name: 'target', value: 3 }
      ],
      44
    )
  ).toMatchInlineSnapshot(`
    "25.0 ┤╌ steady 25.0 ╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌
         │                         •••••••••••••
         │                   ••••••
         │              •••••
         │           •••
         │         ••
         │       ••
         │     ••
         │╌╌╌╌•╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌ target 3.0 ╌
         │  ••
         │ •
    -5.0 ┤•
         └──────────────────────────────────────
          0                               1800 s"
  `)
})

describe('it fits', () => {
  it.each([30, 44, 60, 100, 200])('a page of %d columns', width => {
    for (const line of drawn([{ name: 'steady', value: 25 }], width).split('\n')) expect(line.length).toBeLessThanOrEqual(width)
  })
  it('never gets narrower than can be read', () => {
    expect(
      Math.max(
        ...drawn([], 5)
          .split('\n')
          .map(line => line.length)
      )
    ).toBeGreaterThanOrEqual(16)
  })
})

it('names levels that meet on one line both', () => {
  expect(
    drawn([
      { name: 'steady', value: 25 },
      { name: 'target', value: 25.2 }
    ])
  ).toContain('steady 25.0, target 25.2')
})

it('draws what does not move', () => {
  const flat = rows.map(({ time }) => ({ time, temperature: 4 }))
  const text = plotText({ columns, rows: flat, plot: { x: 'time', y: 'temperature', levels: [] } }, 60)
  expect(text.split('\n')[0]).toMatch(/^4\.0 ┤•+$/)
  expect(text).not.toMatch(/NaN|undefined/)
})
