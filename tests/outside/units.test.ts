// table: factors of units against published ones, and against GNU units where that program is installed
import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { KIND_NAMES, type Kind, rowOf } from '../../src/quantity/kinds.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { GNU, type GnuTable } from './rows/gnu-units.ts'
import { EXACT_FACTORS, PRINTED_FACTORS } from './rows/torque-units.ts'

function value(kind: Kind, text: string): number {
  const read = parseQuantity(kind, text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.found}`)
  return read.value.value
}

/** Half of the last digit printed. */
function halfDigit(printed: string): number {
  const [digits = '', exponent = '0'] = printed.split('E')
  return 0.5 * 10 ** (Number(exponent) - (digits.split('.')[1]?.length ?? 0))
}

describe('factors that are exact', () => {
  it.each(EXACT_FACTORS)('1 $unit is $times ($source; $label)', ({ kind, unit, times, rounded }) => {
    const half = rounded === true ? halfDigit(times) : 0
    expect(Math.abs(value(kind, `1 ${unit}`) - Number(times))).toBeLessThanOrEqual(half)
  })
})

describe('factors as printed', () => {
  it.each(PRINTED_FACTORS)('1 $unit is $printed N·m ($source; $label)', ({ unit, printed }) => {
    expect(Math.abs(value('torque', `1 ${unit}`) - Number(printed))).toBeLessThanOrEqual(halfDigit(printed))
  })
})

/** The fixed points of the two scales, exact by definition (memory). */
describe('Celsius and Fahrenheit', () => {
  it.each([
    [-459.67, -273.15],
    [-40, -40],
    [0, -160 / 9],
    [32, 0],
    [98.6, 37],
    [212, 100]
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(value('temperature', `${fahrenheit} °F`)).toBe(celsius)
  })
})

const GNU_THERE = spawnSync('units', ['--version']).status === 0

/** Asks all questions of the program in one go: what one line is, in the unit of the next. */
function askGnu(questions: readonly (readonly [have: string, want: string])[]): readonly number[] {
  const input = questions.map(([have, want]) => `${have}\n${want}\n`).join('')
  const { stdout } = spawnSync('units', ['-t', '-q', '-o', '%.15g'], { input, encoding: 'utf8' })
  const answers = stdout.trim().split('\n').map(Number)
  if (answers.length !== questions.length || answers.some(Number.isNaN)) throw new Error(`units did not answer as asked:\n${stdout}`)
  return answers
}

const TABLES = Object.entries(GNU) as readonly (readonly [Kind, GnuTable])[]

it('the table for GNU units has every unit of every kind', () => {
  const tabled = TABLES.map(([kind]) => kind)
  expect(KIND_NAMES.filter(kind => !tabled.includes(kind))).toEqual(['temperature', 'factor', 'count'])
  for (const [kind, { units }] of TABLES) expect(Object.keys(units).sort(), kind).toEqual(Object.keys(rowOf(kind).units).sort())
})

describe('against GNU units', () => {
  it.skipIf(!GNU_THERE).each(TABLES)('outside program: units, every spelling of %s', (kind, { house, units }) => {
    const labels = Object.keys(units)
    const factors = askGnu(labels.map(label => [`1 ${units[label]}`, house]))
    for (const [i, label] of labels.entries()) {
      const { as = [], words = [] } = rowOf(kind).units[label]!
      for (const spelling of [label, ...as, ...words]) {
        expect(Math.abs(value(kind, `7 ${spelling}`) / (7 * factors[i]!) - 1), spelling).toBeLessThanOrEqual(1e-12)
      }
    }
  })

  it.skipIf(!GNU_THERE)('outside program: units, temperatures', () => {
    const points = [-459, -40, -4, 0, 23, 32, 98.6, 212, 1000]
    const answers = askGnu(points.map(point => [`tempF(${point})`, 'tempC']))
    for (const [i, point] of points.entries()) {
      // Relative to absolute nought, where both scales begin.
      expect(Math.abs(value('temperature', `${point} °F`) - answers[i]!)).toBeLessThanOrEqual(1e-12 * (answers[i]! + 273.15) + 1e-13)
    }
  })
})
