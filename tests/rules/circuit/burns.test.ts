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

it('without any wire is not judged', () => {
  expectNotJudged(burns, { walk: [walked({})], known: 0, unknown: [], silent: [] }, 'wire', 'how warm its place is')
})

it('with a breaker whose opening times nobody publishes is not judged, and names it', () => {
  const finding = asked(burns, { walk: [walked({ overloads: [over(Number.POSITIVE_INFINITY)] })], known: 1, unknown: [], silent: ['B6'] })
  expect(finding).toMatchObject({ verdict: 'not-judged', change: expect.stringContaining("the maker's curve") })
  expect(finding.says).toContain('when B6 opens is not known')
})

const lacksInsulation = { field: 'insulation', measure: 'read the print' }
const noFigure = { says: 'no table has it', change: 'take another size' }

it('with a wire of which nobody knows what it may carry nothing passes, and what burns is told', () => {
  const unknown = [{ id: 'thin', lacks: lacksInsulation }]
  for (const known of [0, 1])
    expectNotJudged(
      burns,
      { walk: [walked({})], known, unknown, silent: [] },
      'insulation',
      'whether thin burns is not known: read the print'
    )
  expect(verdictOf(burns, { walk: [walked({ overloads: [over(Number.POSITIVE_INFINITY)] })], known: 1, unknown, silent: [] })).toBe('fail')
})

it('tells each reason by its wires', () => {
  const unknown = [
    { id: 'one', lacks: lacksInsulation },
    { id: 'odd', lacks: noFigure },
    { id: 'two', lacks: lacksInsulation }
  ]
  expect(asked(burns, { walk: [walked({})], known: 1, unknown, silent: [] }).says).toBe(
    'insulation is not given: whether one, two burns is not known: read the print; nor of odd (no table has it)'
  )
  const odd = asked(burns, { walk: [walked({})], known: 1, unknown: [unknown[1]!], silent: [] })
  expect(odd).toMatchObject({
    verdict: 'not-judged',
    says: 'whether odd burns is not known: no table has it',
    change: 'take another size'
  })
  expect(odd.lacks).toBeUndefined()
})
