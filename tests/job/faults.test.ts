// table: every fault of a job file with its line, column, what was found and what is near
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readJob } from '../../src/job/read-job.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const GOOD = `fettle: 1
job:
  title: a job
parts:
  plug:
    kind: plug
    thread: M12x1.5
holes:
  left:
    takes: plug
    found:
      diameter: 9.8 mm
      depth: 19.0 mm
`

/** The good job with one text put in place of another. */
const withText = (from: string, to: string) => {
  expect(GOOD).toContain(from)
  return GOOD.replace(from, to)
}

it('the good job has none', () => {
  expect(judgeJob('x.yaml', GOOD).errors).toEqual([])
})

describe('a fault names its place, what was found, and the nearest word', () => {
  it.each([
    ['an unknown field', withText('diameter:', 'diametr:'), 12, 7, 'unknown field "diametr"', 'diameter'],
    ['a misspelt choice', withText('kind: plug', 'kind: plugg'), 6, 11, '"plugg"', 'plug'],
    ['a bare number', withText('9.8 mm', '9.8'), 12, 17, '9.8', undefined],
    ['a decimal comma', withText('9.8 mm', '9,8 mm'), 12, 17, '9,8 mm', '9.8 mm'],
    ['a wrong dimension', withText('9.8 mm', '9.8 V'), 12, 17, '9.8 V', undefined],
    ['a pitch outside the series', withText('M12x1.5', 'M12x1.6'), 7, 13, 'M12 has no pitch of 1.6 mm', 'M12x1.5'],
    ['a name that points at nothing', withText('takes: plug', 'takes: plag'), 10, 12, '"plag"', 'plug'],
    ['a version there is not', withText('fettle: 1', 'fettle: 2'), 1, 9, '"2"', undefined]
  ])('%s', (_, text, line, column, found, near) => {
    const [error, ...others] = judgeJob('x.yaml', text).errors.filter(one => !one.found.startsWith('no '))
    expect(others).toEqual([])
    expect(error?.where).toMatchObject({ file: 'x.yaml', line, column })
    expect(error?.found).toContain(found)
    if (near !== undefined) expect(error?.near).toContain(near)
  })

  it('a missing field at the block that lacks it', () => {
    const [error] = judgeJob('x.yaml', withText('      diameter: 9.8 mm\n', '')).errors
    expect(error?.where).toMatchObject({ line: 12, path: 'holes.left.found.diameter' })
    expect(error?.found).toBe('no diameter')
  })

  it('a number outside the range of a formula at the field it came from', () => {
    const [error] = judgeJob('x.yaml', withText('19.0 mm', '900 mm')).errors
    expect(error?.where).toMatchObject({ line: 13, path: 'holes.left.found.depth' })
  })
})

it('all faults in one go', () => {
  const text = GOOD.replace('diameter:', 'diametr:').replace('19.0 mm', '19,0 mm').replace('kind: plug', 'kind: pump')
  expect(judgeJob('x.yaml', text).errors.length).toBeGreaterThanOrEqual(4)
})

describe('a broken form is told in words', () => {
  it.each([
    ['a tab', 'fettle: 1\njob:\n\ttitle: x\n', 'tab'],
    ['a field twice', `${GOOD}fettle: 1\n`, 'twice'],
    ['a second document', `${GOOD}---\nfettle: 1\n`, 'second document'],
    ['an alias without anchor', GOOD.replace('title: a job', 'title: *none'), 'alias'],
    ['a tag', GOOD.replace('title: a job', 'title: !secret a'), 'tag'],
    ['an open bracket', `${GOOD}tools: { taps: [\n`, 'bracket left open'],
    ['a list where fields belong', '- a\n- b\n', 'a list'],
    ['nothing', '', 'nothing in the file'],
    ['a key that is a list', `${GOOD}? [a, b]\n: x\n`, 'no text'],
    ['a prototype name', GOOD.replace('  plug:\n', '  __proto__:\n'), 'name'],
    ['a control character', GOOD.replace('title: a job', 'title: "a\\u0007b"'), 'control character']
  ])('%s', (_, text, found) => {
    const { errors } = readJob('x.yaml', text)
    expect(errors.map(error => error.found).join('\n')).toContain(found)
    for (const error of errors) expect(error.where.line).toBeGreaterThanOrEqual(1)
  })

  it('an alias bomb', () => {
    const bomb = [
      'a: &a [x, x, x, x, x, x, x, x, x, x]',
      ...'bcdefgh'.split('').map((name, i) => `${name}: &${name} [${Array(10).fill(`*${'abcdefgh'[i]}`).join(', ')}]`)
    ].join('\n')
    const { errors } = readJob(
      'x.yaml',
      `${GOOD.replace('takes: plug', 'takes: plug\n    under-shoulder: *h')}`.replace('fettle: 1', `${bomb}\nfettle: 1`)
    )
    expect(errors.length).toBeGreaterThan(0)
    expect(errors.length).toBeLessThan(50_000)
  })

  it('a file of many megabytes', () => {
    expect(readJob('x.yaml', '#'.repeat(2_000_000)).errors[0]?.found).toContain('MB')
  })
})

describe('anchors and merge keys', () => {
  it('are read, and what stands in the block itself wins', () => {
    const text = GOOD.replace(
      '  left:',
      '  right: &one\n    takes: plug\n    found: { diameter: 9 mm, depth: 20 mm }\n  left:\n    <<: *one'
    )
    const { job, errors } = readJob('x.yaml', text)
    expect(errors).toEqual([])
    expect(job.holes['left']?.found.diameter.value).toBe(9.8)
  })

  it('wherever the merge key stands', () => {
    const text = GOOD.replace('  left:', '  right: &one\n    takes: plug\n    found: { diameter: 9 mm, depth: 20 mm }\n  left:').replace(
      'depth: 19.0 mm\n',
      'depth: 19.0 mm\n    <<: *one\n'
    )
    expect(readJob('x.yaml', text).job.holes['left']?.found.depth.value).toBe(19)
  })
})

it.each([
  ['    range: 5..25 N·m\n', 'range stands in tools.wrench'],
  ['    fuse: F1\n', 'fuse stands in circuit.runs.through'],
  ['    metal-below: 3 mm\n', 'metal-below stands in limits or holes.casting']
])('a known field in another block is told where it stands: %j', (line, accepted) => {
  const { errors } = judgeJob('x.yaml', withText('    kind: plug\n', `    kind: plug\n${line}`))
  expect(errors).toMatchObject([{ accepted: expect.stringContaining(`; ${accepted}`) }])
})

it('what a job calls by another name is told by that one, where it can stand', () => {
  const nearIn = (file: string) => judgeJob(file, readFileSync(`tests/job/faults/${file}`, 'utf8')).errors[0]?.near
  expect(nearIn('relay.yaml')).toBe('switch')
  expect(judgeJob('x.yaml', withText('diameter:', 'relay: K1, diameter:')).errors[0]?.near).toBeUndefined()
})
