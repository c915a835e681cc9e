// example: words, results that come and go, verdicts and faults of `dew`
import { describe, expect, it } from 'vitest'
import { jsonOf } from './json-of.ts'

const IDS = ['dew-point', 'frost-point', 'vapour-pressure', 'humidity', 'humidity-over-ice']

describe('results', () => {
  it('are always there, the margin only for a surface', async () => {
    expect(Object.keys((await jsonOf('dew --air 4°C --humidity 78%')).results)).toEqual(IDS)
    expect(Object.keys((await jsonOf('dew --air 4°C --humidity 78% --surface 5°C')).results)).toEqual([...IDS, 'surface-margin'])
  })

  it('above 0 °C there is no frost point and no humidity over ice, and a word why', async () => {
    const { results, cautions } = await jsonOf('dew --air 15°C --humidity 60%')
    expect([results['frost-point']?.value, results['humidity-over-ice']?.value]).toEqual([null, null])
    expect(cautions.join('\n')).toMatch(/no frost point.*\n.*no humidity over ice/)
  })

  it('in dry air above 0 °C there is a frost point, below 0 °C both', async () => {
    const dry = await jsonOf('dew --air 3°C --humidity 40%')
    expect(dry.results['frost-point']?.value).toBeLessThan(0)
    expect(dry.results['humidity-over-ice']?.value).toBeNull()
    const cold = await jsonOf('dew --air -9°C --humidity 80%')
    expect(cold.results['humidity-over-ice']?.value).toBeGreaterThan(80)
  })

  it('by the wet bulb need the pressure: altitude is assumed where it is not given', async () => {
    const low = await jsonOf('dew --air 20°C --wet 12°C')
    const high = await jsonOf('dew --air 20°C --wet 12°C --altitude 2500m')
    expect(high.results['humidity']?.value).toBeGreaterThan(low.results['humidity']!.value!)
    expect(low.inputs['altitude']?.assumed).toBe('default: sea level')
    expect(high.inputs['altitude']?.assumed).toBeNull()
  })
})

describe('a surface', () => {
  it.each([
    ['--surface 6°C', 0, 'pass'],
    ['--surface "5.5°C ± 6 K"', 1, 'fail'],
    ['--surface -6°C', 1, 'fail']
  ])('%s', async (words, exit, verdict) => {
    const found = await jsonOf(`dew --air 4°C --humidity 78% ${words}`)
    expect(found.exit).toBe(exit)
    expect(found.findings.map(({ rule, verdict: is }) => [rule, is])).toEqual([['dew/surface-wet', verdict]])
  })

  it('not given, nothing is judged', async () => {
    expect((await jsonOf('dew --air 4°C --humidity 78%')).findings).toEqual([])
  })

  it('is told what a margin is not', async () => {
    const { cautions } = await jsonOf('dew --air 4°C --humidity 78% --surface 6°C')
    for (const word of ['estimate', 'was not entered', 'no icing protection']) expect(cautions.join('\n')).toContain(word)
  })

  it('hangs on an assumed altitude only where the wet bulb does', async () => {
    const [byHumidity] = (await jsonOf('dew --air 20°C --humidity 40% --surface 15°C')).findings
    const [byBulb] = (await jsonOf('dew --air 20°C --wet 12°C --surface 15°C')).findings
    expect([byHumidity?.verdict, byBulb?.verdict]).toEqual(['pass', 'caution'])
  })
})

describe('faults', () => {
  it.each([
    ['dew --air 4°C', '--humidity', 'neither --humidity nor --wet'],
    ['dew --air 4°C --humidity 78% --wet 3°C', '--wet', '--wet beside --humidity'],
    ['dew --humidity 78%', '--air', 'nothing'],
    ['dew --air 4 --humidity 78%', '--air', 'no unit'],
    ['dew --air 61°C --humidity 78%', '--air', 'air is 61 °C'],
    ['dew --air 20°C --humidity 101%', '--humidity', 'humidity is 101 %'],
    ['dew --air 20°C --wet 21°C', '--wet', 'a wet bulb that is warmer than its air'],
    ['dew --air 20°C --humidity 50% --altitude 12km', '--altitude', 'altitude is 12000 m']
  ])('%s', async (example, option, found) => {
    const { exit, errors } = await jsonOf(example)
    expect(exit).toBe(2)
    expect(errors?.[0]).toMatchObject({ where: { path: option } })
    expect(errors?.[0]?.found).toContain(found)
  })
})
