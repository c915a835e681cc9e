// property: a verdict never improves when its margin shrinks, or when a doubt is added; and a table of what a finding says
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fact } from '../../src/formula/formula.ts'
import { SOURCES } from '../../src/formula/source.ts'
import type { Verdict } from '../../src/rules/finding.ts'
import { worstOf } from '../../src/rules/finding.ts'
import { atLeast, atMost, neverFails, notJudged } from '../../src/rules/judge.ts'
import type { Judged } from '../../src/rules/rule.ts'
import { assumed, between, searched, sharp } from './bounded.ts'

const gap = fact('gapMm', { says: 'gap', symbol: 'g', source: SOURCES.geometry })
const BEST_FIRST: readonly Verdict[] = ['pass', 'caution', 'fail']
const rank = ({ verdict }: Judged) => BEST_FIRST.indexOf(verdict)

const number = fc.double({ min: -1e4, max: 1e4, noNaN: true })
/** Steps down to far below what counts as rounding. */
const step = fc.oneof(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 1e-8, noNaN: true }))
const doubt = fc.constantFrom(
  (x: ReturnType<typeof between>) => x,
  assumed,
  searched,
  (x: ReturnType<typeof between>) => assumed(searched(x))
)

describe('a verdict never improves', () => {
  it('when the margin of a least shrinks', () => {
    fc.assert(
      fc.property(number, step, step, step, doubt, (limit, above, less, width, doubted) => {
        const at = (low: number) => atLeast(gap, doubted(between(low, low + width)), { value: limit })
        expect(rank(at(limit + above - less))).toBeGreaterThanOrEqual(rank(at(limit + above)))
      })
    )
  })

  it('when the margin of a greatest shrinks', () => {
    fc.assert(
      fc.property(number, step, step, step, doubt, (limit, below, more, width, doubted) => {
        const at = (high: number) => atMost(gap, doubted(between(high - width, high)), { value: limit })
        expect(rank(at(limit - below + more))).toBeGreaterThanOrEqual(rank(at(limit - below)))
      })
    )
  })

  it('when bounds grow', () => {
    fc.assert(
      fc.property(number, number, step, step, (limit, value, width, wider) => {
        const at = (by: number) => between(value - by, value + by)
        expect(rank(atLeast(gap, at(width + wider), { value: limit }))).toBeGreaterThanOrEqual(
          rank(atLeast(gap, at(width), { value: limit }))
        )
      })
    )
  })

  it('when a doubt is added', () => {
    fc.assert(
      fc.property(number, number, doubt, (limit, value, doubted) => {
        expect(rank(atLeast(gap, doubted(sharp(value)), { value: limit }))).toBeGreaterThanOrEqual(
          rank(atLeast(gap, sharp(value), { value: limit }))
        )
      })
    )
  })

  it('where no fail is meant, by more than that', () => {
    fc.assert(
      fc.property(number, step, step, (limit, above, less) => {
        const at = (low: number) => neverFails(atLeast(gap, sharp(low), { value: limit }))
        expect(rank(at(limit + above - less))).toBeGreaterThanOrEqual(rank(at(limit + above)))
        expect(at(limit + above - less).verdict).not.toBe('fail')
      })
    )
  })
})

describe('the policy', () => {
  it.each([
    ['room', sharp(3.1), 'pass'],
    ['no room', sharp(2.9), 'fail'],
    ['no margin', sharp(3), 'caution'],
    ['no margin within rounding, below', sharp(3 - 1e-12), 'caution'],
    ['no margin within rounding, above', sharp(3 + 1e-12), 'caution'],
    ['room on an assumed value', assumed(sharp(3.1)), 'caution'],
    ['room at an end that was searched for', searched(sharp(3.1)), 'caution'],
    ['no room on an assumed value', assumed(sharp(2.9)), 'fail'],
    ['no number at all', sharp(Number.NaN), 'fail'],
    ['no end', sharp(Number.NEGATIVE_INFINITY), 'fail']
  ])('%s', (_, bounded, verdict) => {
    expect(atLeast(gap, bounded, { value: 3 }).verdict).toBe(verdict)
  })

  it('an assumed limit is a doubt too', () => {
    const judged = atMost(gap, sharp(1), { value: 3, assumed: 'default: three' })
    expect(judged.verdict).toBe('caution')
    expect(judged.says).toContain('the limit is assumed: default: three')
  })

  it('says value, limit, and every reason for a caution', () => {
    const { says } = atLeast(gap, searched(assumed(between(3, 4))), { value: 3, reason: 'letter 7' })
    for (const part of [
      'gap 3.00 mm at the worst end',
      'at least 3.00 mm wanted (letter 7)',
      'no margin',
      'tools.guessed',
      'tools.turning'
    ])
      expect(says).toContain(part)
  })

  it('keeps the reasons where a rule says the rest in its own words', () => {
    expect(atLeast(gap, sharp(3), { value: 3 }, 'tight').says).toBe('tight; no margin')
  })

  it('prints an end without end in words', () => {
    expect(atMost(gap, sharp(Number.POSITIVE_INFINITY), { value: 3 }).says).toContain('gap without end mm')
  })

  it('points at the input that moves it most, else at the assumed one', () => {
    expect(atLeast(gap, assumed(between(3, 4)), { value: 1 }).at).toEqual(['holes', 'left', 'measured'])
    expect(atLeast(gap, assumed(sharp(3)), { value: 1 }).at).toEqual(['tools', 'guessed'])
    expect(atLeast(gap, sharp(3), { value: 1 }).at).toEqual([])
  })

  it('what is missing is no number', () => {
    expect(notJudged('wall', 'measure it')).toMatchObject({ verdict: 'not-judged', value: null, margin: null, change: 'give wall' })
  })
})

it.each<[Verdict[], Verdict]>([
  [[], 'pass'],
  [['pass', 'caution'], 'caution'],
  [['caution', 'not-judged'], 'not-judged'],
  [['not-judged', 'fail', 'pass'], 'fail']
])('the worst of %j is %s', (verdicts, worst) => {
  expect(worstOf(verdicts)).toBe(worst)
})
