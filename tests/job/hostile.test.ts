// example: files that are no job are refused in words, soon, and without running out of stack or memory; the files are made for that
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const GOOD = `fettle: 1
job:
  title: a job
parts:
  plug: { kind: plug, thread: M12x1.5 }
holes:
  left: { takes: plug, found: { diameter: 9.8 mm, depth: 19.0 mm } }
`
const doubling = Array.from({ length: 40 }, (_, i) => `b${i}: &b${i} [${i === 0 ? '*a, *a' : `*b${i - 1}, *b${i - 1}`}]\n`).join('')
const steps = Array.from({ length: 600 }, (_, i) => `${' '.repeat(i)}a:\n`).join('')
const many = Array.from({ length: 5000 }, (_, i) => `key${i}: 1\n`).join('')

describe('what no job can be', () => {
  it.each([
    ['brackets without end', '['.repeat(200_000), 'nested more than 100 deep'],
    ['brackets that are closed', `a: ${'{b: '.repeat(5000)}1${'}'.repeat(5000)}`, 'nested more than 100 deep'],
    ['dashes in a row', '- '.repeat(50_000), 'nested more than 100 deep'],
    ['steps to the right', steps, 'nested more than 100 deep'],
    ['a nought byte', `${GOOD}\0`, 'control character'],
    ['half a pair', `${GOOD}# \ud800`, 'control character'],
    ['an escape', `${GOOD}# \u001b[31m`, 'control character'],
    ['an alias bomb in lists', `a: &a [x]\n${doubling}${GOOD}`, 'unknown field "a"'],
    [
      'an alias bomb in merge keys',
      `a: &a { x: 1 }\n${doubling}${GOOD.replace('job:\n', 'job:\n  <<: *b39\n')}`,
      'more fields than a job has'
    ],
    ['a block merged into itself', GOOD.replace('job:\n', 'job: &j\n  <<: *j\n'), 'merged into itself'],
    ['a list merged into itself', GOOD.replace('job:\n', 'job:\n  <<: &s [*s]\n'), 'merged into itself'],
    ['fields without end', many, 'more faults'],
    ['a large file', '#'.repeat(1_000_001), 'MB'],
    ['__proto__', `${GOOD}__proto__: { a: 1 }\n`, 'unknown field "__proto__"'],
    ['constructor', `${GOOD}constructor: { prototype: 1 }\n`, 'unknown field "constructor"'],
    ['toString as a field', GOOD.replace('takes:', 'toString: 1, takes:'), 'unknown field "toString"']
  ])('%s', (_, text, found) => {
    const { errors } = judgeJob('x.yaml', text)
    expect(errors.map(error => error.found).join('\n')).toContain(found)
    expect(errors.length).toBeLessThanOrEqual(201)
    expect(JSON.stringify(errors)).not.toMatch(/call stack|NaN|Infinity/)
  })

  it('a name of a prototype is one like any other', () => {
    expect(judgeJob('x.yaml', GOOD.replaceAll('plug:', 'constructor:').replace('takes: plug', 'takes: constructor')).errors).toEqual([])
    expect(judgeJob('x.yaml', GOOD.replace('takes: plug', 'takes: toString')).errors[0]?.found).toContain('"toString"')
  })

  it('the place of what cannot be read', () => {
    expect(judgeJob('x.yaml', GOOD.replace('a job', 'a \u0007job')).errors[0]?.where).toMatchObject({ line: 3, column: 12 })
  })
})

it('the lines of another system are read', () => {
  expect(judgeJob('x.yaml', GOOD.replaceAll('\n', '\r\n')).errors).toEqual([])
})
