// example: how figures are printed
import { describe, expect, it } from 'vitest'
import { DIGITS, type Shown, shownFor } from '../../src/quantity/digits.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { inchOf, showApart, showBothTemperatures, showMetricAndInch, showNumber, showSpread } from '../../src/quantity/show.ts'
import { PURE, SUFFIXES } from '../../src/quantity/units.ts'

describe('a figure', () => {
  it.each([
    ['drill', 10.5, '10.50'],
    ['limit', 10.676, '10.676'],
    ['limit', 10.6765, '10.677'],
    ['length', 2.675, '2.68'],
    ['length', -2.675, '-2.68'],
    ['length', -0.001, '0.00'],
    ['length', -0, '0.00'],
    ['depth-down', 22.206, '22.20'],
    ['depth-down', 22.2, '22.20'],
    ['depth-down', 22.199999999999996, '22.20'],
    ['depth-down', 22.19999, '22.19'],
    ['depth-down', -1.001, '-1.01'],
    ['depth-down', -5e-17, '0.00'],
    ['depth-up', 22.201, '22.21'],
    ['depth-up', 22.200000000000003, '22.20'],
    ['depth-up', 5e-17, '0.00'],
    ['torque', 17.5126, '17.5'],
    ['torque', 9, '9.00'],
    ['torque', 155, '155'],
    ['torque', 1234.5, '1230'],
    ['torque', 9.996, '10.0'],
    ['torque', 0.0070616, '0.00706'],
    ['torque', 0, '0'],
    ['torque-down', 17.59, '17.5'],
    ['torque-up', 17.51, '17.6'],
    ['voltage', 12.6, '12.60'],
    ['voltage', 0.0034, '0.0034'],
    ['power', 99.96, '100.0'],
    ['area', 84.27, '84.3'],
    ['area', 0.75, '0.750'],
    ['force', 22345.4, '22345'],
    ['mass', 0.038, '0.0380'],
    ['count', 3, '3'],
    ['ratio', 0.0625, '0.0625'],
    ['plain', 3, '3'],
    ['plain', 100, '100'],
    ['plain', 0.1234567, '0.123457'],
    ['plain', 1234567.8, '1234568'],
    ['resistance', 0.0152999, '0.0153'],
    ['turns', 7.449, '7.4']
  ] as const)('%s %d is %s', (shown, value, text) => {
    expect(showNumber(value, shown)).toBe(text)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is refused', value => {
    for (const shown of Object.keys(DIGITS) as Shown[]) expect(() => showNumber(value, shown)).toThrow(RangeError)
  })
})

describe('two ends', () => {
  it.each([
    [11.3, 11.7, 'length', '11.30 to 11.70'],
    [11.304, 11.696, 'length', '11.30 to 11.70'],
    [-7, -3, 'temperature', '-7.0 to -3.0'],
    [1.2, 1.2, 'length', '1.20'],
    [22.199999999999996, 22.2, 'depth', '22.20'],
    [22.201, 22.209, 'depth-down', '22.20 to 22.21']
  ] as const)('%d and %d as %s', (low, high, shown, text) => {
    expect(showSpread(low, high, shown)).toBe(text)
  })
})

describe('two figures held against each other', () => {
  it.each([
    ['far apart: the usual digits', 2.5, 2, 'torque', ['2.50', '2.00']],
    ['a hair apart: as many more as it takes', 2.0004, 2.0001, 'torque', ['2.0004', '2.0001']],
    ['decimals alone as well', 0.1234, 0.1231, 'length', ['0.1234', '0.1231']],
    ['the same', 2, 2, 'torque', ['2.00', '2.00']],
    ['the same but for binary noise', 0.1 + 0.2, 0.3, 'torque', ['0.300', '0.300']]
  ] as const)('%s', (_, a, b, shown, texts) => {
    expect(showApart(a, b, shown)).toEqual(texts)
  })
})

describe('two units together', () => {
  it('metric and inch', () => {
    expect(inchOf(25.4)).toBe('1.0000')
    expect(showMetricAndInch(10.5, 'drill')).toBe('10.50 mm (0.4134 in)')
    expect(showMetricAndInch(22.206, 'depth-down')).toBe('22.20 mm (0.8742 in)')
    expect(showMetricAndInch(22.201, 'depth-up')).toBe('22.21 mm (0.8741 in)')
  })

  it('the same inch and the same degree as the reader takes', () => {
    expect(parseQuantity('length', `${inchOf(7.9375)} in`)).toMatchObject({ value: { value: 7.9375 } })
    expect(showBothTemperatures(-5)).toBe('-5.0 °C (23.0 °F)')
    expect(parseQuantity('temperature', '23.0 °F')).toMatchObject({ value: { value: -5 } })
  })
})

describe('the usual digits', () => {
  it.each([
    ['gapMm', 'length'],
    ['torqueNm', 'torque'],
    ['areaMm2', 'area'],
    ['lossM2', 'surface'],
    ['nutFactor', 'factor'],
    ['ratio', 'ratio'],
    ['turns', 'turns'],
    ['handTurns', 'turns'],
    ['dropPercent', 'percent'],
    ['resistancePerK', 'coefficient'],
    ['nothing known', 'plain']
  ])('%s is printed as %s', (name, shown) => {
    expect(shownFor(name)).toBe(shown)
  })

  it('are there for every suffix', () => {
    for (const suffix of [...Object.keys(SUFFIXES), ...PURE]) expect(shownFor(`some${suffix}`), suffix).not.toBe('plain')
  })
})
