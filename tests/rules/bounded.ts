import { expect } from 'vitest'
import type { Bounded } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { asked, type Rule } from '../../src/rules/rule.ts'

/** A result between two ends, moved by one measured value. */
export function between(low: number, high: number): Bounded {
  const value = (low + high) / 2
  const given = new Given(value, { low, high, at: ['holes', 'left', 'measured'] })
  const movers = low < high ? [given] : []
  return { value, low, high, rss: [low, high], movers, hangsOn: [], turned: [], lowAt: [low], highAt: [high] }
}

/** A result without bounds. */
export function sharp(value: number): Bounded {
  return between(value, value)
}

/** The same, but it hangs on a value that nobody gave. */
export function assumed(bounded: Bounded): Bounded {
  return { ...bounded, hangsOn: [new Given(1, { assumed: 'default: one', at: ['tools', 'guessed'] })] }
}

/** The same, but its extreme was searched for. */
export function searched(bounded: Bounded): Bounded {
  return { ...bounded, turned: [new Given(1, { low: 0, high: 2, at: ['tools', 'turning'] })] }
}

/** The verdict of a rule on one subject. */
export function verdictOf<Subject>(rule: Rule<Subject>, subject: Subject): string {
  return asked(rule, subject).verdict
}

/** What is missing is named, with how to measure it, and nothing is judged. */
export function expectNotJudged<Subject>(rule: Rule<Subject>, subject: Subject, field: string, measure: string): void {
  const finding = asked(rule, subject)
  expect(finding).toMatchObject({ verdict: 'not-judged', value: null, limit: null, margin: null, change: `give ${field}` })
  expect(finding.says).toContain(`${field} is not given`)
  expect(finding.says).toContain(measure)
}

/** A good margin that hangs on an assumed value is a caution, and says on which. */
export function expectDoubted<Subject>(rule: Rule<Subject>, subject: Subject): void {
  const { verdict, says } = asked(rule, subject)
  expect(verdict).toBe('caution')
  expect(says).toMatch(/assumed.*tools\.guessed/)
}
