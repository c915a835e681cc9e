// property: a field put into a job that was read is what reading the longer file gives
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { withValue } from '../../src/job/leaf-fields.ts'
import { readJob } from '../../src/job/read-job.ts'
import { saidIn, saidWith, textOf } from '../../src/job/rewritten.ts'
import { readText } from '../../src/job/with-text.ts'
import { withoutBounds } from '../../src/job/without-bounds.ts'
import { judgeRead } from '../../src/work/job/judge-job.ts'

const TEXT = readFileSync('examples/unmeasured/drain-plug.yaml', 'utf8')
const { job } = readJob('', TEXT)

describe.each([
  ['a field of a block that is there', 'parts.plug.overall', '13 mm', []],
  ['a field that was assumed', 'holes.sump.mouth', '0.5 mm ± 0.1 mm', []],
  ['a word', 'parts.plug.thread', 'M10', []],
  ['a block that was left out', 'supply.battery.capacity', '100 Ah', [['supply.battery.rate', '20 h']]],
  ['a list', 'tools.taps', '[{ name: second, chamfer: 4 }]', []]
] as const)('%s', (_, name, text, beside) => {
  const fields = [...beside, [name, text] as const].map(([at, said]) => ({ path: at.split('.'), text: said }))
  const found = readText(job, fields.at(-1)!, fields.slice(0, -1))!

  it('is read as from the file', () => {
    const written = textOf(fields.reduce((said, one) => saidWith(said, one.path, one.text), saidIn(TEXT)))
    const read = readJob('', written)
    expect(read.errors).toEqual([])
    expect(withValue(job, found.path, found.value)).toEqual(read.job)
  })

  it('leaves all else the very same', () => {
    const changed = withValue(job, found.path, found.value)
    for (const key of Object.keys(job) as (keyof typeof job)[]) if (key !== found.path[0]) expect(changed[key]).toBe(job[key])
  })
})

it.each([
  ['parts.plug.overall', '13'],
  ['parts.plug.overall', '[13 mm'],
  ['parts.plug.kind', 'pump']
])('%s: %s cannot be read', (name, text) => {
  expect(readText(job, { path: name.split('.'), text }, [])).toBeNull()
})

it('without bounds a job has the same verdicts that are not judged', () => {
  const open = (one: typeof job) =>
    judgeRead({ ...readJob('', TEXT), job: one }).findings.flatMap(({ rule, verdict }) => (verdict === 'not-judged' ? [rule] : []))
  expect(open(withoutBounds(job))).toEqual(open(job))
  expect(job.holes['sump']!.found.depth.low).toBeLessThan(job.holes['sump']!.found.depth.high)
  expect(withoutBounds(job).holes['sump']!.found.depth.low).toBe(job.holes['sump']!.found.depth.value)
})
