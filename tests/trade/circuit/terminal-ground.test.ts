// example: trade names of alloys (memory).
import { expect, it } from 'vitest'
import { contactRiseK } from '../../../src/trade/circuit/terminal-bond.ts'
import { alloyFamily, GROUND_METALS } from '../../../src/trade/circuit/terminal-ground.ts'

it.each([
  ['AZ91D', 'magnesium'],
  ['AZ91D die cast', 'magnesium'],
  ['die-cast AM60B', 'magnesium'],
  ['ZE41A', 'magnesium'],
  ['WE43', 'magnesium'],
  ['MgAl9Zn1', 'magnesium'],
  ['EN-MC 21120', 'magnesium'],
  ['magnesium', 'magnesium'],
  ['A380.0 die cast', 'aluminium'],
  ['a 380', 'aluminium'],
  ['356.0-T6 sand cast', 'aluminium'],
  ['AlSi9Cu3', 'aluminium'],
  ['EN AC-46000', 'aluminium'],
  ['LM25', 'aluminium'],
  ['aluminium', 'aluminium'],
  ['ZAMAK 5 die cast', 'zinc'],
  ['ZA-27', 'zinc'],
  ['grey iron class 30', 'iron'],
  ['AlSi9Cu3(Fe)', 'aluminium'],
  ['cast iron', 'iron'],
  ['EN-GJS-400-15', 'iron'],
  ['EN-GJL-250', 'iron'],
  ['GG-25', 'iron'],
  ['GGG40', 'iron'],
  ['aluminium or magnesium', 'magnesium'],
  ['perhaps magnesium', 'magnesium'],
  ['not magnesium', undefined],
  ['no magnesium', undefined],
  ['looks like aluminium', undefined],
  ['aluminium?', undefined],
  ['A380, I think', undefined],
  ['no iron', undefined],
  ['zinc or pot metal', undefined],
  ['alloy nobody knows', undefined],
  ['pot metal', undefined]
])('%s is %s', (alloy, family) => {
  expect(alloyFamily(alloy)).toBe(family)
})

it('grounds nothing on magnesium', () => {
  expect(
    Object.entries(GROUND_METALS)
      .filter(([, { ground }]) => ground === 'never')
      .map(([family]) => family)
  ).toEqual(['magnesium'])
})

it('warms a contact with the square of the current', () => {
  // 27.8 · (15/30)² = 6.95
  expect(contactRiseK({ knownRiseK: 27.8, currentA: 15, knownA: 30 })).toBeCloseTo(6.95, 9)
})
