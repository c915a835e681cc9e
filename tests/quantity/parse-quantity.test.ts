// example: every line of the quantity grammar; the values are those of the text itself or arithmetic of exact definitions
import { describe, expect, it } from 'vitest'
import type { Kind } from '../../src/quantity/kinds.ts'
import { type Amount, parseQuantity, parseSpan } from '../../src/quantity/parse-quantity.ts'

function amount(kind: Kind, text: string): Amount {
  const read = parseQuantity(kind, text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.found}`)
  return read.value
}

type Row = readonly [kind: Kind, text: string, value: number]

const PLAIN: readonly Row[] = [
  ['length', '6.8 mm', 6.8],
  ['length', '19mm', 19],
  ['length', '+6.8 mm', 6.8],
  ['length', '- 6.8 mm', -6.8],
  ['length', '6. mm', 6],
  ['length', '-0 mm', 0],
  ['length', '1.9 cm', 19],
  ['length', '250 µm', 0.25],
  ['length', '250 μm', 0.25],
  ['length', '250 um', 0.25],
  ['length', '5/16 in', 7.9375],
  ['length', '5/16in', 7.9375],
  ['length', '5/16"', 7.9375],
  ['length', '5/16″', 7.9375],
  ['length', '5/16 in.', 7.9375],
  ['length', '5/16 IN', 7.9375],
  ['length', '1-1/4 in', 31.75],
  ['length', '1 1/4 in', 31.75],
  ['length', '-1-1/4 in', -31.75],
  ['length', '1¼ in', 31.75],
  ['length', '1 ¼ in', 31.75],
  ['length', '½ in', 12.7],
  ['length', '3⁄8 in', 9.525],
  ['length', '.375 in', 9.525],
  ['length', '.375in', 9.525],
  ['length', '0.1 in', 2.54],
  ['length', '7 thou', 0.1778],
  ['length', '1 ft', 304.8],
  ['length', '1.2e1 mm', 12],
  ['length', '６．８ ｍｍ', 6.8],
  ['length', '6.8 ㎜', 6.8],
  ['length', '6.8\u00A0mm', 6.8],
  ['length', '6.8\u202Fmm', 6.8],
  ['run', '5.5 m', 5.5],
  ['run', '420 m', 420],
  ['run', '10000 ft', 3048],
  ['area', '0.75 mm2', 0.75],
  ['area', '0.75 mm²', 0.75],
  ['area', '0.75 mm^2', 0.75],
  ['area', '0.75mm2', 0.75],
  ['area', '1 sq in', 645.16],
  ['surface', '0.042 m2', 0.042],
  ['surface', '420 cm²', 0.042],
  ['force', '4500 N', 4500],
  ['force', '4.5 kN', 4500],
  ['force', '100 kgf', 980.665],
  ['torque', '17.5 N·m', 17.5],
  ['torque', '17.5 N.m', 17.5],
  ['torque', '17.5 Nm', 17.5],
  ['torque', '17.5Nm', 17.5],
  ['torque', '17.5 N*m', 17.5],
  ['torque', '17.5 N m', 17.5],
  ['torque', '17.5 N-m', 17.5],
  ['torque', '17.5 N⋅m', 17.5],
  ['torque', '40 kgf·cm', 3.92266],
  ['torque', '40 kgf.cm', 3.92266],
  ['torque', '2 kgf·m', 19.6133],
  ['stress', '250 MPa', 250],
  ['stress', '250 N/mm²', 250],
  ['stress', '71 GPa', 71000],
  ['resistance', '3.3 mohm', 0.0033],
  ['resistance', '3.3 mΩ', 0.0033],
  ['resistance', '3.3 m\u2126', 0.0033],
  ['resistance', '3.3 milliohms', 0.0033],
  ['resistance', '12.8 ohm', 12.8],
  ['resistance', '12.8 Ω', 12.8],
  ['resistance', '12.8Ω', 12.8],
  ['resistance', '4.7 kΩ', 4700],
  ['resistance', '1 Mohm', 1e6],
  ['current', '7.5 A', 7.5],
  ['current', '350 mA', 0.35],
  ['current', '7.5 Amps', 7.5],
  ['voltage', '27.6 V', 27.6],
  ['voltage', '300 mV', 0.3],
  ['power', '45 W', 45],
  ['power', '1.2 kW', 1200],
  ['capacity', '100 Ah', 100],
  ['capacity', '100 A·h', 100],
  ['capacity', '2600 mAh', 2.6],
  ['temperature', '-5 °C', -5],
  ['temperature', '−5 °C', -5],
  ['temperature', '–5 °C', -5],
  ['temperature', '-5 ° C', -5],
  ['temperature', '-5 ℃', -5],
  ['temperature', '-5 ºC', -5],
  ['temperature', '-5 C', -5],
  ['temperature', '-5 degC', -5],
  ['temperature', '23 F', -5],
  ['temperature', '23 °F', -5],
  ['temperature', '-40 °F', -40],
  ['temperature', '212 degF', 100],
  ['difference', '3 K', 3],
  ['difference', '9 Δ°F', 5],
  ['time', '90 s', 90],
  ['time', '12 min', 720],
  ['time', '2 h', 7200],
  ['time', '20 hrs', 72000],
  ['mass', '38 g', 0.038],
  ['mass', '11200 kg', 11200],
  ['mass', '1 lb', 0.45359237],
  ['pressure', '1013 hPa', 101300],
  ['pressure', '101325 Pa', 101325],
  ['speed', '3 m/s', 3],
  ['speed', '36 km/h', 10],
  ['speed', '900 kn', 463],
  ['specific-heat', '900 J/kgK', 900],
  ['specific-heat', '900 J/(kg·K)', 900],
  ['specific-heat', '900 J/(kg K)', 900],
  ['specific-heat', '0.9 kJ/kg·°C', 900],
  ['film', '20 W/m2K', 20],
  ['film', '20 W/m²K', 20],
  ['film', '20 W/(m²·K)', 20],
  ['film', '20 W/(m2 K)', 20],
  ['film', '20 W/m^2/K', 20],
  ['film', '20 W / m²·°C', 20],
  ['angle', '118°', 118],
  ['angle', '118 deg', 118],
  ['percent', '85 %', 85],
  ['percent', '85%', 85],
  ['percent', '4 percent', 4],
  ['coefficient', '0.4 %/K', 0.4],
  ['coefficient', '0.4 %/°C', 0.4],
  ['coefficient', '0.00393 1/K', 0.393],
  ['coefficient', '3930 ppm/K', 0.393],
  ['factor', '0.14', 0.14],
  ['factor', '.14', 0.14],
  ['factor', '1/16', 0.0625],
  ['turns', '7.5', 7.5],
  ['turns', '7.5 turns', 7.5],
  ['turns', '1/4 turn', 0.25],
  ['count', '2', 2]
]

describe('a plain quantity', () => {
  it.each(PLAIN)('%s %s is %d', (kind, text, value) => {
    expect(amount(kind, text)).toEqual({ value, low: value, high: value, text })
  })
})

/** Pound-force times inch, exact by definition: 0.45359237 × 9.80665 × 0.0254 (memory). */
const LBF_IN = 0.1129848290276167

const POUNDS = [
  ...[
    'lbf·in',
    'lbf.in',
    'lbf in',
    'lbf-in',
    'lbf*in',
    'in-lb',
    'in-lbf',
    'in lb',
    'in·lb',
    'lb-in',
    'lb in',
    'inlb',
    'IN-LB',
    'in.-lb.',
    'In-Lbs',
    'inch-pounds'
  ].map(unit => [unit, LBF_IN] as const),
  ...['lbf·ft', 'ft-lb', 'ft·lbf', 'ft lb', 'lb-ft', 'ft-lbs', 'FT-LB', 'ft.-lb.', 'foot-pounds'].map(unit => [unit, LBF_IN * 12] as const),
  ...['ozf·in', 'oz-in', 'ozf.in', 'in-oz', 'oz in', 'OZ-IN'].map(unit => [unit, LBF_IN / 16] as const)
]

describe('the many ways to write a pound and an inch', () => {
  it.each(POUNDS)('%s', (unit, newtonMetres) => {
    expect(amount('torque', `1 ${unit}`).value).toBe(newtonMetres)
    expect(amount('torque', `1${unit}`).value).toBe(newtonMetres)
  })
})

type Bounds = readonly [kind: Kind, text: string, value: number, low: number, high: number]

const BOUNDED: readonly Bounds[] = [
  ['length', '11.5 mm ± 0.2 mm', 11.5, 11.3, 11.7],
  ['length', '11.5 ± 0.2 mm', 11.5, 11.3, 11.7],
  ['length', '11.5±0.2mm', 11.5, 11.3, 11.7],
  ['length', '11.5 mm +- 0.2 mm', 11.5, 11.3, 11.7],
  ['length', '11.5 mm +/- 0.2 mm', 11.5, 11.3, 11.7],
  ['length', '11.5+-0.2 mm', 11.5, 11.3, 11.7],
  ['length', '11.5 mm ± 0.01 in', 11.5, 11.246, 11.754],
  ['length', '11.5 mm ± 0 mm', 11.5, 11.5, 11.5],
  ['length', '11.5 mm ± 2 %', 11.5, 11.27, 11.73],
  ['length', '-10 mm ± 5 %', -10, -10.5, -9.5],
  ['length', '1/2 in ± 1/64 in', 12.7, 12.303125, 13.096875],
  ['power', '45 W ± 5 %', 45, 42.75, 47.25],
  ['power', '45 W ±5%', 45, 42.75, 47.25],
  ['power', '45 W +5 % -10 %', 45, 40.5, 47.25],
  ['power', '45 W -10 % +5 %', 45, 40.5, 47.25],
  ['power', '45 W +5 -10 %', 45, 40.5, 47.25],
  ['length', '17 mm +0.1 mm -0.2 mm', 17, 16.8, 17.1],
  ['length', '17 mm +0.1 -0.2 mm', 17, 16.8, 17.1],
  ['length', '17 +0.1 -0.2 mm', 17, 16.8, 17.1],
  ['length', '17 +0.1 −0.2 mm', 17, 16.8, 17.1],
  ['length', '17 mm +0.2 mm -0', 17, 17, 17.2],
  ['length', '16.0..16.6 mm', 16.3, 16, 16.6],
  ['length', '16 mm..16.6 mm', 16.3, 16, 16.6],
  ['length', '16..16.6mm', 16.3, 16, 16.6],
  ['length', '16.0 .. 16.6 mm', 16.3, 16, 16.6],
  ['length', '16 mm..0.65 in', 16.255, 16, 16.51],
  ['torque', '12 N·m..13 N·m', 12.5, 12, 13],
  ['temperature', '-5 °C ± 2 K', -5, -7, -3],
  ['temperature', '-5 °C ± 2 °C', -5, -7, -3],
  ['temperature', '-5 ± 2 °C', -5, -7, -3],
  ['temperature', '23 °F ± 9 °F', -5, -10, 0],
  ['temperature', '23 °F ± 5 K', -5, -10, 0],
  ['temperature', '-10..-5 °C', -7.5, -10, -5],
  ['temperature', '-5..5 °C', 0, -5, 5],
  ['percent', '80..90 %', 85, 80, 90],
  ['percent', '80 % ± 5 %', 80, 76, 84],
  ['percent', '80 ± 5 %', 80, 76, 84],
  ['factor', '0.14..0.20', 0.17, 0.14, 0.2],
  ['factor', '0.17 ± 0.03', 0.17, 0.14, 0.2],
  ['factor', '0.2 ± 10 %', 0.2, 0.18, 0.22],
  ['coefficient', '0.4 ± 0.1 %/K', 0.4, 0.3, 0.5],
  ['turns', '7 ± 1/2 turns', 7, 6.5, 7.5],
  ['voltage', '23.5..28.8 V', 26.15, 23.5, 28.8]
]

describe('a quantity with bounds', () => {
  it.each(BOUNDED)('%s %s', (kind, text, value, low, high) => {
    expect(amount(kind, text)).toEqual({ value, low, high, text })
  })
})

describe('a span', () => {
  it.each([
    ['torque', '5..25 N·m', 5, 25],
    ['torque', '5 N·m..25 N·m', 5, 25],
    ['torque', '5..5 N·m', 5, 5],
    ['run', '2.1..2.5 m', 2.1, 2.5]
  ] as const)('%s %s', (kind, text, low, high) => {
    expect(parseSpan(kind, text)).toEqual({ ok: true, value: { low, high, text } })
  })
})
