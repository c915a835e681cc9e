// Example: names of materials, and figures that stand in no collected row (memory).
import { expect, it } from 'vitest'
import { MATERIAL_ALIASES, MATERIALS, materialNamed } from '../../../src/trade/heat/materials.ts'

it('aluminium without an alloy takes 900 J/(kg·K), from memory', () => {
  expect(materialNamed('aluminium')!.heatJPerKgK.value).toBe(900)
  expect(materialNamed('aluminium')!.heatJPerKgK.source.label).toBe('memory')
})

it.each(['A380', ' a380 ', 'Zinc alloy 3', 'cast iron', 'brass', 'aluminum'])('knows %j', name => {
  expect(materialNamed(name)).toBeDefined()
})

it.each(['unobtainium', 'constructor', ''])('does not know %j', name => {
  expect(materialNamed(name)).toBeUndefined()
})

it('every alias leads to a row', () => {
  for (const name of Object.values(MATERIAL_ALIASES)) expect(MATERIALS).toHaveProperty([name])
})

it('every span holds its figure', () => {
  for (const { heatJPerKgK, densityKgPerM3, conductivityWPerMK } of Object.values(MATERIALS))
    for (const figure of [heatJPerKgK, densityKgPerM3, conductivityWPerMK])
      if (figure !== null) expect(figure.low <= figure.value && figure.value <= figure.high).toBe(true)
})
