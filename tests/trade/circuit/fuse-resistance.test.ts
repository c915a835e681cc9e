// example: published rows, and where an estimate stands in.
import { expect, it } from 'vitest'
import { fuseResistance, meltingA2S } from '../../../src/trade/circuit/fuse-resistance.ts'
import { PROTECTION_STYLES, styleOf } from '../../../src/trade/circuit/protection-styles.ts'

it('takes the sheet where there is one', () => {
  expect(fuseResistance(styleOf('blade'), 40)).toMatchObject({ coldOhm: 0.00144, basis: 'published' })
  expect(fuseResistance(styleOf('blade'), 40)!.warmOhm).toBeCloseTo(0.0024, 12) // 96 mV / 40 A
  expect(fuseResistance(styleOf('blade'), 25)).toMatchObject({ coldOhm: 0.00252, basis: 'partly estimated' })
})

it('never estimates below a sheet', () => {
  for (const style of PROTECTION_STYLES)
    for (const { ratingA, coldOhm, dropV } of style.sheet) {
      if (coldOhm !== null) expect(0.063 / ratingA).toBeGreaterThanOrEqual(coldOhm)
      if (dropV !== null) expect(0.096).toBeGreaterThanOrEqual(dropV)
      expect(fuseResistance(style, ratingA)!.warmOhm).toBeGreaterThan(fuseResistance(style, ratingA)!.coldOhm)
    }
})

it('goes down with the rating', () => {
  expect(fuseResistance(styleOf('blade-mini'), 10)!.coldOhm).toBeCloseTo(0.0063, 12)
  expect(fuseResistance(styleOf('blade-mini'), 20)!.warmOhm).toBeCloseTo(0.0048, 12)
})

it('knows nothing of a glass fuse', () => {
  expect(fuseResistance(styleOf('glass'), 10)).toBeNull()
  expect(meltingA2S(styleOf('glass'), 10)).toBeNull()
})
