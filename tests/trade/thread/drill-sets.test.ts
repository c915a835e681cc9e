// property: the four sets of drills
import { describe, expect, it } from 'vitest'
import { DRILL_SETS } from '../../../src/trade/thread/drill.ts'
import { drillsOf } from '../../../src/trade/thread/drill-sets.ts'
import { readDrill } from '../../../src/trade/thread/read-drill.ts'

describe.each(DRILL_SETS)('%s', set => {
  const drills = drillsOf(set)

  it('rises, with no size and no name twice', () => {
    const sizes = drills.map(({ diameterMm }) => diameterMm)
    expect(sizes).toEqual([...new Set(sizes)].toSorted((a, b) => a - b))
    expect(new Set(drills.map(({ name }) => name)).size).toBe(drills.length)
  })

  it('every drill is read by its name', () => {
    for (const drill of drills) expect(readDrill(drill.name)).toEqual({ ok: true, value: drill })
  })
})

// BS 328, ISO 235, DIN 338 practice (read-secondary, an encyclopedia) from 1 to 25 mm; x.25 and x.75 common practice.
it('metric drills go up as the standards say', () => {
  const metric = drillsOf('metric')
  const run = (fromMm: number, toMm: number, source: string) =>
    metric
      .filter(drill => drill.diameterMm >= fromMm && drill.diameterMm <= toMm && drill.source === source)
      .map(({ diameterMm }) => diameterMm)
  expect(run(1, 2.95, 'iso-235')).toHaveLength(40)
  expect(run(3, 13.9, 'iso-235')).toHaveLength(110)
  expect(run(14, 25, 'iso-235')).toHaveLength(45)
  expect(run(0, 60, 'drill-extras')).toEqual(Array.from({ length: 22 - 0 }, (_, i) => 3.25 + i / 2))
  expect([metric[0]?.diameterMm, metric.at(-1)?.diameterMm]).toEqual([0.2, 50])
})

it('fraction drills are every 64th of an inch to 1-1/2 in', () => {
  const fractions = drillsOf('fraction')
  for (const [i, { diameterMm }] of fractions.entries()) expect(diameterMm).toBeCloseTo(((i + 1) / 64) * 25.4, 12)
  expect([fractions[0], fractions[27], fractions[63], fractions.at(-1)].map(drill => drill?.name)).toEqual([
    '1/64',
    '7/16',
    '1 in',
    '1-1/2'
  ])
})
