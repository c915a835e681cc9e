// example: fields of a job by their path, and the job with another value there
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { leafFields, withValue } from '../../../src/job/leaf-fields.ts'
import { readJob } from '../../../src/job/read-job.ts'
import { judgeRead } from '../../../src/work/job/judge-job.ts'
import { evenly, movedResults, sweep } from '../../../src/work/vary/sweep.ts'
import { judgedWith, variedField } from '../../../src/work/vary/varied-field.ts'
import { HEATER_OHM, OHM_PER_M, WIRED } from '../plain-jobs.ts'

const TEXT = WIRED.replace('depth: 19.0 mm', 'depth: 19.0 mm +0.3 mm -0.1 mm')
const read = readJob('x.yaml', TEXT)
const field = (path: string) => {
  const found = variedField(read, path)
  return found.ok ? found.value : found.fault
}
const length = field('circuit.runs.0.wire.length') as { readonly path: readonly (string | number)[]; readonly value: Given }

describe('a path', () => {
  it('finds quantities that were given, assumed and left out', () => {
    expect(field('holes.left.found.depth')).toMatchObject({ value: { value: 19 } })
    expect(field('holes.left.keep-clear')).toMatchObject({ value: { assumed: 'default: common practice' } })
    expect(field('holes.left.need')).toMatchObject({ value: null })
    expect(length.value.value).toBe(10)
  })

  it.each([
    ['holes.left.depth', 'holes.left.found.depth'],
    ['holes.left.found.dept', 'holes.left.found.depth'],
    ['circuit.runs.wire.length', 'circuit.runs.0.wire.length'],
    ['holes.left.takes', undefined],
    ['holes', undefined],
    ['', undefined],
    ['__proto__.x', undefined],
    ['tools.wrench.accuracy', undefined]
  ])('%s is none, near %s', (path, near) => {
    const found = variedField(read, path)
    expect(found.ok).toBe(false)
    if (!found.ok) expect(found.fault.near).toBe(near)
  })
})

describe('another value', () => {
  it('keeps the width of its bounds and leaves what was read as it was', () => {
    const depth = field('holes.left.found.depth') as { readonly path: readonly string[]; readonly value: Given }
    const { inputs } = judgedWith(read, depth, 21, {})
    expect(inputs['holes.left.found.depth']).toMatchObject({ value: 21, low: 20.9, high: 21.3 })
    expect(read.job.holes['left']?.found.depth.value).toBe(19)
  })

  it('is no longer assumed', () => {
    const rod = field('holes.left.found.rod') as { readonly path: readonly string[]; readonly value: Given }
    expect(judgedWith(read, rod, 6, {}).inputs['holes.left.found.rod']?.assumed).toBeNull()
  })

  it('the same value gives the same judgement', () => {
    const as = judgedWith(read, length, 10, {})
    const { results, findings } = judgeRead(read)
    expect(as.results).toEqual(results)
    expect(as.findings).toEqual(findings)
  })

  it('names without a prototype stay so', () => {
    const job = withValue(read.job, length.path, new Given(3))
    expect(Object.getPrototypeOf(job.parts)).toBeNull()
    expect(leafFields(job)).toHaveLength(leafFields(read.job).length)
  })
})

describe('a sweep', () => {
  it('goes from end to end in even steps', () => {
    expect(evenly(0.1, 0.7, 6)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7])
  })

  it('gives at every point the divider worked by hand', () => {
    const points = sweep(read, length as never, { from: 5, to: 80, steps: 5, wanted: {} })
    for (const { value, job } of points) {
      const wireOhm = value * OHM_PER_M
      const percent = job.results.find(({ id }) => id === 'circuit.left:drop.drop-percent')!.value as number
      expect(Math.abs(percent - (100 * wireOhm) / (wireOhm + HEATER_OHM))).toBeLessThan(1e-9)
    }
    expect(points.map(({ job }) => job.findings.find(({ rule }) => rule === 'drop/too-much')?.verdict === 'fail')).toEqual([
      false,
      false,
      false,
      true,
      true,
      true
    ])
  })

  it('names the results that move, and those alone', () => {
    const ids = movedResults(sweep(read, length as never, { from: 5, to: 80, steps: 2, wanted: {} })).map(({ id }) => id)
    expect(ids).toContain('circuit.left:drop.drop')
    expect(ids.filter(id => id.startsWith('holes.'))).toEqual([])
  })
})
