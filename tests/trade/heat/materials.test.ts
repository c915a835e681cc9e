// Example: names of materials, and figures that stand in no collected row (memory).
import { expect, it } from 'vitest'
import { softensC } from '../../../src/trade/heat/creep.ts'
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

it('melts in the order that every foundry knows, and half of it in kelvin is where zinc already creeps in a warm shop', () => {
  const order = [
    'zinc-alloy-3',
    'az91d',
    'aluminium',
    'a380',
    'a356',
    'brass-c36000',
    'copper-c11000',
    'grey-iron',
    'stainless-316',
    'steel-1020'
  ] as const
  const melts = order.map(name => MATERIALS[name].meltsC)
  expect(melts).toEqual([...melts].sort((a, b) => a - b))
  expect(softensC({ meltsC: MATERIALS['zinc-alloy-3'].meltsC })).toBeCloseTo(54, 0)
  expect(softensC({ meltsC: 540 })).toBeCloseTo(133.425, 6)
})

// Handbooks of metals in °F (memory): where melting begins, of castings the low end of the range.
it.each([
  ['zinc-alloy-3', 718],
  ['az91d', 875],
  ['380', 1000],
  ['a380', 1000],
  ['a356', 1035],
  ['brass-c36000', 1630],
  ['copper-c11000', 1949],
  ['grey-iron', 2065],
  ['stainless-316', 2507],
  ['steel-1020', 2680]
] as const)('%s begins to melt at %d °F', (name, fahrenheit) => {
  expect(Math.abs(MATERIALS[name].meltsC - (fahrenheit - 32) / 1.8)).toBeLessThan(5)
})

it('aluminium that is not named melts no later than any of its casting alloys', () => {
  // 319, the lowest of them: 960 °F (memory).
  expect(Math.abs(MATERIALS.aluminium.meltsC - (960 - 32) / 1.8)).toBeLessThan(2)
})
