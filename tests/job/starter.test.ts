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

  it('no line of it needs another line changed: a list begins with what every item has', () => {
    const typical = text
      .split('\n')
      .map(line =>
        line.replace(/^( *)# (circuit:|source:|bus:|ground:|runs:|- from: bus|to: panel|through:|- fuse:|rating:|style:)/, '$1$2')
      )
      .join('\n')
    const read = readJob('new.yaml', typical)
    expect(read.errors).toEqual([])
    if (all.includes('heater')) expect(read.job.circuit?.runs).toMatchObject([{ from: 'bus', to: 'panel', through: [{ fuse: 'F12' }] }])
  })

  it('shows no kind of a part for that of a load', () => {
    expect(text).not.toMatch(/^ *# kind: (heater|sensor|plug)/m)
  })

  it('has a hole for each and a part for each kind', () => {
    expect(Object.values(job.holes).map(({ takes }) => job.parts[takes]?.kind)).toEqual(all)
    expect(Object.values(job.parts).map(({ kind }) => kind)).toEqual([...new Set(all)])
  })

  it('asks of ratings and circuit only where something is wired', () => {
    expect(/^ *#? *circuit:/m.test(text)).toBe(all.includes('heater'))
    expect(text.match(/^ *#? *least-power:.*# power/gm)?.length ?? 0).toBe(all.includes('heater') ? 1 : 0)
  })

  it('shows how a fuse, a switch and a joint stand in a run', () => {
    const shown = ['fuse', 'switch', 'bond'].map(key => new RegExp(`^ *# (- )?${key}: `, 'm').test(text))
    expect(shown).toEqual(shown.map(() => all.includes('heater')))
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
