// example: what is said about a quantity that cannot be read
import { describe, expect, it } from 'vitest'
import type { Kind } from '../../src/quantity/kinds.ts'
import { parseQuantity, parseSpan } from '../../src/quantity/parse-quantity.ts'

const LENGTH = 'a length in mm, cm, m, in, ft, µm, …, as "6.8 mm"'
const TORQUE = 'a torque in N·m, lbf·in, lbf·ft, kgf·cm, kgf·m, ozf·in, …, as "17.5 N·m"'
const TEMPERATURE = 'a temperature in °C, °F, as "-5 °C"'
const DIFFERENCE = 'a temperature difference in K, Δ°F, mK, as "3 K"'
const FORCE = 'a force in N, kN, lbf, kgf, daN, mN, …, as "4500 N"'
const MASS = 'a mass in kg, g, lb, oz, mg, t, as "38 g"'
const LENGTH_BOUNDS = 'a length, with or without bounds: "10 mm", "10 mm ± 1 mm", "10 mm +1 mm -1 mm", "9..11 mm"'

type Row = readonly [kind: Kind, text: string, found: string, accepted: string, near?: string]

function cases(rows: readonly Row[]): void {
  it.each(rows.map(row => ({ row, name: row.slice(0, 2).join(' ') })))('$name', ({ row: [kind, text, found, accepted, near] }) => {
    expect(parseQuantity(kind, text)).toEqual({ ok: false, fault: near === undefined ? { found, accepted } : { found, accepted, near } })
  })
}

describe('no unit', () => {
  cases([
    ['length', '7', '"7" has no unit', LENGTH],
    ['length', '5/16', '"5/16" has no unit', LENGTH],
    ['torque', '155', '"155" has no unit', TORQUE],
    ['percent', '4', '"4" has no unit', 'a percentage in %, as "85 %"', '4 %'],
    ['percent', '0.9', '"0.9" has no unit', 'a percentage in %, as "85 %"', '90 %'],
    ['percent', '1', '"1" has no unit', 'a percentage in %, as "85 %"', '100 %'],
    ['percent', '-4', '"-4" has no unit', 'a percentage in %, as "85 %"', '-4 %'],
    ['power', '45 ± 5 %', '"45" has no unit', 'a power in W, mW, kW, hp, as "45 W"'],
    ['length', '11.5 mm ± 0.2', 'the tolerance "0.2" has no unit', `${LENGTH}, or "0.2 %"`],
    ['length', '16 mm..16.6', '"16.6" has no unit', LENGTH, '16 mm..16.6 mm'],
    ['length', '16..16.6', '"16" has no unit', LENGTH]
  ])
})

describe('a comma', () => {
  cases([
    ['length', '6,8 mm', 'decimal comma in "6,8 mm"', 'a decimal point', '6.8 mm'],
    ['length', ',375 in', 'decimal comma in ",375 in"', 'a decimal point', '.375 in'],
    ['length', '16,0..16,6 mm', 'decimal comma in "16,0..16,6 mm"', 'a decimal point', '16.0..16.6 mm'],
    ['length', '11,5 ± 0,2 mm', 'decimal comma in "11,5 ± 0,2 mm"', 'a decimal point', '11.5 ± 0.2 mm'],
    ['length', '1.000,5 mm', 'decimal comma in "1.000,5 mm"', 'a decimal point', '1000.5 mm'],
    [
      'mass',
      '11,200 kg',
      'decimal comma in "11,200 kg"',
      'a decimal point, and no mark for thousands: "11.200 kg" or "11200 kg"',
      '11.200 kg'
    ],
    ['length', '0,125 in', 'decimal comma in "0,125 in"', 'a decimal point', '0.125 in']
  ])
})

describe('another dimension', () => {
  cases([
    ['torque', '12 J', '"12 J" is an energy', TORQUE],
    ['torque', '12 kJ', '"12 kJ" is an energy', TORQUE],
    ['torque', '12 Wh', '"12 Wh" is an energy', TORQUE],
    ['torque', '12 N', '"12 N" is a force', TORQUE],
    ['torque', '12 kg·m', '"12 kg·m" is a moment of mass', TORQUE, '12 kgf·m'],
    ['torque', '120 kg-cm', '"120 kg-cm" is a moment of mass', TORQUE, '120 kgf·cm'],
    ['length', '23 F', '"23 F" is a temperature', LENGTH],
    ['length', '5 N', '"5 N" is a force', LENGTH],
    ['length', '7.5 A', '"7.5 A" is a current', LENGTH],
    ['power', '45 VA', '"45 VA" is an apparent power', 'a power in W, mW, kW, hp, as "45 W"'],
    ['area', '18 AWG', '"18 AWG" is a wire gauge', 'an area in mm², cm², dm², m², in², ft², as "0.75 mm2"'],
    ['force', '50 kg', '"50 kg" is a mass', FORCE, '50 kgf'],
    ['force', '500 lb', '"500 lb" is a mass', FORCE, '500 lbf'],
    ['mass', '2 lbf', '"2 lbf" is a force', MASS, '2 lb'],
    ['temperature', '3 K', '"3 K" is a temperature difference', TEMPERATURE],
    ['difference', '3 °C', '"3 °C" is a temperature', DIFFERENCE, '3 K'],
    ['difference', '-5 °F', '"-5 °F" is a temperature', DIFFERENCE, '-5 Δ°F'],
    ['factor', '3 mm', '"3 mm" is a length', 'a pure number, as "0.14"'],
    ['factor', '15 %', '"15 %" is a percentage', 'a pure number, as "0.14"'],
    ['length', '11.5 mm ± 2 N', '"2 N" is a force', LENGTH],
    ['length', '16 mm..16.6 N', '"16.6 N" is a force', LENGTH],
    ['temperature', '-5 °C..5 K', '"5 K" is a temperature difference', TEMPERATURE],
    ['temperature', '-5 °C ± 2 mm', '"2 mm" is a length', DIFFERENCE]
  ])
})

describe('an unknown unit', () => {
  cases([
    ['length', '6.8 mmm', 'unknown unit "mmm"', LENGTH, 'mm'],
    ['length', '6.8 MM', 'unknown unit "MM"', LENGTH, 'mm'],
    ['length', '6.8 milimeters', 'unknown unit "milimeters"', LENGTH, 'millimeters'],
    ['torque', '12 nm', 'unknown unit "nm"', TORQUE, 'Nm'],
    ['torque', '12 lbf-inn', 'unknown unit "lbf-inn"', TORQUE, 'lbf·in'],
    ['resistance', '3 mhom', 'unknown unit "mhom"', 'a resistance in ohm, mohm, µohm, kohm, Mohm, as "3.3 mohm"', 'mohm'],
    ['length', '6.8 furlongs', 'unknown unit "furlongs"', LENGTH],
    ['length', '6.8 q', 'unknown unit "q"', LENGTH],
    ['length', '10² mm', 'unknown unit "² mm"', LENGTH, 'mm'],
    ['area', '18 squidges', 'unknown unit "squidges"', 'an area in mm², cm², dm², m², in², ft², as "0.75 mm2"']
  ])
})

describe('a number that cannot be', () => {
  cases([
    ['length', '1e999 mm', '"1e999" has an exponent beyond 15', LENGTH],
    ['length', '1e-999 mm', '"1e-999" has an exponent beyond 15', LENGTH],
    ['length', '11.5 mm ± 1e99 mm', '"1e99" has an exponent beyond 15', LENGTH],
    ['length', '9999999999999999 mm', '"9999999999999999" is greater than 1e15', LENGTH],
    ['length', '0.00000000000000001 mm', '"0.00000000000000001" is less than 1e-15', LENGTH],
    ['length', '1/0 in', '"1/0" is a fraction of nought parts', LENGTH],
    ['length', '1-5/4 in', '"1-5/4" is not a whole number and a proper fraction', LENGTH],
    ['count', '2.5', '"2.5" is not whole', 'a whole number, as "2"'],
    ['count', '2..3', '"2..3" is not whole', 'a whole number, as "2"']
  ])
})

describe('bounds that are none', () => {
  cases([
    ['length', '16.6..16.0 mm', 'the ends of "16.6..16.0 mm" are the wrong way round', 'the lower end first', '16.0..16.6 mm'],
    ['length', '16.6 mm..16 mm', 'the ends of "16.6 mm..16 mm" are the wrong way round', 'the lower end first', '16 mm..16.6 mm'],
    ['length', '1 in..10 mm', 'the ends of "1 in..10 mm" are the wrong way round', 'the lower end first', '10 mm..1 in'],
    ['temperature', '-5..-10 °C', 'the ends of "-5..-10 °C" are the wrong way round', 'the lower end first', '-10..-5 °C'],
    ['length', '11 mm ± -1 mm', 'the tolerance "-1 mm" is negative', 'a tolerance without a sign, as "± 0.2 mm"'],
    ['temperature', '-5 °C ± 5 %', '"5 %" of a temperature', DIFFERENCE],
    ['length', '17 mm +0.2 mm', 'a tolerance with one side, "17 mm +0.2 mm"', LENGTH_BOUNDS, '17 mm +0.2 mm -0 mm'],
    ['length', '17 mm -0.2 mm', 'a tolerance with one side, "17 mm -0.2 mm"', LENGTH_BOUNDS, '17 mm +0 mm -0.2 mm'],
    ['length', '17 mm +0.2 mm +0.3 mm', '"17 mm +0.2 mm +0.3 mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '16..17 mm ± 1 mm', '"16..17 mm ± 1 mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '16..17..18 mm', '"16..17..18 mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '16.. mm', '"16.. mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '± 1 mm', '"± 1 mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '5-25 mm', 'a tolerance with one side, "5-25 mm"', LENGTH_BOUNDS, '5..25 mm'],
    ['length', '5–25 mm', 'no range in "5–25 mm"', 'two points between the ends of a range', '5..25 mm'],
    ['length', '5 to 25 mm', 'no range in "5 to 25 mm"', 'two points between the ends of a range', '5..25 mm'],
    ['length', '5…25 mm', 'no range in "5…25 mm"', 'two points between the ends of a range', '5..25 mm'],
    ['length', '5...25 mm', 'no range in "5...25 mm"', 'two points between the ends of a range', '5..25 mm']
  ])
})

describe('no quantity at all', () => {
  cases([
    ['length', '', 'an empty text', LENGTH],
    ['length', '  \t ', 'an empty text', LENGTH],
    ['length', 'mm 6.8', '"mm 6.8" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', 'NaN mm', '"NaN mm" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', 'Infinity', '"Infinity" cannot be read as a quantity', LENGTH_BOUNDS],
    ['length', '\u001b[31m6 mm', 'a control or hidden character in "\\u{1b}[31m6 mm"', LENGTH],
    ['length', '6\u200b.8 mm', 'a control or hidden character in "6\\u{200b}.8 mm"', LENGTH],
    ['length', '\u202e6.8 mm', 'a control or hidden character in "\\u{202e}6.8 mm"', LENGTH],
    ['length', 'x'.repeat(300), `a text of 300 characters, "${'x'.repeat(40)}…"`, `${LENGTH}, in at most 100 characters`]
  ])
})

describe('a span', () => {
  it.each([
    ['5 N·m', '"5 N·m" is no range', 'two ends of a torque, as "5..25 N·m"', undefined],
    ['15 ± 10 N·m', '"15 ± 10 N·m" is no range', 'two ends of a torque, as "5..25 N·m"', undefined],
    ['5-25 N·m', '"5-25 N·m" is no range', 'two ends of a torque, as "5..25 N·m"', '5..25 N·m'],
    ['25..5 N·m', 'the ends of "25..5 N·m" are the wrong way round', 'the lower end first', '5..25 N·m'],
    ['5..25', '"5" has no unit', TORQUE, undefined],
    ['5..25 J', '"5" is an energy', TORQUE, undefined]
  ])('%s', (text, found, accepted, near) => {
    expect(parseSpan('torque', text)).toEqual({ ok: false, fault: near === undefined ? { found, accepted } : { found, accepted, near } })
  })
})
