// example: wire that leads from one fuse to another, drawn as one run and as two; an invented circuit, figures by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const LIES = 'ambient: 30 °C, insulation: 105 °C, bundle: 1'
const wire = (mm2: number, length: string) => `wire: { size: ${mm2} mm2, length: ${length}, ${LIES} }`
const fuse = (mark: string, amps: number, along = '') =>
  `{ fuse: ${mark}, rating: ${amps} A, style: blade, breaking-capacity: 5 kA, at: 25 °C, resistance: 2 mohm${along && `, along: ${along}`} }`
const S1 = '{ switch: S1, rating: 30 A, resistance: 4 mohm }'
const MAIN = `from: bus, to: board, ${wire(10, '0.8 m')}, through: [${fuse('F1', 40, '0.1 m')}]`
const HEATER = 'load: heater, power: 36 W, voltage: 12 V, kind: resistive, inrush: { times: 1.1, lasts: 2 s }, from: h+, to: h-'

function judged(
  runs: readonly string[],
  {
    others = '',
    loads = [HEATER],
    practice = 'road'
  }: { readonly others?: string; readonly loads?: readonly string[]; readonly practice?: string } = {}
) {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: one run or two, practice: ${practice} }
circuit:
  source: { bus: 12.6 V, low: 12 V, high: 14.4 V, resistance: 12 mohm, ground: frame }
  altitude: 0 m
${others}
  runs:
${runs.map(run => `    - { ${run} }\n`).join('')}  loads:
${loads.map(load => `    - { ${load} }\n`).join('')}`
  )
  expect(errors).toEqual([])
  return (rule: string, thing: string) => findings.find(one => one.rule === rule && one.thing === thing)
}

const BACK = `from: h-, to: frame, ${wire(2.5, '1 m')}`
const far = (along: string) => [MAIN, `from: board, to: h+, ${wire(1, '12 m')}, through: [${S1}, ${fuse('F2', 5, along)}]`, BACK]
const cut = [
  MAIN,
  `from: board, to: n, name: board-h+, ${wire(1, '11.8 m')}, through: [${S1}]`,
  `from: n, to: h+, ${wire(1, '0.2 m')}, through: [${fuse('F2', 5, '0 m')}]`,
  BACK
]

describe('a fuse beside its heater leaves the wire to it to the fuse at the board', () => {
  const [one, two] = [judged(far('11.8 m')), judged(cut)]
  it.each([
    ['protect/over-wire', 'circuit.F1'],
    ['protect/over-wire', 'circuit.F2'],
    ['protect/far-end-short', 'circuit.F1'],
    ['wire/short-circuit', 'circuit.board-h+'],
    ['protect/inrush', 'circuit.F2'],
    ['drop/too-much', 'circuit.heater']
  ])('%s of %s says the same of one run as of two', (rule, thing) => {
    const { verdict, value, limit } = two(rule, thing)!
    expect(one(rule, thing)).toMatchObject({ verdict, value, limit })
  })
  it('40 A are more than 1 mm² stands, and a short before the fuse burns it', () => {
    expect(one('protect/over-wire', 'circuit.F1')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('F1, a medium blade fuse of 40 A')
    })
    expect(one('circuit/burns', 'circuit')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('F2 at its board side shorted to ground: run board-h+ carries')
    })
    expect(two('circuit/burns', 'circuit')?.verdict).toBe('fail')
  })
  it('at the board it has to hold all of it', () => {
    const near = judged(far('0.1 m'))
    expect(near('protect/over-wire', 'circuit.F1')?.verdict).toBe('pass')
    expect(near('circuit/burns', 'circuit')?.verdict).toBe('pass')
  })
  it.each(['', `${S1}, `])('drawn from the heater to the board as well (%s)', before => {
    const back = judged([MAIN, `from: h+, to: board, ${wire(1, '12 m')}, through: [${before}${fuse('F2', 5, '0.1 m')}]`, BACK])
    expect(back('protect/over-wire', 'circuit.F1')?.verdict).toBe('fail')
    expect(back('circuit/burns', 'circuit')?.verdict).toBe('fail')
  })
  it('where nobody said where it sits that is a caution', () => {
    expect(judged(far(''))('circuit/burns', 'circuit')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining("F2 taken at the source's end of the run")
    })
  })
  it('nor where the one before it stands in the same run', () => {
    const runs = [`from: bus, to: h+, ${wire(1, '4 m')}, through: [${fuse('F1', 40, '0.1 m')}, ${S1}, ${fuse('F2', 5)}]`, BACK]
    expect(judged(runs)('circuit/burns', 'circuit')).toMatchObject({
      verdict: 'caution',
      assumes: [['circuit', 'runs', 0, 'through', 2, 'along']]
    })
  })
  it('wire that the fuse at the board holds needs no word of it', () => {
    const thick = far('').map(run => run.replace('1 mm2', '10 mm2'))
    expect(judged(thick)('circuit/burns', 'circuit')?.verdict).toBe('pass')
  })
})

describe('two fuses in one run', () => {
  it('the second holds nothing of the wire before it', () => {
    const both = judged([
      `from: bus, to: h+, ${wire(1, '4 m')}, through: [${fuse('F1', 40, '0.1 m')}, ${S1}, ${fuse('F2', 5, '3.9 m')}]`,
      BACK
    ])
    expect(both('protect/over-wire', 'circuit.F1')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('F1, a medium blade fuse of 40 A')
    })
  })
  // 1 mm² up to F2 is left to 40 A wherever F3 sits.
  it.each(['', '0 m', '0.1 m', '2 m', '3.9 m'])(
    'a third of which the place is told or not (%s) holds no more than it is rated for',
    along => {
      const three = judged([
        MAIN,
        `from: board, to: h+, ${wire(1, '4 m')}, through: [${fuse('F3', 40, along)}, ${S1}, ${fuse('F2', 5, '3.9 m')}]`,
        BACK
      ])
      expect(['F1', 'F3'].map(mark => three('protect/over-wire', `circuit.${mark}`)?.verdict)).toContain('fail')
    }
  )
  it('where it is taken in two is no matter of how long it is', () => {
    const [sharp, rough] = ['7 m', '7 m ± 0.3 m'].map(along =>
      judged([MAIN, `from: board, to: h+, ${wire(2.5, '8.6 m')}, through: [${S1}, ${fuse('F2', 5, along)}]`, BACK])
    )
    const { value, verdict } = sharp!('drop/too-much', 'circuit.heater')!
    expect(rough!('drop/too-much', 'circuit.heater')).toMatchObject({ value: expect.closeTo(value!, 9), verdict })
  })
  it('what the one before holds is as long as it may be', () => {
    const runs = (along: string) => [
      `from: bus, to: h+, ${wire(1.5, '40 m')}, through: [${fuse('F1', 20, '0 m')}, ${S1}, ${fuse('F2', 5, along)}]`,
      BACK
    ]
    const [rough, far] = [judged(runs('20 m ± 15 m')), judged(runs('35 m'))]
    expect(far('protect/far-end-short', 'circuit.F1')?.verdict).toBe('fail')
    expect(rough('protect/far-end-short', 'circuit.F1')?.verdict).toBe('fail')
  })
  // Between two batteries there is bare wire on one side of it or on the other.
  it.each(['3 m ± 3 m', '1 m ± 1 m', '3 m ± 1 m', '3 m'])('as is what stands before it on the other side: %s', along => {
    const runs = [
      `from: bus, to: mid, ${wire(10, '6 m')}, through: [${fuse('F1', 30, along)}]`,
      `from: aux, to: mid, ${wire(10, '6 m')}, through: [${fuse('F2', 30, '0 m')}]`,
      `from: mid, to: h+, ${wire(10, '1 m')}, through: [${S1}]`,
      BACK
    ]
    const two = judged(runs, {
      practice: 'boat',
      others: '  other-sources: [{ what: second battery, voltage: 12.6 V, resistance: 15 mohm, from: frame, to: aux }]'
    })
    expect(two('protect/too-far', 'circuit.F1')).toMatchObject({
      verdict: 'fail',
      value: expect.closeTo(1000 * (along.startsWith('1') ? 2 : along === '3 m' ? 3 : along.endsWith('3 m') ? 6 : 4), 3)
    })
    expect(two('circuit/burns', 'circuit')?.verdict).toBe('fail')
  })
  it('a wire that may be nothing behind a fuse at its end has figures', () => {
    const runs = [
      MAIN,
      `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`,
      BACK,
      `from: board, to: aux, ${wire(6, '4 m ± 0.5 m')}, through: [${fuse('FB', 30, '4 m ± 0.5 m')}]`
    ]
    const two = judged(runs, {
      practice: 'boat',
      others: '  other-sources: [{ what: second battery, voltage: 12.6 V, resistance: 15 mohm, from: frame, to: aux }]'
    })
    expect(two('circuit/no-answer', 'circuit')).toBeUndefined()
    expect(two('protect/too-far', 'circuit.FB')).toMatchObject({ verdict: 'fail', value: expect.closeTo(1000, 6) })
  })
  it('one of which nobody said where it sits between two sources is asked for', () => {
    const through = [fuse('FA', 5), fuse('FB', 40, '0.1 m')].join(', ')
    const two = judged(
      [MAIN, `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`, BACK].concat(
        `from: aux, to: bus, ${wire(10, '2 m')}, through: [${through}]`
      ),
      {
        practice: 'boat',
        others: '  other-sources: [{ what: second battery, voltage: 12.6 V, resistance: 15 mohm, from: frame, to: aux }]'
      }
    )
    expect(two('protect/too-far', 'circuit.FA')?.verdict).toBe('caution')
  })
  const link = (mm2: number) =>
    judged(
      [MAIN, `from: board, to: h+, ${wire(4, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`, BACK].concat(
        `from: bus, to: aux, name: link, ${wire(mm2, '3 m')}, through: [${fuse('FA', 30, '0.1 m')}, ${fuse('FB', 30, '2.9 m')}]`
      ),
      { others: '  other-sources: [{ what: second battery, voltage: 12.6 V, resistance: 15 mohm, from: frame, to: aux }]' }
    )
  it('one at each end of what joins two batteries hold the wire between them', () => {
    for (const mark of ['FA', 'FB']) expect(link(10)('protect/over-wire', `circuit.${mark}`)?.verdict).toBe('pass')
  })
  it('neither holds it where it is too thin for both', () => {
    for (const mark of ['FA', 'FB']) expect(link(1)('protect/over-wire', `circuit.${mark}`)?.verdict).toBe('fail')
  })
})

describe('a panel on the far end of a wire that a fuse stands at the near end of', () => {
  const LEAD = `from: bus, to: roof, ${wire(4, '5 m')}, through: [${fuse('FP', 15, '0.1 m')}]`
  const LINK = `from: bus, to: aux, ${wire(10, '1 m')}, through: [${fuse('FA', 30, '0 m')}, ${fuse('FB', 30, '1 m')}]`
  const BATTERY = ', { what: second battery, voltage: 12.6 V, resistance: 15 mohm, from: frame, to: aux }'
  const panel = (resistance: string, { practice = 'boat', lead = LEAD, what = 'solar panel', beside = '' } = {}) =>
    judged(
      [MAIN, `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`, BACK].concat(
        lead,
        beside === '' ? [] : LINK
      ),
      { practice, others: `  other-sources: [{ what: ${what}, voltage: 14.4 V${resistance}, from: frame, to: roof }${beside}]` }
    )
  // 14.4 V over 2.4 ohm are 6 A at a dead short, over 0.1 ohm 144 A: 4 mm² carries more than the one and less than the other.
  it('drives no more than its wire carries, and asks for none of its own', () => {
    expect(panel(', resistance: 2.4 ohm')('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
  })
  it.each([LEAD, LEAD.replace('bus', 'board')])('nor has a short to open one that it drives no more through: %s', lead => {
    expect(panel(', resistance: 2.4 ohm', { lead })('protect/far-end-short', 'circuit.FP')?.verdict).not.toBe('fail')
  })
  it('whatever a battery elsewhere drives, which that fuse holds', () => {
    expect(panel(', resistance: 2.4 ohm', { beside: BATTERY })('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
  })
  it('is not known to where nobody told how that lies', () => {
    const lead = LEAD.replace(`, ${LIES}`, '')
    expect(panel(', resistance: 2.4 ohm', { lead })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('is not known to where it carries that in a cool place only', () => {
    const lead = LEAD.replace('ambient: 30 °C', 'ambient: 30 °C +70 °C -0 °C')
    const strong = { lead, what: 'charger' }
    // 14.4 V over 0.36 ohm are 40 A; 4 mm² carries that at 30 °C, and far less at 100 °C.
    expect(panel(', resistance: 0.36 ohm', { what: 'charger' })('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
    expect(panel(', resistance: 0.36 ohm', strong)('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('in a place hotter than its insulation may get is told at that field', () => {
    const hot = LEAD.replace('ambient: 30 °C', 'ambient: 120 °C')
    const { errors } = judgeJob(
      'job.yaml',
      `
fettle: 1
job: { title: hot, practice: boat }
circuit:
  source: { bus: 12.6 V, low: 12 V, high: 14.4 V, resistance: 12 mohm, ground: frame }
  altitude: 0 m
  other-sources: [{ what: solar panel, voltage: 14.4 V, resistance: 2.4 ohm, from: frame, to: roof }]
  runs: [{ ${MAIN} }, { from: board, to: h+, ${wire(2.5, '3 m')} }, { ${BACK} }, { ${hot} }]
  loads: [{ ${HEATER} }]
`
    )
    expect(errors.map(({ where }) => where.path)).toEqual(['circuit.runs.3.wire.ambient'])
  })
  it('may have a minus wire of its own', () => {
    const others = '  other-sources: [{ what: solar panel, voltage: 14.4 V, resistance: 2.4 ohm, from: pv-, to: roof }]'
    const runs = [
      MAIN,
      `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`,
      BACK,
      LEAD,
      `from: pv-, to: frame, ${wire(4, '5 m')}`
    ]
    const own = judged(runs, { practice: 'boat', others })
    expect(own('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
    expect(own('protect/far-end-short', 'circuit.FP')?.verdict).not.toBe('fail')
    // 14.4 V over 0.6 ohm are 24 A: 4 mm² carries that at 30 °C, and less at 90 °C.
    const strong = others.replace('2.4', '0.6')
    const back = (ambient: string) => [...runs.slice(0, -1), `from: pv-, to: frame, ${wire(4, '5 m').replace('30 °C', ambient)}`]
    expect(judged(back('30 °C'), { practice: 'boat', others: strong })('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
    expect(judged(back('50 °C +40 °C -0 °C'), { practice: 'boat', others: strong })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
    const lamp = 'load: lamp, power: 20 W, voltage: 12 V, kind: resistive, inrush: { times: 1.1, lasts: 2 s }, from: l+, to: l-'
    const shared = [
      ...back('30 °C'),
      `from: board, to: l+, ${wire(1.5, '2 m')}, through: [${fuse('F5', 5, '0 m')}]`,
      `from: l-, to: pv-, ${wire(1.5, '2 m')}`
    ]
    expect(judged(shared, { practice: 'boat', others: strong, loads: [HEATER, lamp] })('protect/too-far', 'circuit.FP')?.verdict).toBe(
      'pass'
    )
    const open = [...runs, 'from: pv-, to: mid, bond: 1 mohm'].map(run =>
      run.replace('from: pv-, to: frame', 'from: pv-, to: frame, through: [{ switch: S7, state: open }]')
    )
    expect(judged(open, { practice: 'boat', others })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('that stands on the battery drives more', () => {
    const others = '  other-sources: [{ what: converter, voltage: 12 V, resistance: 0.65 ohm, from: bus, to: roof }]'
    const lead = LEAD.replace('from: bus', 'from: board').replace('along: 0.1 m', 'along: 0 m').replace(wire(4, '5 m'), wire(1, '5 m'))
    const runs = [MAIN, `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`, BACK, lead]
    expect(judged(runs, { practice: 'boat', others })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('is no battery: what is inside one limits nothing', () => {
    expect(panel(', resistance: 2.4 ohm', { what: 'small battery' })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it.each(['battery charger', 'solar panel for the battery', 'battery-to-battery converter'])('nor is a %s one', what => {
    expect(panel(', resistance: 2.4 ohm', { what })('protect/too-far', 'circuit.FP')?.verdict).toBe('pass')
  })
  it.each(['LiFePO4 pack', 'starting bank', 'second'])('a %s may be one', what => {
    expect(panel(', resistance: 2.4 ohm', { what })('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('has every short opened that its wire does not carry', () => {
    const spur = LEAD.replace(wire(4, '5 m'), wire(1, '60 m')).replace("'0.1 m'", "'60 m'").replace('along: 0.1 m', 'along: 60 m')
    expect(panel(', resistance: 0.3 ohm', { lead: spur })('protect/far-end-short', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('on the bus itself limits nothing that the battery drives', () => {
    const runs = [
      `from: bus, to: far, ${wire(2.5, '60 m')}, through: [${fuse('F9', 30, '0 m')}]`,
      `from: roof, to: bus, ${wire(4, '0.1 m')}`
    ]
    const verdict = (more: readonly string[], others = '') =>
      judged([MAIN, `from: board, to: h+, ${wire(2.5, '3 m')}, through: [${fuse('F2', 5, '0 m')}, ${S1}]`, BACK, ...more], { others })(
        'protect/far-end-short',
        'circuit.F9'
      )?.verdict
    const others = '  other-sources: [{ what: solar panel, voltage: 14.4 V, resistance: 2.4 ohm, from: frame, to: roof }]'
    expect(verdict(runs, others)).toBe(verdict(runs.slice(0, 1)))
    expect(verdict(runs, others)).toBe('fail')
  })
  it('asks for one where it may drive more', () => {
    expect(panel(', resistance: 0.1 ohm')('protect/too-far', 'circuit.FP')?.verdict).toBe('fail')
  })
  it('on the board is a way without a fuse into all that hangs there', () => {
    const others = '  other-sources: [{ what: solar panel, voltage: 14.4 V, resistance: 2.4 ohm, from: frame, to: board }]'
    expect(judged(far('11.8 m'), { practice: 'boat', others })('protect/too-far', 'circuit.F2')?.verdict).toBe('fail')
  })
})
