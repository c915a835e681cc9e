// Table: property classes as people write them.
import { expect, test } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { classStrength, readPartClass } from '../../../src/trade/joint/part-class.ts'
import { PART_CLASSES } from '../../../src/trade/joint/part-classes.ts'

test.each([
  ['8.8', '8.8'],
  ['class 10.9', '10.9'],
  [' Class 4.6', '4.6'],
  ['a2-70', 'A2-70'],
  ['A4 80', 'A4-80']
])('%s', (text, name) => {
  const read = readPartClass(text)
  expect(read.ok && read.value.name).toBe(name)
})

test.each([
  ['8,8', '8.8'],
  ['A2-75', 'A2-70'],
  ['12.8', '12.9'],
  ['brass', undefined]
])('%s is no class', (text, near) => {
  const read = readPartClass(text)
  if (read.ok) throw new Error(`read as ${read.value.name}`)
  expect(read.fault).toMatchObject({ found: `unknown property class "${text}"` })
  expect(read.fault.accepted).toContain('or a tensile strength, as "360 MPa"')
  expect(read.fault.near).toBe(near)
})

test('blanks around a class are not counted as strokes', () => {
  const read = readPartClass('          8,8          ')
  expect(!read.ok && read.fault.near).toBe('8.8')
})

test('class 8.8 is stronger above 16 mm', () => {
  const read = readPartClass('8.8')
  if (!read.ok) throw new Error(read.fault.found)
  const tensileMpa = (majorMm: number) => classStrength({ partClass: read.value, majorMm }).tensileMpa
  expect([tensileMpa(16), tensileMpa(16.001)]).toEqual([800, 830])
})

// ISO 898-1 and ISO 3506-1 are written for coarse threads to M39 (memory).
// Class 9.8 is for 16 mm and below (ISO 898-1, memory).
test.each(PART_CLASSES.map(partClass => ({ partClass, ...partClass, toMm: partClass.name === '9.8' ? 16 : 39 })))(
  '$name goes to M$toMm',
  ({ partClass, toMm }) => {
    expect(classStrength({ partClass, majorMm: toMm }).tensileMpa).toBeGreaterThan(0)
    expect(() => classStrength({ partClass, majorMm: toMm + 0.001 })).toThrow(NoAnswer)
  }
)
