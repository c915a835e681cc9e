// example: words, results, verdicts, plot and faults of `warm`; figures are invented
import { describe, expect, it } from 'vitest'
import { outputOf, wordsOf } from '../docs/example-output.ts'
import { jsonOf } from './json-of.ts'

const BLOCK = 'warm --power 18W --mass 0.45kg --area 0.03m2 --air 4°C'
const ALLOY = `${BLOCK} --material aluminium --film "20 W/m2K"`

describe('film', () => {
  it('as given is used as it is', async () => {
    const { results } = await jsonOf(ALLOY)
    expect(results['film']?.value).toBe(20)
    expect(results['steady.still']).toBeUndefined()
  })

  it('by airflow and size tells what happens when the air stops', async () => {
    const { results, cautions } = await jsonOf(`${BLOCK} --material aluminium --airflow 3m/s --size 60mm --altitude 0m`)
    expect(results['steady.still']?.value).toBeGreaterThan(results['steady']!.value!)
    expect(cautions.join('\n')).toContain('15 to 20 %')
  })

  it('of air that stops, where that gets too hot to tell, is left out in words', async () => {
    const { exit, results, findings } = await jsonOf(
      'warm --power 400W --mass 0.45kg --area 0.03m2 --air 4°C --material steel --airflow 40m/s --size 10mm'
    )
    expect(exit).toBe(1)
    expect(results['steady.still']).toBeUndefined()
    expect(findings).toMatchObject([{ rule: 'warm/metal-softens', says: expect.stringContaining('up to which a film is worked out') }])
  })

  it('with nothing said of the air is that of still air, and that is assumed', async () => {
    const nothing = await jsonOf(`${BLOCK} --material aluminium --altitude 0m --target 30°C`)
    expect(nothing.inputs['airflow']).toMatchObject({ value: 0, assumed: 'default: still air' })
    expect(nothing.inputs['size']).toMatchObject({ value: 80, assumed: expect.stringContaining('as long as it is thick') })
    expect(nothing.findings[0]?.verdict).toBe('caution')
    const sized = await jsonOf(`${BLOCK} --material aluminium --altitude 0m --target 30°C --size 80mm`)
    expect(sized.results['steady']?.value).toBe(nothing.results['steady']?.value)
    expect(sized.findings[0]?.verdict).toBe('caution')
    expect(sized.findings[0]?.says).toContain('airflow (still air)')
  })

  it('of still air that was said to stand is no assumption', async () => {
    const { findings } = await jsonOf(`${BLOCK} --material aluminium --altitude 0m --target 30°C --size 80mm --airflow 0m/s`)
    expect(findings[0]?.verdict).toBe('pass')
  })
})

describe('material', () => {
  it.each([
    ['aluminium', 900],
    ['A380', 963],
    ['"cast iron"', 544],
    ['"0.9 kJ/kgK"', undefined]
  ])('%s', async (name, heat) => {
    const { exit, results } = await jsonOf(`${BLOCK} --film "20 W/m2K" --material ${name}`)
    expect(exit).toBe(0)
    expect(results['specific-heat']?.value).toBe(heat)
  })

  it('whose tables disagree gives bounds', async () => {
    const { results } = await jsonOf(`${BLOCK} --film "20 W/m2K" --material cast-iron`)
    expect(results['time-constant']?.low).toBeLessThan(results['time-constant']!.value!)
  })
})

describe('target', () => {
  it('not given: no time and no finding of it', async () => {
    const { results, findings } = await jsonOf(ALLOY)
    expect(results['time-to-target']).toBeUndefined()
    expect(findings.map(({ rule }: { rule: string }) => rule)).toEqual(['warm/metal-softens'])
  })

  it('never reached: no time, and the reason in a finding', async () => {
    const { exit, results, findings } = await jsonOf(`${ALLOY} --target 35°C`)
    expect(exit).toBe(1)
    expect(results['time-to-target']?.value).toBeNull()
    expect(findings[0]).toMatchObject({ rule: 'warm/never-reaches', verdict: 'fail' })
    expect(findings[0]?.says).toContain('the target is never reached: it settles 1.0 K below it')
  })

  it('reached at the nominal and not at the worst end', async () => {
    const { exit, results, findings } = await jsonOf(`${ALLOY.replace('18W', '"18 W ± 3 W"')} --target 31°C`)
    expect(exit).toBe(1)
    expect(results['time-to-target']?.value).toBeGreaterThan(0)
    expect(results['time-to-target']?.high).toBeNull()
    expect(findings[0]?.says).toContain('not surely reached')
  })

  it('just where it settles: no time, no margin, a caution', async () => {
    const { exit, results, findings } = await jsonOf(`${ALLOY} --target 34°C`)
    expect(exit).toBe(0)
    expect(results['time-to-target']?.value).toBeNull()
    expect(findings[0]?.verdict).toBe('caution')
  })

  it('an assumed start moves the time and not the verdict', async () => {
    const { inputs, findings } = await jsonOf(`${ALLOY} --target 20°C`)
    expect(inputs['start']).toMatchObject({ value: 4, assumed: 'default: as the air' })
    expect(findings[0]?.verdict).toBe('pass')
  })
})

it('says that a heater of tens of watts is no icing protection', async () => {
  expect((await jsonOf(ALLOY)).cautions[0]).toMatch(/^this is no icing protection/)
})

describe('the course', () => {
  it('goes from the start toward the steady temperature', async () => {
    const { tables, results } = await jsonOf(`${ALLOY} --start -6°C`)
    const course = tables['warm-up']!
    expect(course[0]).toEqual({ time: 0, temperature: -6 })
    expect(course.at(-1)!['temperature']!).toBeLessThan(results['steady']!.value!)
    expect(course.every((row, i) => i === 0 || row['temperature']! > course[i - 1]!['temperature']!)).toBe(true)
  })

  it('is drawn on a page', async () => {
    const { out } = await outputOf(wordsOf(`${ALLOY} --start -6°C --target 20°C`), 60)
    expect(out).toMatch(/steady 34\.0/)
    expect(out).toMatch(/target 20\.0/)
    expect(out).toContain('••')
  })
})

describe('faults', () => {
  it.each([
    [`${BLOCK} --material bras --film "20 W/m2K"`, '--material', '"bras"', 'brass'],
    [`${BLOCK} --material 900 --film "20 W/m2K"`, '--material', 'no unit', null],
    [`${BLOCK} --material steel --film "20 W/m2K" --size 5mm`, '--film', '--film beside --size', null],
    [`${BLOCK} --material steel --film "20 W/m2K" --airflow 5m/s`, '--film', '--film beside --airflow', null],
    [`${BLOCK} --material steel --airflow 5m/s`, '--size', '--airflow without --size', null],
    [`${BLOCK} --film "20 W/m2K"`, '--material', 'nothing', null],
    [`${BLOCK.replace('18W', '900W')} --material steel`, '--power', 'surface is', null],
    [`${ALLOY.replace('0.03m2', '0.03mm2')}`, '--area', 'area is', null],
    [`${BLOCK.replace('0.03m2', '50m2')} --material steel`, '--area', 'area is 50 m²', null]
  ])('%s', async (example, option, found, near) => {
    const { exit, errors } = await jsonOf(example)
    expect(exit).toBe(2)
    expect(errors?.[0]).toMatchObject({ where: { path: option }, near })
    expect(errors?.[0]?.found).toContain(found)
  })
})
