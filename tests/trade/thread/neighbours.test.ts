// property: the neighbours of a size
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { DRILL_SETS } from '../../../src/trade/thread/drill.ts'
import { drillsOf } from '../../../src/trade/thread/drill-sets.ts'
import { neighbours } from '../../../src/trade/thread/neighbours.ts'

it('stand on both sides, with no drill of the set between', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), fc.constantFrom(...DRILL_SETS), (diameterMm, set) => {
      const rows = neighbours({ diameterMm }).filter(row => row.set === set)
      const [below, above] = [rows.find(({ place }) => place === 'below'), rows.find(({ place }) => place === 'above')]
      const between = drillsOf(set).filter(
        drill => drill.diameterMm > (below?.diameterMm ?? 0) && drill.diameterMm < (above?.diameterMm ?? 99)
      )
      expect(between.length).toBe(rows.filter(({ place }) => place === 'same').length)
      if (below !== undefined) expect(below.diameterMm).toBeLessThan(diameterMm)
      if (above !== undefined) expect(above.diameterMm).toBeGreaterThan(diameterMm)
    })
  )
})

it('a drill is its own size in its set, between the two beside it', () => {
  for (const set of DRILL_SETS) {
    const drills = drillsOf(set)
    for (const [i, { diameterMm }] of drills.entries()) {
      const names = neighbours({ diameterMm })
        .filter(row => row.set === set)
        .map(({ name, place }) => `${place} ${name}`)
      const expected = [
        ['below', drills[i - 1]],
        ['same', drills[i]],
        ['above', drills[i + 1]]
      ] as const
      expect(names).toEqual(expected.flatMap(([place, drill]) => (drill === undefined ? [] : [`${place} ${drill.name}`])))
    }
  }
})

it('a size off by rounding is the drill itself, not the one beside it', () => {
  for (const diameterMm of [6.35 - 1e-9, 6.35 + 1e-9]) {
    const rows = neighbours({ diameterMm }).filter(({ set }) => set === 'fraction')
    expect(rows.map(({ name, place }) => `${place} ${name}`)).toEqual(['below 15/64', 'same 1/4', 'above 17/64'])
  }
})

it('finds one size in two sets: 1/4 in is E', () => {
  const same = neighbours({ diameterMm: 6.35 }).filter(({ place }) => place === 'same')
  expect(same.map(({ name }) => name)).toEqual(['1/4', 'E'])
})
