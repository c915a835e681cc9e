// table: inch units beside the metric ones they are shown with; factors by definition of the units (memory)
import { describe, expect, it } from 'vitest'
import type { Answer, Result } from '../../src/report/answer.ts'
import { inchFirst } from '../../src/report/inch-first.ts'
import { pageOf } from '../../src/report/page.ts'
import { quietly } from '../../src/report/quiet.ts'
import { ran } from '../commands/run.ts'

const result = (value: Result['value'], unit: string, shown: Result['shown'], more: Partial<Result> = {}): Result => ({
  id: 'x',
  name: 'x',
  symbol: 'x',
  value,
  unit,
  low: null,
  high: null,
  rss: null,
  source: 'arithmetic',
  shown,
  ...more
})
const answer = (...results: readonly Result[]): Answer => ({
  command: 'x',
  title: '',
  inputs: {},
  results,
  tables: {},
  findings: [],
  cautions: []
})

it.each([
  [25.4, 'mm', 'length', 1, 'in'],
  [0.3048, 'm', 'run', 1, 'ft'],
  [0.0254, 'm', 'arm', 1, 'in'],
  [645.16, 'mm²', 'area', 1, 'in²'],
  [0.09290304, 'm²', 'surface', 1, 'ft²'],
  [4.4482216152605, 'N', 'force', 1, 'lbf'],
  [0.1129848290276167, 'N·m', 'torque', 1, 'lbf·in'],
  [6.894757293168361, 'MPa', 'stress', 1000, 'psi'],
  [3386.388640341, 'Pa', 'pressure', 1, 'inHg'],
  [0.45359237, 'kg', 'mass', 1, 'lb'],
  [100, '°C', 'temperature', 212, '°F'],
  [5, 'K', 'difference', 9, 'Δ°F'],
  [0.3048, 'm/s', 'speed', 1, 'ft/s']
] as const)('%d %s', (value, unit, shown, inch, label) => {
  const [told] = inchFirst(answer(result(value, unit, shown, { low: value, high: value, rss: [value, value] }))).results
  expect(told!.unit).toBe(label)
  for (const one of [told!.value, told!.low, told!.high, ...told!.rss!]) expect(one).toBeCloseTo(inch, 9)
})

it.each([
  ['ampere has no inch unit', result(2, 'A', 'current'), '2.00 A'],
  ['a result named for its unit', result(2, 'N·m', 'torque', { ownUnit: true }), '2.00 N·m'],
  ['a word', result('class 2', '', 'plain'), 'class 2'],
  ['no answer', result(null, 'mm', 'length'), '—'],
  ['the careful side stays', result(21.5, 'mm', 'depth-down'), '0.8464 in (21.50 mm)'],
  ['and the other one', result(21.5, 'mm', 'depth-up'), '0.8465 in (21.50 mm)']
])('%s', (_, given, text) => {
  expect(pageOf(answer(given), { columns: 100, colour: false, units: 'inch' })).toContain(` ${text}\n`)
})

describe('tables', () => {
  it('a twin in inches changes places with its metric column', async () => {
    const { out } = await ran(['drill', '7/16', '--units', 'inch'])
    expect(out).toMatch(/diameter, in +diameter, mm/)
    expect(out).toMatch(/7\/16 +0\.4375 +11\.113/)
  })

  it('JSON knows nothing of it', async () => {
    const words = ['compare', 'examples/gearbox-preheater.yaml', 'examples/bad/too-much-drop.yaml', '--json']
    expect((await ran([...words, '--units', 'inch'])).out).toBe((await ran(words)).out)
  })

  it.each([
    [['compare', 'examples/gearbox-preheater.yaml', 'examples/bad/floor-too-thin.yaml'], /metal-left +0\.\d{4} in/],
    [
      ['sweep', 'examples/hydraulic-tank-sensor.yaml', '--field', 'holes.elbow.found.depth', '--from', '20 mm', '--to', '22 mm'],
      /^ *0\.7874 +/m
    ]
  ])('%j', async (words, text) => {
    expect((await ran([...words, '--units', 'inch'])).out).toMatch(text)
  })
})

it('a unit that is none is told with the near one', async () => {
  const { exit } = await ran(['drill', '7/16', '--units', 'inhc'])
  expect(exit).toBeNull()
})

describe('quiet', () => {
  it('keeps figures and what is less than a pass', async () => {
    const { out } = await ran([
      'hole',
      '--thread',
      'M10',
      '--found-diameter',
      '7.5mm',
      '--found-depth',
      '22mm',
      '--metal-below',
      '5mm',
      '--quiet'
    ])
    expect(out).toContain('5.50 mm')
    expect(out).toContain('CAUTION')
    expect(out).not.toMatch(/░|^note/m)
  })

  it('says of a job that passed nothing, and of many files how many', async () => {
    const { out, told } = await ran(['check', 'examples/bad', '--quiet'])
    expect(out).not.toMatch(/^(PASS|note)/m)
    expect(out).toMatch(/FAIL[\s\S]* FAIL\n$/)
    expect(told.filter(text => text !== '')).toEqual([])
  })

  it('drops no finding but those that pass', () => {
    const findings = (['pass', 'caution', 'fail', 'not-judged'] as const).map(verdict => ({ verdict }) as Answer['findings'][number])
    expect(quietly({ ...answer(), findings }).findings.map(({ verdict }) => verdict)).toEqual(['caution', 'fail', 'not-judged'])
  })
})
