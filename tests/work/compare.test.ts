// example: what moved between two jobs
import { describe, expect, it } from 'vitest'
import { compare } from '../../src/work/compare.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { WIRED } from './plain-jobs.ts'

const job = (text: string) => judgeJob('x.yaml', text)
const before = job(WIRED)
const longer = job(WIRED.replace('length: 10 m', 'length: 60 m'))

it('nothing, between a job and itself', () => {
  expect(compare(before, before)).toEqual({ results: [], verdicts: [], worse: false })
})

it('a longer wire moves what hangs on it, and its verdict for the worse', () => {
  const { results, verdicts, worse } = compare(before, longer)
  const others = results.map(({ id }) => id).filter(id => !id.startsWith('circuit.left:'))
  expect(others).toEqual(['circuit.bus-left+:wire.current'])
  expect(verdicts.map(({ rule, moved }) => [rule, moved])).toEqual([['drop/too-much', 'worse']])
  expect(worse).toBe(true)
})

it('the other way round it got better', () => {
  const { verdicts, worse } = compare(longer, before)
  expect(verdicts.map(({ moved }) => moved)).toEqual(['better'])
  expect(worse).toBe(false)
})

// Its heater has no load in the circuit, which is told there.
describe('a thing that is in one job alone', () => {
  const two = job(WIRED.replace('holes: {', 'holes: { right: { takes: heater, found: { diameter: 9.8 mm, depth: 19.0 mm } },'))

  it('is new, and worse where it is no pass', () => {
    const { verdicts, worse } = compare(before, two)
    expect(new Set(verdicts.map(({ moved, thing }) => `${moved} ${thing}`))).toEqual(new Set(['new holes.right', 'worse circuit']))
    expect(worse).toBe(true)
  })

  it('or gone', () => {
    const { verdicts, worse } = compare(two, before)
    expect(new Set(verdicts.map(({ moved }) => moved))).toEqual(new Set(['gone', 'better']))
    expect(worse).toBe(false)
  })
})
