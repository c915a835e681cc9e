// property: what holds of every formula of every trade room
import { all, create, type MathJsInstance } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../src/formula/outside-range.ts'
import { SOURCES } from '../../src/formula/source.ts'
import { unitOf } from '../../src/quantity/units.ts'
import { type AnyFormula, FORMULAS, pointInside } from './every-formula.ts'

const math = create(all!) as MathJsInstance

const TRIGONOMETRY = /\b(sin|cos|tan|cot)\(/

/** The printed equation, worked out by another program; an angle whose sine or the like is taken goes in as degrees. */
function evaluated({ equation, inputs }: AnyFormula, x: Record<string, number>): number {
  const scope = new Map<string, unknown>([['π', Math.PI]])
  let text = equation.replaceAll('·', '*').replaceAll('√', 'sqrt').replaceAll('²', '^2').replaceAll('³', '^3')
  Object.entries(inputs).forEach(([name, [symbol]], i) => {
    // Letters with strokes or Greek ones are given plain names, the longest first would not matter: whole words only.
    text = text.replace(
      new RegExp(`(?<![\\p{L}\\p{N}_'])${symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}_'])`, 'gu'),
      `input${i}`
    )
    scope.set(`input${i}`, unitOf(name) === '°' && TRIGONOMETRY.test(equation) ? math.unit(x[name]!, 'deg') : x[name]!)
  })
  return Number(math.evaluate(text, scope))
}

describe.each(FORMULAS)('$file $name', ({ name, formula }) => {
  it('is exported under the name of what it gives', () => {
    expect(name).toBe(formula.gives)
  })

  it('names a source of the list', () => {
    expect(Object.values(SOURCES)).toContain(formula.source)
  })

  it('gives what its printed equation gives', () => {
    const points = Array.from({ length: 40 }, (_, i) => pointInside(formula, i / 40))
    let met = 0
    for (const x of points) {
      const value = valueOr(formula, x)
      if (value === undefined || !Number.isFinite(value)) continue
      met++
      expect(Math.abs(evaluated(formula, x) - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)))
    }
    expect(met).toBeGreaterThan(0)
  })

  it.each(Object.entries(formula.inputs))('refuses %s just outside its range', (input, [, least, greatest]) => {
    const inside = pointInside(formula, 0.4)
    for (const value of [least - 1e-9 * Math.max(1, Math.abs(least)), greatest + 1e-9 * Math.max(1, Math.abs(greatest)), Number.NaN])
      expect(() => formula({ ...inside, [input]: value })).toThrow(OutsideRange)
  })
})

/** A formula may refuse a point in words (no answer there); that is no disagreement. */
function valueOr(formula: AnyFormula, x: Record<string, number>): number | undefined {
  try {
    return formula(x)
  } catch {
    return undefined
  }
}

it('there are formulas to test', () => {
  expect(FORMULAS.length).toBeGreaterThan(10)
})
