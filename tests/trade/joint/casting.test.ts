// Table: alloy names as people write them.
import { expect, test } from 'vitest'
import { readCasting } from '../../../src/trade/joint/casting.ts'
import { CASTING_ALLOYS } from '../../../src/trade/joint/casting-alloys.ts'

function fault(text: string) {
  const read = readCasting(text)
  if (read.ok) throw new Error(`read as ${read.value.name}`)
  return read.fault
}

test.each([
  ['A380', 'A380.0 die cast'],
  ['a380', 'A380.0 die cast'],
  [' A 380.0 ', 'A380.0 die cast'],
  ['A380 Die-Cast', 'A380.0 die cast'],
  ['380', '380.0 die cast'],
  ['356-T6 sand', '356.0-T6 sand cast'],
  ['A356.0 T6 permanent mold', 'A356.0-T6 permanent mould'],
  ['319-F', '319.0-F sand cast'],
  ['Zamak3', 'ZAMAK 3 die cast'],
  ['az91d', 'AZ91D die cast'],
  ['gray iron class 30', 'grey iron class 30'],
  ['grey iron 20', 'grey iron class 20'],
  ['grey cast iron class 25', 'grey iron class 25']
])('%s', (text, name) => {
  const read = readCasting(text)
  expect(read.ok && read.value.name).toBe(name)
})

test('an alloy that is cast in several ways names them, the weakest nearest', () => {
  expect(fault('A356').accepted).toContain('A356.0-T6 sand cast, A356.0-T6 permanent mould')
  expect(fault('A356').near).toBe('A356.0-T6 sand cast')
  expect(fault('319').near).toBe('319.0-F sand cast')
})

test.each([
  ['A381', 'A380'],
  ['AZ91', 'AZ91D'],
  ['zamac 3', 'ZAMAK 3'],
  ['A380.0 dye cast', 'A380.0 die cast'],
  ['my cast iron', 'grey iron class 20']
])('%s is near %s', (text, near) => {
  expect(fault(text).found).toBe(`unknown casting alloy "${text}"`)
  expect(fault(text).near).toBe(near)
})

test.each([
  ['AM60B', 'magnesium'],
  ['AZ92', 'magnesium'],
  ['Zamac zinc 380', 'zinc'],
  ['A381 iron', 'iron']
])('%s is %s: what is near it is none of another metal', (text, metal) => {
  const { near } = fault(text)
  expect(near === undefined ? metal : CASTING_ALLOYS.find(({ name: [alloy] }) => near.startsWith(alloy.replace(/\.0$/, '')))?.metal).toBe(
    metal
  )
})

test.each(['unobtainium', '160 MPa', '', 'ductile iron', 'nodular iron 60-40-18'])('"%s" is no alloy and near to none', text => {
  expect(fault(text).near).toBeUndefined()
  expect(fault(text).accepted).toContain('or a shear strength, as "160 MPa"')
})

test('blanks around an alloy are not counted as strokes', () => {
  expect(fault('        A381        ').near).toBe('A380')
})

// The alloy is printed, its shear strength was found nowhere.
test('an alloy without a shear strength says so, and is not offered', () => {
  expect(fault('383').found).toBe('no shear strength of 383.0 die cast was found in print')
  expect(fault('unobtainium').accepted).not.toContain('383')
})

test('of an alloy that is cast in several ways the weakest stands first: the hint takes the first', () => {
  for (const [i, { name, shearMpa }] of CASTING_ALLOYS.entries()) {
    const later = CASTING_ALLOYS.slice(i + 1).filter(other => other.name[0] === name[0])
    for (const other of later) expect(other.shearMpa!, name[0]).toBeGreaterThanOrEqual(shearMpa!)
  }
})
