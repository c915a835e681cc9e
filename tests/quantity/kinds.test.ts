// example: the table of kinds holds together
import { describe, expect, it } from 'vitest'
import { findUnit, measureOf } from '../../src/quantity/find-unit.ts'
import { KIND_NAMES, type Kind, rowOf } from '../../src/quantity/kinds.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { FOREIGN, MEANT } from '../../src/quantity/spellings/foreign.ts'
import { SUFFIXES, unitOf } from '../../src/quantity/units.ts'

const LABELS = KIND_NAMES.flatMap(kind => Object.entries(rowOf(kind).units).map(([label, row]) => ({ kind, label, ...row })))

describe.each(KIND_NAMES)('%s', kind => {
  const { house, suffix, example, units, pure } = rowOf(kind)

  it('has the house unit that its suffix says, in its own table', () => {
    expect(house).toBe(unitOf(`some${suffix}`))
    expect(pure === true ? house === '' : house in units).toBe(true)
  })

  it('reads its own example', () => {
    expect(parseQuantity(kind, example)).toMatchObject({ ok: true })
  })

  it('gives no spelling to two units', () => {
    const spellings = Object.entries(units).flatMap(([label, { as = [], words = [] }]) =>
      [...new Set([label, ...as, ...words])].map(spelling => ({ label, spelling }))
    )
    for (const { label, spelling } of spellings) expect(findUnit(kind, spelling)?.label, spelling).toBe(label)
  })
})

it('reads a word in capitals, too', () => {
  for (const { kind, label, words = [] } of LABELS)
    for (const word of words) expect(findUnit(kind, word.toUpperCase())?.label, word).toBe(label)
})

it('never takes one prefix for another because of its case', () => {
  const rows: readonly (readonly [Kind, string])[] = [
    ['resistance', 'MOHM'],
    ['pressure', 'Mbar'],
    ['pressure', 'mpa'],
    ['power', 'MW'],
    ['speed', 'kN'],
    ['time', 'S'],
    ['current', 'MA'],
    ['length', 'Mm'],
    ['torque', 'nm']
  ]
  for (const [kind, text] of rows) expect(findUnit(kind, text), text).toBeUndefined()
})

it('has a kind for every suffix, but for what nobody types', () => {
  const covered = new Set(KIND_NAMES.map(kind => rowOf(kind).suffix as string))
  expect(Object.keys(SUFFIXES).filter(suffix => !covered.has(suffix))).toEqual([
    'OhmPerM',
    'M2KPerW',
    'WPerMK',
    'KgPerM3',
    'M2PerS',
    'JPerKg',
    'JPerK',
    'ARootSPerMm2',
    'A2S',
    'Rpm',
    'KgM',
    'PaS',
    'J'
  ])
})

it('names every foreign unit for what it is', () => {
  for (const [says, spellings] of Object.entries(FOREIGN))
    for (const spelling of spellings) expect(measureOf(spelling), spelling).toBe(says)
})

it('means only units that can be read', () => {
  for (const [kind, meant] of Object.entries(MEANT)) {
    for (const [written, unit] of Object.entries(meant)) {
      expect(findUnit(kind as Kind, written), written).toBeUndefined()
      expect(findUnit(kind as Kind, unit), unit).toBeDefined()
    }
  }
})
