// example: words, results, verdicts and faults of `mass`; figures are invented
import { describe, expect, it } from 'vitest'
import { jsonOf } from './json-of.ts'

const BEFORE = 'mass --before "742 kg @ 0.913 m"'

describe('results', () => {
  it('in pounds and inches are the same', async () => {
    const metric = await jsonOf('mass --before "1000 lb @ 100 in" --add "10 lb @ -20 in"')
    expect(metric.results['mass']?.value).toBeCloseTo(1010 * 0.45359237, 9)
    expect(metric.results['centre']?.value).toBeCloseTo(((1000 * 100 - 10 * 20) / 1010) * 0.0254, 9)
  })

  it('a part taken off has negative mass; both changes count', async () => {
    const { results } = await jsonOf(`${BEFORE} --add "3 kg @ 1 m" --add "-3 kg @ 1 m"`)
    expect(results['mass']?.value).toBeCloseTo(742, 9)
    expect(results['change']?.value).toBeCloseTo(0, 12)
    expect(results['moved']?.value).toBeCloseTo(6, 9)
  })

  it('margins are there with limits alone', async () => {
    expect((await jsonOf(`${BEFORE} --add "1 kg @ 1 m"`)).results['margin.forward']).toBeUndefined()
    expect((await jsonOf(`${BEFORE} --add "1 kg @ 1 m" --limits "0.8..1 m"`)).results['margin.forward']?.value).toBeCloseTo(0.113, 3)
  })
})

describe('limits', () => {
  it.each([
    ['0.86..0.97 m', 0, 'pass'],
    ['0.92..0.97 m', 1, 'fail'],
    ['0.80..0.91 m', 1, 'fail'],
    ['-0.5..-0.2 m', 1, 'fail']
  ])('%s', async (limits, exit, verdict) => {
    const found = await jsonOf(`${BEFORE} --add "0.31 kg @ -0.42 m" --limits "${limits}"`)
    expect(found.exit).toBe(exit)
    expect(found.findings).toMatchObject([{ rule: 'mass/outside-limits', verdict }])
  })

  it('are judged at the worst end of the bounds', async () => {
    const found = await jsonOf('mass --before "742 kg @ 0.913 m ± 5 mm" --add "0.31 kg @ -0.42 m" --limits "0.91..0.97 m"')
    expect(found.findings[0]).toMatchObject({ verdict: 'fail', where: { path: '--before' } })
  })

  it('not given, nothing is judged', async () => {
    expect((await jsonOf(`${BEFORE} --add "1 kg @ 1 m"`)).findings).toEqual([])
  })
})

describe('faults', () => {
  it.each([
    ['mass --before "742 kg" --add "1 kg @ 1 m"', '--before', '"742 kg"'],
    ['mass --before "742 kg @ 1 m @ 2 m" --add "1 kg @ 1 m"', '--before', '@ 2 m'],
    [`${BEFORE} --add "1 kg @"`, '--add', '"1 kg @"'],
    [`${BEFORE} --add "1 m @ 1 m"`, '--add', 'm'],
    [`${BEFORE} --add "1 kg @ 1"`, '--add', 'no unit'],
    [BEFORE, '--add', 'nothing'],
    ['mass --add "1 kg @ 1 m"', '--before', 'nothing'],
    [`${BEFORE} --add "1 kg @ 1 m" --limits "1 m"`, '--limits', '"1 m" is no range'],
    [`${BEFORE} --add "1 kg @ 1 m" --limits "1..0.5 m"`, '--limits', 'wrong way round'],
    [`${BEFORE} --add "-800 kg @ 1 m"`, '--add', 'mass is -58 kg']
  ])('%s', async (example, option, found) => {
    const { exit, errors } = await jsonOf(example)
    expect(exit).toBe(2)
    expect(errors?.[0]).toMatchObject({ where: { path: option } })
    expect(errors?.[0]?.found).toContain(found)
  })
})
