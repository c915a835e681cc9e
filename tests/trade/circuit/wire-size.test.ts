// example: how sizes of wire are written, and what is said where they are not
import { describe, expect, it } from 'vitest'
import { readWire } from '../../../src/trade/circuit/wire-size.ts'

describe('sizes that are read', () => {
  it.each([
    ['AWG 18', 'AWG 18'],
    ['18 AWG', 'AWG 18'],
    ['AWG18', 'AWG 18'],
    ['18awg', 'AWG 18'],
    [' awg  18 ', 'AWG 18'],
    ['AWG 0', 'AWG 0'],
    ['AWG 1/0', 'AWG 0'],
    ['AWG 2/0', 'AWG 2/0'],
    ['AWG 00', 'AWG 2/0'],
    ['00 AWG', 'AWG 2/0'],
    ['AWG 0000', 'AWG 4/0'],
    ['AWG 40', 'AWG 40'],
    ['0.75 mm2', '0.75 mm2'],
    ['0.75 mm²', '0.75 mm2'],
    ['.75mm2', '0.75 mm2'],
    ['1.5mm2', '1.5 mm2'],
    ['1.50 mm^2', '1.5 mm2'],
    ['2.5 MM2', '2.5 mm2'],
    ['120 mm2', '120 mm2']
  ])('%s', (text, name) => {
    const read = readWire(text)
    expect(read.ok && read.value.name).toBe(name)
  })

  it.each([
    ['AWG 0000', -3],
    ['AWG 000', -2],
    ['AWG 2/0', -1],
    ['AWG 0', 0],
    ['AWG 30', 30]
  ])('%s counts as gauge %d', (text, gaugeCount) => {
    expect(readWire(text)).toMatchObject({ ok: true, value: { system: 'awg', gaugeCount } })
  })
})

describe('sizes that are not', () => {
  it.each([
    ['AWG 41', 'AWG 40'],
    ['AWG 00000', 'AWG 4/0'],
    ['5/0 AWG', 'AWG 4/0'],
    ['0.8 mm2', '0.75 mm2'],
    ['0.9 mm2', '1 mm2'],
    // As many times 2 as 2.5 is of it: √(2·2.5) = 2.2361.
    ['2.23 mm2', '2 mm2'],
    ['2.24 mm2', '2.5 mm2'],
    ['0.1 mm2', '0.22 mm2'],
    ['300 mm2', '120 mm2'],
    ['1,5 mm2', '1.5 mm2'],
    ['12,5 mm2', '12.5 mm2'],
    ['12/0 AWG', 'AWG 4/0'],
    ['1.5 mm', '1.5 mm2'],
    ['1.5 qmm', '1.5 mm2'],
    ['18 gauge', 'AWG 18'],
    ['#18', 'AWG 18'],
    ['AGW 18', 'AWG 18'],
    ['AW 2/0', 'AWG 2/0']
  ])('%s: meant is perhaps %s', (text, near) => {
    const read = readWire(text)
    expect(read.ok).toBe(false)
    expect(!read.ok && read.fault.near).toBe(near)
    expect(!read.ok && read.fault.found).toContain(text)
  })

  it('whatever is near can be read itself', () => {
    for (const text of ['AWG 41', '0.8 mm2', '1,5 mm2', '18 gauge', 'AW 2/0', '1.5 mm']) {
      const read = readWire(text)
      expect(!read.ok && readWire(read.fault.near!).ok).toBe(true)
    }
  })

  it('a bare number names both systems and takes neither', () => {
    const read = readWire('18')
    expect(read).toEqual({ ok: false, fault: { found: 'wire size "18" without a system', accepted: '"AWG 18" or "18 mm2"' } })
  })

  it.each([
    ['2/0', '"AWG 2/0"'],
    ['00', '"AWG 00"'],
    ['0.75', '"0.75 mm2"']
  ])('a bare %s can only be %s', (text, accepted) => {
    const read = readWire(text)
    expect(!read.ok && read.fault.accepted).toBe(accepted)
  })

  it.each([
    ['18 mm2', '16 mm2 or 20 mm2, the nearest sizes made'],
    ['0.1 mm2', '0.22 mm2, the nearest size made'],
    ['300 mm2', '120 mm2, the nearest size made']
  ])('an unknown section names the sizes on both sides of it: %s', (text, accepted) => {
    const read = readWire(text)
    expect(!read.ok && read.fault.accepted).toBe(accepted)
  })

  it.each(['AWG 2/00', 'AWG 2/3/0', 'AWG 1/2', 'AWG 18/', 'AWG /18', 'AWG 018'])('"%s" is no gauge, and near to none', text => {
    expect(readWire(text)).toEqual({
      ok: false,
      fault: { found: `unknown wire size "${text}"`, accepted: 'AWG 4/0 to AWG 40', near: undefined }
    })
  })

  it('a comma is a decimal comma where the size begins with it alone', () => {
    const found = (text: string) => {
      const read = readWire(text)
      return read.ok ? '' : read.fault.found
    }
    expect(found('1,5 mm2')).toBe('decimal comma in "1,5 mm2"')
    expect(found('about 1,5 mm2')).toBe('unknown wire size "about 1,5 mm2"')
  })

  it.each(['/0', '1/0', '0/0'])('a bare %s can be no section', text => {
    const read = readWire(text)
    expect(!read.ok && read.fault.accepted).toBe(`"AWG ${text}"`)
  })

  it.each(['', 'thick', 'AWG', 'mm2', 'AWG -1', 'AWG 18.5', '-1 mm2', '0 mm2', 'AWG 0/0', 'AWG /', '1e3 mm2', 'AWG 18 AWG', '0x10 mm2'])(
    '"%s" is refused',
    text => {
      expect(readWire(text).ok).toBe(false)
    }
  )
})
