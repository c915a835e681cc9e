// example: what a block may be said to be made of
import { describe, expect, it } from 'vitest'
import { readMaterial } from '../../../src/trade/heat/read-material.ts'

const read = (text: string) => {
  const outcome = readMaterial(text, ['warm', 'material'])
  if (!outcome.ok) throw new Error(outcome.fault.found)
  return outcome.value
}
const fault = (text: string) => {
  const outcome = readMaterial(text)
  if (outcome.ok) throw new Error('it was read')
  return outcome.fault
}

it.each(['aluminium', 'Aluminum', 'A356-T6', 'cast iron', 'BRASS', '380'])('%s is a name', name => {
  expect(read(name).source).not.toBeNull()
})

it('a row keeps its span and its place', () => {
  expect(read('grey-iron').heatJPerKgK).toMatchObject({ value: 544, low: 490, high: 544, at: ['warm', 'material'], assumed: undefined })
  expect(read('a380').metal?.conductivityWPerMK.value).toBe(96.2)
  expect(read('aluminium').metal).toBeNull()
})

it.each([
  ['900 J/kgK', 900],
  ['0.9 kJ/(kg·K)', 900],
  ['900 ± 20 J/kgK', 900]
])('%s is a specific heat', (text, value) => {
  expect(read(text)).toMatchObject({ source: null, metal: null })
  expect(read(text).heatJPerKgK.value).toBeCloseTo(value, 9)
})

describe('faults', () => {
  it('a name nobody knows, with the nearest', () => {
    expect(fault('alumnium')).toMatchObject({ found: '"alumnium"', near: 'aluminium' })
    expect(fault('alumnium').accepted).toContain('az91d')
  })
  it('a number without its unit, or with another', () => {
    expect(fault('900').found).toContain('no unit')
    expect(fault('900 J').found).toContain('J')
  })
  it('nothing, a prototype, and a very long text', () => {
    for (const text of ['', ' ', '__proto__', 'constructor', 'x'.repeat(1e5)]) expect(fault(text).accepted).toContain('aluminium')
  })
})

describe('a text by itself', () => {
  it('stands at the material where no other place was told', () => {
    expect(readMaterial('brass')).toMatchObject({ value: { heatJPerKgK: { at: ['material'] } } })
  })
  it('is a specific heat where it begins with a number, with its bounds and place', () => {
    expect(read(' +900 ± 20 J/kgK').heatJPerKgK).toMatchObject({ value: 900, low: 880, high: 920, at: ['warm', 'material'] })
    expect(fault('-900').found).toContain('no unit')
    expect(fault('.9').found).toContain('no unit')
  })
  it('is a name where a number comes later', () => {
    for (const text of ['b380', 'alloy 900 J/kgK', '*900 J/kgK']) expect(fault(text).accepted).toContain('aluminium')
  })
  it('has its nearest name found whatever stands around', () => {
    expect(fault('   alumnium   ').near).toBe('aluminium')
  })
  it('may be parted by several spaces', () => {
    expect(read('cast   iron').source).not.toBeNull()
    expect(read('cast_ iron').source).not.toBeNull()
  })
})
