// example: protectors side by side, in series, of two sources and in the return, in invented jobs; figures by hand
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const LIES = 'ambient: 30 °C, insulation: 105 °C, bundle: 1'
const wire = (size: string, length = '1 m', lies = LIES) => `wire: { size: ${size}, length: ${length}${lies === '' ? '' : `, ${lies}`} }`
const fuse = (mark: string, rating: number) =>
  `{ fuse: ${mark}, rating: ${rating} A, style: blade, at: 25 °C, along: 0 m, resistance: 4 mohm }`
const run = (from: string, to: string, ...rest: readonly string[]) => `    - { from: ${from}, to: ${to}, ${rest.join(', ')} }`

interface Drawn {
  readonly runs: readonly string[]
  readonly sources?: string
  readonly practice?: string
  readonly ends?: string
}

function judged({ runs, sources = '', practice = 'road', ends = 'from: h+, to: h-' }: Drawn) {
  const text = `
fettle: 1
job: { title: ways, practice: ${practice} }
circuit:
  source: { bus: 13 V, low: 13 V, high: 13 V, resistance: 40 mohm, ground: frame }
  altitude: 0 m
${sources}
  runs:
${runs.join('\n')}
  loads:
    - { load: lamp, power: 24 W, voltage: 12 V, inrush: { times: 1.1, lasts: 0.1 s }, on: 100 %, ${ends} }
`
  const { errors, findings, results } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  return {
    found: (rule: string, thing: string) =>
      findings.find(one => one.rule === rule && one.thing === `circuit${thing === '' ? '' : `.${thing}`}`)!,
    value: (id: string) => results.find(one => one.id === id)?.value,
    findings
  }
}

const SECOND = '  other-sources:\n    - { what: second, voltage: 13 V, resistance: 40 mohm, from: frame, to: plus }'
const behind = (size: string) => [run('a', 'h+', wire(size)), run('h-', 'frame', wire(size))]

describe.each([
  ['two ways from one source', 'bus', ''],
  ['two sources', 'plus', SECOND]
])('wire behind two fused feeds, %s (IEC 60364-4-43: sources and conductors in parallel)', (_, start, sources) => {
  const of = (size: string, one = 20, two = 20) =>
    judged({
      sources,
      runs: [
        run('bus', 'a', `through: [${fuse('F1', one)}]`, wire('6 mm2')),
        run(start, 'a', `through: [${fuse('F2', two)}]`, wire('6 mm2')),
        ...behind(size)
      ]
    })
  it('is held against the sum of both', () => {
    // By hand: 20 + 20 = 40 A; the wire is good for less, though for more than 20 A.
    const { found } = of('2.5 mm2')
    for (const mark of ['F1', 'F2'])
      expect(found('protect/over-wire', mark)).toMatchObject({
        verdict: 'fail',
        source: 'iec-60364-4-43',
        says: expect.stringContaining('side by side 40.00 A may flow for good; a-h+ behind them may have')
      })
  })
  it('is enough where the sum is', () => {
    expect(of('6 mm2', 10, 10).found('protect/over-wire', 'F1').verdict).toBe('pass')
    expect(of('6 mm2', 10, 10).found('protect/over-wire', 'F2').verdict).toBe('pass')
  })
  it('is held against what both hold where the colder of them sits', () => {
    const breaker = (mark: string, at: string) =>
      `through: [{ breaker: ${mark}, rating: 10 A, style: thermal, at: ${at}, along: 0 m, resistance: 5 mohm }]`
    const { found } = judged({
      sources,
      runs: [
        run('bus', 'a', breaker('F1', '25 °C'), wire('6 mm2')),
        run(start, 'a', breaker('F2', '-20 °C'), wire('6 mm2')),
        ...behind('6 mm2')
      ]
    })
    // 20 A/0.76, by the row of -30 °C (thermal-breaker-sheet, read-secondary).
    for (const mark of ['F1', 'F2'])
      expect(found('protect/over-wire', mark)).toMatchObject({ verdict: 'caution', says: expect.stringContaining('26.32 A at the least') })
  })
  it('has a short that both have to open, and is guarded', () => {
    const { found, findings } = of('6 mm2')
    expect(found('wire/short-circuit', 'a-h+')).toMatchObject({ says: expect.stringMatching(/behind F1.*and F2.*side by side a short of/) })
    expect(found('protect/far-end-short', 'F1').verdict).not.toBe('not-judged')
    expect(findings.some(({ lacks }) => lacks === 'through' || lacks === 'protector')).toBe(false)
    expect(found('circuit/burns', '').verdict).toBe('pass')
  })
})

it('one that is too large for the wire of its own run fails there, whichever source it is of', () => {
  const { found } = judged({
    sources: SECOND,
    runs: [
      run('bus', 'a', `through: [${fuse('F1', 5)}]`, wire('6 mm2')),
      run('plus', 'a', `through: [${fuse('F2', 40)}]`, wire('1.5 mm2')),
      ...behind('16 mm2')
    ]
  })
  // By hand: the wires behind stand 45 A; 1.5 mm² is good for less than 40 A, and nothing but F2 stands before it.
  expect(found('protect/over-wire', 'F2')).toMatchObject({
    verdict: 'fail',
    says: expect.stringContaining('F2, a medium blade fuse of 40 A: 40.00 A; its wire')
  })
  expect(found('protect/over-wire', 'F1').verdict).toBe('pass')
})

it('wire that a second source feeds without a fuse is not saved by the fuse of the first', () => {
  const { found } = judged({
    sources: SECOND,
    runs: [run('bus', 'a', `through: [${fuse('F1', 20)}]`, wire('6 mm2')), run('plus', 'a', wire('6 mm2')), ...behind('6 mm2')]
  })
  expect(found('wire/short-circuit', 'plus-a')).toMatchObject({
    verdict: 'not-judged',
    says: expect.stringContaining('a way without a protector leads to plus-a')
  })
  expect(found('circuit/burns', '').verdict).toBe('fail')
})

it('the second of two that open one after the other has all of the short', () => {
  const joint = (mark: string) => `through: [{ fuse: ${mark}, rating: 20 A, style: blade, resistance: 100 mohm }]`
  const { value } = judged({
    runs: [run('bus', 'a', joint('F1')), run('bus', 'a', joint('F2')), run('h-', 'frame', 'bond: 90 mohm')],
    ends: 'from: a, to: h-'
  })
  // By hand: the short (1 mohm) takes 13 V/(40 + 100/2 + 90 + 1 mohm) = 71.823 A, each fuse half of it; then 13 V/(40 + 100 + 90 + 1 mohm) = 56.277 A.
  expect(value('circuit.F1:protect.fault')).toBeCloseTo(35.912, 2)
  expect(value('circuit.F2:protect.fault')).toBeCloseTo(56.277, 2)
  // By the gates of the sheet (1.6: 50 s, 2: 5 s): 50·(1.7956/1.6)^(ln(5/50)/ln(2/1.6)) = 15.211 s; then 5·(2/2.8139)² = 2.526 s more.
  expect(value('circuit.F1:protect.opening-time.longest')).toBeCloseTo(15.211, 2)
  expect(value('circuit.F2:protect.opening-time.longest')).toBeCloseTo(17.737, 2)
})

describe('a second fuse in series', () => {
  const of = (second: number) =>
    judged({ runs: [run('bus', 'a', `through: [${fuse('F1', 7.5)}, ${fuse('F2', second)}]`, wire('1.5 mm2')), ...behind('1.5 mm2')] }).found
  it('is judged for its own wire like the first', () => {
    expect(of(10)('protect/over-wire', 'F2').verdict).toBe('pass')
    expect(of(10)('protect/far-end-short', 'F2').verdict).toBe('pass')
    expect(of(40)('protect/over-wire', 'F2')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('F1 in the same way lets no more through, and holds that wire')
    })
  })
})

describe('a fuse in the return', () => {
  const back = run('h-', 'frame', `through: [${fuse('F1', 10)}]`, wire('2.5 mm2'))
  it('protects nothing against a short to ground, and is to be moved', () => {
    const { found, findings } = judged({ runs: [run('bus', 'h+', wire('2.5 mm2')), back] })
    expect(found('protect/too-far', 'F1')).toMatchObject({
      verdict: 'fail',
      says: expect.stringMatching(/stands in the return.*goes round it: nothing protects the feed of lamp/),
      change: expect.stringContaining('to the feed')
    })
    expect(found('protect/far-end-short', 'F1')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('goes round it') })
    expect(found('protect/interrupting', 'F1')).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringContaining('stands in the return')
    })
    expect(found('wire/short-circuit', 'bus-h+')).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringContaining('round F1 in the return')
    })
    expect(findings.some(({ thing, lacks }) => thing === 'circuit.F1' && lacks !== undefined)).toBe(false)
  })
  it('is one too many where the feed has its own', () => {
    const { found } = judged({ runs: [run('bus', 'h+', `through: [${fuse('F0', 10)}]`, wire('2.5 mm2')), back] })
    expect(found('protect/too-far', 'F1')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('left live') })
  })
})

describe('what is not given is named, and nothing else', () => {
  const of = (lies: string, size = '2.5 mm2', practice = 'road') =>
    judged({
      practice,
      runs: [run('bus', 'h+', `through: [${fuse('F1', 10)}]`, wire(size, '1 m', lies)), run('h-', 'frame', wire('2.5 mm2'))]
    }).found
  const asked = [
    ['wire/over-ampacity', 'bus-h+'],
    ['wire/short-circuit', 'bus-h+'],
    ['protect/over-wire', 'F1'],
    ['circuit/burns', '']
  ] as const
  it.each([
    ['insulation: 105 °C', 'circuit.runs.0.wire.ambient'],
    ['ambient: 30 °C', 'circuit.runs.0.wire.insulation'],
    ['', 'circuit.runs.0.wire.insulation']
  ])('with %j alone', (lies, lacks) => {
    for (const [rule, thing] of asked)
      expect(of(lies)(rule, thing), rule).toMatchObject({
        verdict: 'not-judged',
        lacks,
        says: expect.stringContaining(`${lacks} is not given`)
      })
  })
  it('a size without a figure is said to be one (33 CFR 183.425, table 5, begins at AWG 18)', () => {
    for (const [rule, thing] of asked) {
      const found = of(LIES, '0.5 mm2', 'boat')(rule, thing)
      expect(found, rule).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('0.5 mm² is smaller than any size') })
      expect(found.lacks, rule).toBeUndefined()
      expect(found.change).toContain('size')
    }
  })
  it('a fuse without rating is asked for that', () => {
    const { found } = judged({
      runs: [run('bus', 'h+', 'through: [{ fuse: F1, style: blade }]', wire('2.5 mm2')), run('h-', 'frame', wire('2.5 mm2'))]
    })
    expect(found('wire/short-circuit', 'bus-h+')).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringContaining('read the rating of fuse F1')
    })
  })
  it('one beside it without rating leaves the sum unknown', () => {
    const { found } = judged({
      runs: [
        run('bus', 'a', `through: [${fuse('F1', 10)}]`, wire('6 mm2')),
        run('bus', 'a', 'name: other', 'through: [{ fuse: F2, style: blade }]', wire('6 mm2')),
        ...behind('6 mm2')
      ]
    })
    expect(found('protect/over-wire', 'F1')).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringContaining('the protector in other feeds it too')
    })
  })
})

it('two feeds side by side are held against both of them whichever of them is on', () => {
  // The second source stands behind a switch that is drawn open: F2 carries most with it on and S1 off, when F1 feeds nothing.
  const { found } = judged({
    sources: SECOND,
    runs: [
      run('bus', 'h+', wire('2.5 mm2'), `through: [${fuse('F1', 10)}, { switch: S1, rating: 20 A, resistance: 4 mohm }]`),
      run('plus', 'h+', wire('2.5 mm2'), `through: [${fuse('F2', 10)}, { switch: S2, rating: 20 A, resistance: 4 mohm, state: open }]`),
      run('h-', 'frame', wire('2.5 mm2'))
    ]
  })
  expect(found('protect/over-wire', 'F2').says).toMatch(/^F2, .*with F1 of 10 A side by side 20\.00 A/)
  expect(found('protect/overloaded', 'F2').says).toMatch(/^with switch S2 on, switch S1 off: F2/)
})
