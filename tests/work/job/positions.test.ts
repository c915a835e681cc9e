// example: what is judged in other positions of the switches than the one drawn; invented jobs, figures by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const LIES = 'ambient: 30 °C, insulation: 105 °C, bundle: 1'
const SWITCHED = (mark: string, more = '') => `through: [{ switch: ${mark}, rating: 5 A, resistance: 100 mohm${more} }]`
const FUSE = '{ fuse: F1, rating: 7.5 A, style: blade, at: 25 °C, resistance: 90 mohm }'

interface Drawn {
  readonly runs: readonly string[]
  readonly loads: readonly string[]
  readonly sources?: string
}

function judged({ runs, loads, sources = '' }: Drawn) {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: switches, practice: road }
circuit:
  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: 10 mohm, ground: frame }
  altitude: 0 m
${sources}  runs:
${runs.map(run => `    - { ${run} }\n`).join('')}  loads:
${loads.map(load => `    - { ${load} }\n`).join('')}`
  )
  expect(job.errors).toEqual([])
  expect(JSON.stringify(job)).not.toMatch(/NaN|Infinity/)
  const of = (thing: string, rule: string) => job.findings.find(one => one.thing === `circuit${thing}` && one.rule === rule)
  return { of, job, figure: (id: string) => job.results.find(one => one.id === `circuit.${id}`)?.value }
}

const FEED = `from: bus, to: a, through: [${FUSE}]`
const heater = (name: string, from: string, to = 'frame') =>
  `load: ${name}, resistance: 1.8 ohm, on: 100 %, inrush: { times: 1, lasts: 1 s }, from: ${from}, to: ${to}`

describe('two switches in parallel', () => {
  const beside = (more = '') => ({
    runs: [FEED, `from: a, to: h, name: dash, ${SWITCHED('S1')}`, `from: a, to: h, name: remote, ${SWITCHED('S2', more)}`],
    loads: [heater('one', 'h')]
  })

  it('each must carry alone what both share as drawn', () => {
    const { of, figure } = judged(beside())
    // 12 V over 10 + 90 + 100 mohm and 1.8 ohm are 6 A; with both closed 100 mohm become 50, and each has half.
    for (const [mark, other] of [
      ['S1', 'S2'],
      ['S2', 'S1']
    ] as const) {
      expect(of(`.${mark}`, 'switch/under-rated')).toMatchObject({
        verdict: 'fail',
        value: expect.closeTo(6, 9),
        says: expect.stringMatching(`^with switch ${other} off: switch ${mark} of 5`)
      })
      expect(figure(`${mark}:protect.switch.needed`)).toBeCloseTo(12 / 1.95 / 2, 9)
    }
  })

  it('no less where one is drawn open, though then it carries nothing', () => {
    const { of, figure } = judged(beside(', state: open'))
    expect(of('.S1', 'switch/under-rated')).toMatchObject({
      verdict: 'fail',
      value: expect.closeTo(6, 9),
      says: expect.stringMatching(/^switch S1/)
    })
    expect(of('.S2', 'switch/under-rated')).toMatchObject({
      verdict: 'fail',
      value: expect.closeTo(6, 9),
      says: expect.stringMatching(/^with switch S2 on, switch S1 off: /)
    })
    expect(figure('S2:protect.switch.needed')).toBe(0)
  })

  it('a cold load counts behind each of them', () => {
    const { of } = judged({ ...beside(), loads: [heater('one', 'h').replace('times: 1,', 'times: 3,')] })
    expect(of('.S1', 'switch/under-rated')).toMatchObject({ value: expect.closeTo(18, 9) })
  })

  it('the wire of each is held against all of it', () => {
    const wired = beside().runs.map(run => run.replace('name:', `wire: { size: 0.5 mm2, length: 1 m, temperature: 20 °C, ${LIES} }, name:`))
    const { of, figure } = judged({ ...beside(), runs: wired })
    // Class 5 of 0.5 mm2 is 39 ohm/km.
    expect(of('.dash', 'wire/over-ampacity')!.says).toMatch(`with switch S2 off: ${(12 / 2.039).toFixed(2)} A flow`)
    expect(figure('dash:wire.current')).toBeCloseTo(12 / (1.9 + 0.139 / 2) / 2, 6)
  })
})

describe('a load behind a switch that is drawn open', () => {
  const drawn = (one: string, two: string) => ({
    runs: [FEED, `from: a, to: h, ${SWITCHED('S1', one)}`, `from: a, to: i, ${SWITCHED('S2', two)}`],
    loads: [heater('one', 'h'), heater('two', 'i')]
  })
  // 12 V over 100 mohm and two times 1.9 ohm side by side.
  const bothA = 12 / (0.1 + 0.95)

  it.each([
    ['one of two', ', state: open', '', 'with switch S1 on: '],
    ['both', ', state: open', ', state: open', 'with every switch on: ']
  ])('%s: it is judged as if it were on, and so is what feeds it', (_, one, two, state) => {
    const { of, figure } = judged(drawn(one, two))
    // Lost behind the source: 90 mohm with all of it, the switch with half.
    expect(of('.one', 'drop/too-much')).toMatchObject({
      verdict: 'fail',
      value: expect.closeTo((100 * (0.09 + 0.1 / 2) * bothA) / (12 - 0.01 * bothA), 4)
    })
    expect(of('.one', 'drop/too-much')!.says.startsWith(state)).toBe(true)
    expect(of('.F1', 'protect/overloaded')).toMatchObject({ verdict: 'fail', says: expect.stringContaining(`${state}F1, a`) })
    expect(of('.F1', 'protect/overloaded')!.says).toContain(`${bothA.toFixed(2)} A flow`)
    expect(of('.S1', 'switch/under-rated')!.value).toBeCloseTo(12 / 2, one === two ? 1 : 0)
    expect(figure('one:drop.current')).toBe(0)
  })

  it('with none of them open nothing is said of a position', () => {
    expect(JSON.stringify(judged(drawn('', '')).job.findings.filter(({ rule }) => !rule.startsWith('circuit/')))).not.toContain(
      'with switch'
    )
  })

  it.each(['current: 5 A', 'power: 55 W'])('of %s takes nothing, and the rest has what it has', takes => {
    const { of, figure, job } = judged({
      runs: drawn(', state: open', '').runs,
      loads: [heater('one', 'h').replace('resistance: 1.8 ohm', takes), heater('two', 'i')]
    })
    expect(job.findings.filter(({ rule }) => rule === 'circuit/no-answer')).toEqual([])
    expect(figure('one:drop.current')).toBe(0)
    expect(figure('two:drop.current')).toBeCloseTo(6, 9)
    expect(of('.one', 'drop/too-much')!.says).toMatch(/^with switch S1 on: /)
  })

  it('that cannot be fed when it is on is told of', () => {
    // No more than U²/4r = 144/0.8 = 180 W arrive over 200 mohm.
    const { of } = judged({
      runs: drawn(', state: open', '').runs.slice(0, 2),
      loads: [heater('one', 'h').replace('resistance: 1.8 ohm', 'power: 200 W')]
    })
    expect(of('', 'circuit/no-answer')).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/^with switch S1 on: .*180 W/) })
    expect(of('.one', 'drop/too-much')).toMatchObject({
      verdict: 'not-judged',
      says: expect.stringContaining('behind switch S1, drawn open')
    })
    expect(of('', 'ground/shift')).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('behind switch S1, drawn open') })
    expect(of('.S1', 'switch/under-rated')).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('switch S1, drawn open') })
  })
})

describe.each([[['M', 'A', 'B']], [['A', 'B', 'M']], [['B', 'M', 'A']]])(
  'two loads in series by switch M, in parallel by A and B, all open, listed as %j',
  order => {
    const lines: Record<string, string> = { M: 'from: m, to: x', A: 'from: m, to: frame', B: 'from: a, to: x' }
    const { of } = judged({
      runs: [FEED, ...order.map(mark => `${lines[mark]}, ${SWITCHED(mark, ', state: open')}`)],
      loads: [heater('one', 'a', 'm'), heater('two', 'x')]
    })

    it('the fuse must carry both in parallel', () => {
      // 12 V over 100 mohm and two times 1.8 ohm with a switch of 100 mohm side by side.
      expect(of('.F1', 'protect/overloaded')).toMatchObject({
        verdict: 'fail',
        says: expect.stringMatching(/^with switch [AB] and switch [AB] on: .* 11\.43 A flow/)
      })
    })

    it('each switch has the load that it alone feeds', () => {
      for (const mark of ['A', 'B']) expect(of(`.${mark}`, 'switch/under-rated')!.value).toBeGreaterThan(12 / 2 - 0.01)
    })
  }
)

describe('two feeds drawn as alternatives', () => {
  const { of, job } = judged({
    runs: [FEED, `from: a, to: h, ${SWITCHED('S1')}`, `from: aux, to: h, ${SWITCHED('S2', ', state: open')}`],
    loads: [heater('one', 'h')],
    sources: '  other-sources: [{ what: shore, voltage: 10 V, resistance: 100 mohm, from: frame, to: aux }]\n'
  })

  it('each is judged with the other off', () => {
    expect(of('.S1', 'switch/under-rated')).toMatchObject({ value: expect.closeTo(6, 9), says: expect.stringMatching(/^switch S1/) })
    // 10 V over 100 + 100 mohm and 1.8 ohm.
    expect(of('.S2', 'switch/under-rated')).toMatchObject({
      verdict: 'caution',
      value: expect.closeTo(5, 9),
      says: expect.stringMatching(/^with switch S2 on, switch S1 off: /)
    })
  })

  it('and never both together', () => {
    expect(JSON.stringify(job)).not.toContain('every switch on')
    expect(job.findings.filter(({ rule, verdict }) => verdict === 'fail' && rule.startsWith('circuit/'))).toEqual([])
  })
})

describe('a motor between four contacts', () => {
  const contact = (mark: string, from: string, to: string, more: string) => `from: ${from}, to: ${to}, ${SWITCHED(mark, more)}`
  const open = ', state: open'
  const { of } = judged({
    runs: [
      FEED,
      contact('S1', 'a', 'x', ''),
      contact('S2', 'x', 'frame', open),
      contact('S3', 'a', 'y', open),
      contact('S4', 'y', 'frame', '')
    ],
    loads: [heater('motor', 'x', 'y')]
  })

  it('runs as drawn; what would short the source is not judged, and that is said', () => {
    expect(of('.S1', 'switch/under-rated')!.value).toBeCloseTo(12 / 2.1, 9)
    expect(of('.S2', 'switch/under-rated')).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('switch S2, drawn open') })
  })
})

it('a load that a second source feeds backwards is told of', () => {
  const { of } = judged({
    runs: [FEED, 'from: ret, to: frame, bond: 10 mohm'],
    loads: [heater('one', 'a', 'ret'), 'load: two, resistance: 9.9 ohm, from: aux, to: ret'],
    sources: '  other-sources: [{ what: converter, voltage: 12 V, resistance: 100 mohm, from: aux, to: frame }]\n'
  })
  expect(of('.one', 'circuit/reversed')).toMatchObject({ verdict: 'pass' })
  // About -12 V over 9.9 of 10 ohm, and what the other one lifts the return by.
  expect(of('.two', 'circuit/reversed')).toMatchObject({
    verdict: 'caution',
    says: expect.stringMatching(/two gets its voltage backwards, -11\.9 V: converter/)
  })
})

it('switches that would short the source together are named, in a position that is never judged', () => {
  const { of } = judged({
    runs: [
      FEED,
      'from: a, to: l, bond: 1 mohm',
      `from: lb, to: r, ${SWITCHED('SER')}`,
      'from: rb, to: frame, bond: 1 mohm',
      `from: a, to: r, ${SWITCHED('PA', ', state: open')}`,
      `from: lb, to: frame, ${SWITCHED('PB', ', state: open')}`
    ],
    loads: [heater('left', 'l', 'lb'), heater('right', 'r', 'rb')]
  })
  expect(of('', 'circuit/no-answer')).toMatchObject({
    verdict: 'caution',
    says: 'with switch SER, switch PA, switch PB on at once a source is shorted: that is not judged',
    change: expect.stringContaining('breaks before it makes')
  })
})

it.each([
  ['turned to one is told of, as nothing is judged with both', ['', ', state: open'], 'caution'],
  ['turned to both is judged so', ['', ''], undefined]
])('a selector of two batteries %s', (_, [first, second], verdict) => {
  const { job } = judged({
    runs: [FEED, `from: a, to: s, ${SWITCHED('ONE', first)}`, `from: aux, to: s, ${SWITCHED('TWO', second)}`],
    loads: [heater('one', 's', 'frame')],
    sources: '  other-sources: [{ what: second battery, voltage: 12.8 V, resistance: 20 mohm, from: frame, to: aux }]\n'
  })
  const found = job.findings.find(({ rule, says }) => rule === 'circuit/no-answer' && says.includes('together'))
  expect(found?.verdict).toBe(verdict)
  if (verdict !== undefined)
    expect(found).toMatchObject({
      says: 'with switch ONE, switch TWO on at once sources are together that are apart as drawn: that is not judged',
      change: expect.stringContaining('draw them so and judge that, too')
    })
})

it.each([
  ['a switch that the body leads round is', ['S1'], 'switch S1'],
  ['two beside each other that it leads round are', ['S1', 'S2'], 'switch S1 and switch S2']
])('%s named with what leads round', (_, marks, named) => {
  const switches = marks.map((mark, i) => `from: h-, to: frame, name: back ${i}, ${SWITCHED(mark)}`)
  const { of } = judged({
    runs: [FEED, ...switches, 'from: h-, to: block, bond: 5 mohm', 'from: block, to: frame, bond: 1 mohm'],
    loads: [heater('one', 'a', 'h-')]
  })
  expect(of('.one', 'switch/none')).toMatchObject({
    verdict: 'caution',
    says: `nothing that is drawn switches one off: h--block and block-frame lead round ${named}`
  })
})

describe('a heater behind what a switch leads round gets least with that off, however its main switches are drawn', () => {
  const open = ', state: open'
  const weak = (mains: readonly string[], drawn: string, droppers: readonly string[]) => {
    const [start, end] = [`p${mains.length}`, `d${droppers.length}`]
    const at = (i: number) => (i === 0 ? start : `d${i}`)
    return judged({
      runs: [
        FEED,
        ...mains.map((mark, i) => `from: ${i === 0 ? 'a' : `p${i}`}, to: p${i + 1}, ${SWITCHED(mark, drawn)}`),
        ...droppers.map((_, i) => `from: ${at(i)}, to: ${at(i + 1)}, ${SWITCHED(`HI${i}`, open)}`)
      ],
      loads: [
        `${heater('one', end)}, least-power: 40 W`,
        ...droppers.map(
          (ohm, i) => `load: dropper ${i}, resistance: ${ohm}, inrush: { times: 1, lasts: 1 s }, from: ${at(i)}, to: ${at(i + 1)}`
        )
      ]
    }).of('.one', 'heater/weak')!
  }
  // By hand, I²R with 100 mohm of source and fuse, 100 mohm a main switch, 4 ohm before the heater and its 1.8 ohm; 59 W with all on.
  it.each([
    ['closed', ['S1'], '', ['4 ohm'], 6, ''],
    ['open', ['S1'], open, ['4 ohm'], 6, 'with switch S1 on: '],
    ['open, two of them', ['S1', 'S2'], open, ['4 ohm'], 6.1, 'with switch S1 and switch S2 on: '],
    ['open, before two to be led round', ['S1', 'S2'], open, ['2 ohm', '2 ohm'], 6.1, 'with switch S1 and switch S2 on: ']
  ] as const)('%s', (_, mains, drawn, droppers, wayOhm, state) => {
    const { verdict, value, says } = weak(mains, drawn, droppers)
    expect(verdict).toBe('fail')
    expect(value).toBeCloseTo((12 / wayOhm) ** 2 * 1.8, 6)
    expect(says.startsWith(`${state}power of one`)).toBe(true)
  })
})

describe('a heater with a way past its dropper and one through it, each behind two switches drawn open, gets least through the dropper', () => {
  const way = (marks: readonly [string, string], end: string) => [
    `from: p, to: ${marks[0]}, ${SWITCHED(marks[0], ', state: open')}`,
    `from: ${marks[0]}, to: ${end}, ${SWITCHED(marks[1], ', state: open')}`
  ]
  const [past, through] = [way(['HI', 'HX'], 'h'), way(['LO', 'LX'], 'd')]
  // By hand, I²R: 100 mohm of source and fuse, 100 mohm each of S1, LO and LX, 4 ohm before the heater of 1.8 ohm.
  it.each([
    ['past it first', '', [...past, ...through]],
    ['through it first', '', [...through, ...past]],
    ['the main switch open too, past it first', 'switch S1 and ', [...past, ...through]],
    ['the main switch open too, through it first', 'switch S1 and ', [...through, ...past]]
  ] as const)('%s', (_, main, ways) => {
    const { of } = judged({
      runs: [FEED, `from: a, to: p, ${SWITCHED('S1', main === '' ? '' : ', state: open')}`, ...ways],
      loads: [
        `${heater('one', 'h')}, least-power: 40 W`,
        'load: dropper, resistance: 4 ohm, inrush: { times: 1, lasts: 1 s }, from: d, to: h'
      ]
    })
    const { verdict, value, says } = of('.one', 'heater/weak')!
    expect(verdict).toBe('fail')
    expect(value).toBeCloseTo((12 / 6.2) ** 2 * 1.8, 6)
    expect(says.startsWith(`with ${main}switch LO and switch LX on: power of one`)).toBe(true)
  })
})

describe('a short behind a selector of two batteries', () => {
  const selector = (mark: string, resistance: string) => ({
    sources: `  other-sources: [{ what: second, voltage: 12 V, resistance: ${resistance}, from: frame, to: house }]\n`,
    runs: [
      `from: bus, to: m, ${SWITCHED('Q1')}`,
      `from: house, to: m, ${SWITCHED('Q2', ', state: open')}`,
      `from: m, to: a, through: [${FUSE.replace('F1', mark)}]`
    ],
    loads: [heater('one', 'a')]
  })
  // A selector turned to both: 12 V over 10 + 100 mohm are 109.1 A, over 5 + 100 mohm 114.3 A, over 20 + 100 mohm 100 A more.
  it.each([
    ['5 mohm', 12 / 0.11 + 12 / 0.105],
    ['20 mohm', 12 / 0.11 + 12 / 0.12]
  ])('right behind it the greatest is that of both: %s', (resistance, shortA) => {
    const { of, figure } = judged(selector('F1', resistance))
    expect(of('.F1', 'protect/interrupting')).toMatchObject({ value: expect.closeTo(shortA, 1), says: expect.stringMatching(/^F1/) })
    expect(figure('F1:protect.fault-near')).toBeCloseTo(shortA, 1)
  })

  // At its far end the fuse with its 90 mohm is in it, and the short itself of 1 mohm: 12 V over 10 + 191 mohm are 59.7 A, over 20 + 191
  // mohm 56.9 A, over 5 + 191 mohm 61.2 A; both together would be 77 A and more.
  it.each([
    ['the other one', '20 mohm', 12 / 0.211, /^with switch Q2 on, switch Q1 off: F1/],
    ['the one that is drawn', '5 mohm', 12 / 0.201, /^F1/]
  ])('at the far end the least is that of %s, never of both', (_, resistance, shortA, says) => {
    const { of, figure } = judged(selector('F1', resistance))
    expect(of('.F1', 'protect/far-end-short')!.says).toMatch(says)
    expect(figure('F1:protect.fault')).toBeCloseTo(shortA, 3)
  })

  // 12 V over 200 mohm of each way side by side, 100 mohm of S1 and the 1 mohm of the short are 59.7 A, half of it through each; once F1
  // is open, F2 alone has 39.9 A.
  it('fuses in the leads of both are held against what each has with both on', () => {
    const sources = '  other-sources: [{ what: second, voltage: 12 V, resistance: 10 mohm, from: frame, to: house }]\n'
    const lead = (mark: string, switched: string) =>
      `through: [${FUSE.replace('F1', mark)}, { switch: ${switched}, rating: 5 A, resistance: 100 mohm }]`
    const runs = [
      `from: bus, to: m, ${lead('F1', 'Q1')}`,
      `from: house, to: m, ${lead('F2', 'Q2').replace('100 mohm', '100 mohm, state: open')}`,
      `from: m, to: h, ${SWITCHED('S1')}`
    ]
    const { figure } = judged({ sources, runs, loads: [heater('one', 'h')] })
    expect(figure('F1:protect.fault')).toBeCloseTo(12 / 0.201 / 2, 3)
    expect(figure('F2:protect.fault')).toBeCloseTo(12 / 0.301, 3)
  })

  // 10 m of 1.5 mm2 at 105 °C, 13.3 ohm/km at 20 °C (IEC 60228, class 5), are 177 mohm more: 12 V over 378 or
  // 388 mohm; both together 36.8 A.
  it('a wire behind it is heated by that of one of them', () => {
    const drawn = selector('F1', '20 mohm')
    const wired = `from: a, to: h, name: lead, wire: { size: 1.5 mm2, length: 10 m, ${LIES} }`
    const { of } = judged({ ...drawn, runs: [...drawn.runs, wired], loads: [heater('one', 'h')] })
    expect(of('.lead', 'wire/short-circuit')!.says).toMatch(/a short of (31\.71|30\.90) A/)
  })

  it('counts a switch that is drawn open as closed', () => {
    const runs = [`from: bus, to: m, ${SWITCHED('Q1', ', state: open')}`, `from: m, to: a, through: [${FUSE}]`]
    const found = judged({ runs, loads: [heater('one', 'a')] }).of('.F1', 'protect/interrupting')
    expect(found).toMatchObject({ value: expect.closeTo(12 / 0.11, 1), says: expect.stringMatching(/^F1/) })
  })

  it('counts it in the run of the fuse itself, and no other fuse is said to let less through', () => {
    const item = '{ switch: Q2, rating: 5 A, resistance: 100 mohm, state: open }'
    const drawn = selector('F1', '5 mohm')
    const runs = [drawn.runs[0]!, `from: house, to: m, through: [${FUSE.replace('F1', 'F2')}, ${item}]`, drawn.runs[2]!]
    // 12 V over 5 mohm are 2400 A at its house end; the own run of a fuse whose place is not told counts for nothing.
    expect(judged({ ...drawn, runs }).figure('F2:protect.fault-near')).toBeCloseTo(2400, -1)
  })
})
