// property: a job to begin with can be read as it stands, and has each part and each hole that was asked for
import { describe, expect, it } from 'vitest'
import { readJob } from '../../src/job/read-job.ts'
import { type StarterKind, starterText } from '../../src/job/starter.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const KINDS: readonly StarterKind[] = ['heater', 'sensor', 'plug']
const ASKED: readonly (readonly StarterKind[])[] = [...KINDS.map(one => [one]), ...KINDS.flatMap(one => KINDS.map(other => [one, other]))]

describe.each(ASKED)('%s %s', (...kinds) => {
  const all = kinds.filter(kind => kind !== undefined)
  const text = starterText(all)
  const { job, errors } = readJob('new.yaml', text)

  it('is read without a fault and judged', () => {
    expect(errors).toEqual([])
    expect(judgeJob('new.yaml', text).errors).toEqual([])
  })

  it('has a hole for each and a part for each kind', () => {
    expect(Object.values(job.holes).map(({ takes }) => job.parts[takes]?.kind)).toEqual(all)
    expect(Object.values(job.parts).map(({ kind }) => kind)).toEqual([...new Set(all)])
  })

  it('asks of ratings and circuit only where something is wired', () => {
    expect(/^ *#? *circuit:/m.test(text)).toBe(all.includes('heater'))
    expect(text.match(/^ *#? *least-power:/gm)?.length ?? 0).toBe(all.includes('heater') ? 1 : 0)
  })

  it('with every remark taken off it is still YAML of known fields', () => {
    const whole = text
      .split('\n')
      .slice(2)
      .map(line => line.replace(/^( *)# /, '$1'))
      .join('\n')
    expect(readJob('new.yaml', whole).errors.filter(({ found }) => /unknown field|no YAML|indented/.test(found))).toEqual([])
  })
})
