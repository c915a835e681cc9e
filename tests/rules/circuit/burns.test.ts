// table: wires that a single fault overloads, cleared and not; the numbers are invented
import { expect, it } from 'vitest'
import { burns } from '../../../src/rules/circuit/burns.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'
import { walked } from './walked.ts'

const over = (clearedS: number, currentA = 60) => ({ id: 'run thin', currentA, ampacityA: 20, clearedS })

it.each([
  ['no fault overloads anything', [walked({})], 'pass'],
  ['what a fuse clears, however late, is asked of the fuse', [walked({ overloads: [over(3600)] })], 'pass'],
  ['what nothing clears', [walked({ overloads: [over(Number.POSITIVE_INFINITY)] })], 'fail'],
  ['one of many', [walked({}), walked({ overloads: [over(1), over(Number.POSITIVE_INFINITY)] })], 'fail']
])('%s', (_, walk, verdict) => {
  expect(verdictOf(burns, { walk, known: 1, unknown: [], silent: [] })).toBe(verdict)
})

it('tells of the wire that is overloaded most, against what it carries', () => {
  const mild = walked({ fault: { kind: 'shorted', point: 'plus' }, overloads: [over(Number.POSITIVE_INFINITY, 25)] })
  const worst = walked({ fault: { kind: 'cranking', id: 'run strap' }, overloads: [over(Number.POSITIVE_INFINITY, 180)] })
  const { says } = asked(burns, { walk: [mild, worst], known: 1, unknown: [], silent: [] })
  expect(says).toContain('run strap off while cranking: run thin carries 180 A, it is good for 20 A')
})

it('without any wire of known capacity is not judged', () => {
  expectNotJudged(burns, { walk: [walked({})], known: 0, unknown: [], silent: [] }, 'insulation', 'how warm its place is')
})

it('with a breaker whose opening times nobody publishes is not judged, and names it', () => {
  const finding = asked(burns, { walk: [walked({ overloads: [over(Number.POSITIVE_INFINITY)] })], known: 1, unknown: [], silent: ['B6'] })
  expect(finding).toMatchObject({ verdict: 'not-judged', change: expect.stringContaining("the maker's curve") })
  expect(finding.says).toContain('when B6 opens is not known')
})

it('with a wire of which nobody told what it may carry nothing passes, and what burns is told', () => {
  expectNotJudged(burns, { walk: [walked({})], known: 1, unknown: ['thin'], silent: [] }, 'insulation', 'what thin may carry is not known')
  expect(
    verdictOf(burns, { walk: [walked({ overloads: [over(Number.POSITIVE_INFINITY)] })], known: 1, unknown: ['thin'], silent: [] })
  ).toBe('fail')
})
