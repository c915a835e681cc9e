// example: from the file to the answer: findings with their place, tables, notes, faults of the input
import { describe, expect, it } from 'vitest'
import { documentOf } from '../../../src/report/json.ts'
import { proveJob } from '../../../src/work/prove/prove-job.ts'
import { BENCH, jobText } from './invented.ts'

const prove = (text: string, ...typed: readonly string[]) => proveJob({ file: 'job.yaml', text, typed, working: false })

interface Document {
  readonly results: { readonly [id: string]: { readonly value: number | string; readonly unit: string } }
  readonly tables: { readonly [name: string]: readonly { readonly [key: string]: unknown }[] }
  readonly findings: readonly { readonly rule: string; readonly verdict: string; readonly says: string; readonly where: object }[]
  readonly sources: object
}

function documentFor(text: string, ...typed: readonly string[]): Document {
  const { answer, locate } = prove(text, ...typed)
  return JSON.parse(JSON.stringify(documentOf(answer, locate)))
}

/** A bad joint of half an ohm in the return of the left heater, worked by the solver of the tests elsewhere. */
const BAD_RETURN = `${BENCH}readings:
  - { at: bus to chassis, volts: 27.34 V }
  - { at: left+ to left-, volts: 25.96 V }
  - { at: right+ to right-, volts: 27.02 V }
  - { at: left+ to left-, amps: 2.15 A }
`

describe('without readings', () => {
  const { results, tables, findings } = documentFor(jobText(BENCH))

  it('what to expect, and where to begin', () => {
    expect(Object.keys(tables)).toEqual(['expected', 'allowances', 'next'])
    expect(Object.keys(results)).toEqual(['next-probe', 'next-probe.gain'])
    expect(tables['expected']![0]).toMatchObject({
      at: 'bus to chassis',
      takes: 'volts',
      power: 'on',
      unit: 'V',
      passing: null,
      percent: 0.5
    })
  })

  it('is not judged', () => {
    expect(findings.map(({ rule, verdict }) => [rule, verdict])).toEqual([['prove/fault-likely', 'not-judged']])
  })
})

describe('a bus that reads what no source of the job could give', () => {
  const likeliest = (busV: number, loadV: number) => documentFor(jobText(BENCH), `bus TO chassis=${busV} V`, `left+ TO left-=${loadV} V`)
  it.each([
    ['nothing', 0, 0, 'source-dead@bus'],
    ['a tenth', 2.74, 2.66, 'source-dead@bus'],
    ['that of two batteries in series', 54.8, 53.2, 'source-other@bus'],
    ['it with the red lead on the ground', -27.4, -26.6, 'source-turned@bus']
  ])('%s: %d V, is no healthy circuit', (_, busV, loadV, id) => {
    const { results } = likeliest(busV, loadV)
    expect(results['fault']!.value).toBe(id)
    expect(results['healthy']!.value).toBeLessThan(1)
  })
})

// The job tells 24.0 to 28.6 V behind 15 mohm, of which some 4.5 A take 0.07 V. 27.01 V over the heater at 27.34 V of the bus, as below.
describe('a bus that reads beyond what the job tells of it', () => {
  const likely = (busV: number, load: boolean) => {
    const heater = ((busV * 27.01) / 27.34).toFixed(2)
    return documentFor(jobText(BENCH), `bus TO chassis=${busV} V`, ...(load ? [`right+ TO right-=${heater} V`] : []))
  }
  it.each([
    [23.2, false, 'source-low@bus'],
    [23.2, true, 'source-low@bus'],
    [22, true, 'source-low@bus'],
    [29.4, false, 'source-high@bus'],
    [29.4, true, 'source-high@bus'],
    [31, true, 'source-high@bus']
  ])('%d V, heater read as well: %s, is its source', (busV, load, id) => {
    const { results, findings } = likely(busV, load)
    expect(findings.find(({ says }) => says.includes('bus to chassis'))!.verdict).toBe('fail')
    expect(results['fault']!.value).toBe(id)
    expect(results['healthy']!.value).toBeLessThan(1)
  })

  it.each([23.95, 24.2, 28.4])('%d V, at the end of it, is in order', busV => {
    for (const load of [true, false]) expect(likely(busV, load).tables['faults']![0]).toMatchObject({ fault: 'healthy' })
  })

  // 25.96 and 27.02 V over the heaters and 2.15 A of 27.34 V, as below with half an ohm in the return.
  it('does not hide a bad return beside it', () => {
    const shares = [`left+ TO left-=${((23 * 25.96) / 27.34).toFixed(2)} V`, `right+ TO right-=${((23 * 27.02) / 27.34).toFixed(2)} V`]
    const typed = ['bus TO chassis=23.0 V', ...shares, `left+ TO left-=${((23 * 2.15) / 27.34).toFixed(2)} A`]
    const { answer } = prove(jobText(BENCH), ...typed)
    expect(answer.cautions.join('\n')).toMatch(/two faults at once would explain the readings: .*source low: bus/)
  })
})

// By Ohm's law, 13.6 V over 18 mohm, a heater of 1.4 ohm and 60 mohm where some 9 are drawn: 9.2 A, 12.88 V over the heater, 0.55 V behind it.
it('a bus above what the job tells of it beside a bad ground sends nobody to the meter', () => {
  const text = `
fettle: 1
job: { title: bench, practice: road }
circuit:
  source: { bus: 12.6 V, low: 12.0 V, high: 12.8 V, resistance: 25 mohm, ground: frame }
  altitude: 0 m
  runs:
    - { from: bus, to: h+, bond: 18 mohm }
    - { from: h-, to: frame, wire: { size: 4 mm2, length: 1.5 m, ambient: 30 °C, insulation: 105 °C, bundle: 2 }, bond: 2 mohm }
  loads: [{ load: H, power: 90 W, voltage: 12 V, kind: resistive, inrush: { times: 1, lasts: 1 s }, from: h+, to: h- }]
`
  const { results, tables } = documentFor(text, 'bus TO frame=13.60 V', 'h+ TO h-=12.88 V', 'h- TO frame=0.55 V')
  expect(results['fault']!.value).toMatch(/^(bad-ground|high-resistance)@h- to frame/)
  expect(tables['faults']!.find(({ fault }) => String(fault).startsWith('misread'))?.['probability'] ?? 0).toBeLessThan(1)
})

describe('with readings of the job', () => {
  const { results, tables, findings, sources } = documentFor(jobText(BAD_RETURN))

  it('the reading out of its band fails, in its place', () => {
    const failed = findings.filter(({ verdict }) => verdict === 'fail')
    expect(failed.map(({ rule }) => rule)).toEqual(['prove/out-of-band'])
    expect(failed[0]!.where).toMatchObject({ file: 'job.yaml', path: 'readings.1.volts', line: 27 })
  })

  it('the joints that the readings cannot tell apart count as one', () => {
    expect(results['fault.alike']!.value).toBeGreaterThanOrEqual(1)
    const first = tables['faults']!.filter(({ suspect }) => suspect === 1).map(({ fault }) => fault)
    expect(first).toContain('high-resistance@left- to block')
    expect(first).toContain('high-resistance@tee to left+')
    expect(results['fault.probability']!.value).toBeGreaterThan(90)
    expect(results['healthy']!.value).toBeLessThan(1)
  })

  it('and what would tell is named', () => {
    const [note] = prove(jobText(BAD_RETURN)).answer.cautions
    expect(note).toContain('cannot tell these apart')
    expect(note).toMatch(/(left- to block|tee to left\+|left- to chassis).* would tell/)
  })

  it('probabilities of the table sum to a hundred', () => {
    expect(tables['faults']!.reduce((sum, { own }) => sum + Number(own), 0)).toBeCloseTo(100, 6)
    expect(tables['faults']!.reduce((sum, { prior }) => sum + Number(prior), 0)).toBeCloseTo(100, 6)
  })

  it('the size of the fault has a band with the true one in it', () => {
    expect(tables['faults']![0]).toMatchObject({ unit: 'ohm' })
    expect(Number(tables['faults']![0]!['low'])).toBeLessThan(0.5)
    expect(Number(tables['faults']![0]!['high'])).toBeGreaterThan(0.4)
  })

  it('every source is named with its label', () => {
    expect(sources).toMatchObject({ 'meter-accuracy': { label: 'read' }, 'wire-drum': { label: 'memory' } })
  })

  it('the prior is stated', () => {
    expect(prove(jobText(BAD_RETURN)).answer.cautions.at(-1)).toMatch(/healthy 50 %.*no published source/)
  })
})

describe('with readings typed', () => {
  it('they come after those of the job, and are found by their option', () => {
    const { findings, tables } = documentFor(jobText(BAD_RETURN), 'left- TO block=1.10 V')
    expect(tables['readings']).toHaveLength(5)
    expect(findings.find(({ says }) => says.includes('left- to block'))).toMatchObject({
      verdict: 'fail',
      where: { file: null, path: '--reading' }
    })
    expect(tables['faults']!.filter(({ suspect }) => suspect === 1).map(({ fault }) => fault)).toEqual(['high-resistance@left- to block'])
  })

  it.each([
    ['left+ TO lef-=1 V', '"lef-"', 'left-'],
    ['bus TO left+=1 A', 'nothing joins', undefined],
    ['bus=1 V', 'no two points', undefined]
  ])('%s is refused', (typed, found, near) => {
    const [error] = prove(jobText(BENCH), typed).answer.errors ?? []
    expect(error?.found).toContain(found)
    expect(error?.near).toBe(near)
    expect(error?.where).toMatchObject({ file: null, path: '--reading' })
  })
})

describe('a loop of readings', () => {
  const around = (rightV: string) =>
    documentFor(
      jobText(
        `${BENCH}readings: [{ at: right+ to right-, volts: ${rightV} }, { at: tee to right+, volts: 29 mV }, { at: tee to block, volts: 27.06 V }, { at: right- to block, volts: 19.4 mV }]\n`
      )
    )

  it('that closes passes', () => {
    const { findings, tables } = around('27.01 V')
    expect(findings.find(({ rule }) => rule === 'prove/loop-open')?.verdict).toBe('pass')
    expect(tables['loops']).toHaveLength(1)
  })

  it('that does not is told first, and fails', () => {
    expect(around('26.2 V').findings[0]).toMatchObject({ rule: 'prove/loop-open', verdict: 'fail' })
  })
})

describe('a fuse that is open', () => {
  const LIVE = ['bus TO chassis=27.4 V', 'panel TO tee=27.4 V', 'left+ TO left-=0.0 V', 'bus TO panel=0.00 A']

  it('may have opened for a short: both are named, and the ohms that tell', () => {
    const { tables } = documentFor(jobText(BENCH), ...LIVE)
    const alike = tables['faults']!.filter(({ suspect }) => suspect === 1).map(({ fault }) => fault)
    expect(alike).toEqual(expect.arrayContaining(['open@panel to tee', 'short@left', 'short@right', 'short-to-ground@left, left+']))
    const { cautions } = prove(jobText(BENCH), ...LIVE).answer
    expect(cautions.join('\n')).toContain('may have opened for a short')
    expect(cautions[0]).toMatch(/ohms .* would tell/)
  })

  // The ground may be open as well: from behind it nothing leads to the chassis.
  it('where nothing leads through, no continuity is told, as the meter shows it', () => {
    const [note] = prove(jobText(BENCH), ...LIVE.filter(reading => !reading.startsWith('panel'))).answer.cautions
    expect(note).toContain('no continuity (OL) if open: block to chassis')
    expect(note).not.toMatch(/\d{6}/)
  })

  it('for which of them, the ohms tell', () => {
    const { results } = documentFor(jobText(BENCH), ...LIVE, 'left+ TO left-=12.2 ohm', 'right+ TO right-=0.3 ohm')
    expect(results['fault']!.value).toBe('short@right')
  })
})

it('a job without a circuit is not judged, and says what is missing', () => {
  const { answer } = prove(jobText('').replace(/circuit:.*/s, ''))
  expect(answer.findings).toMatchObject([{ verdict: 'not-judged', change: 'give circuit' }])
})

it('a circuit without an answer is told in words', () => {
  const stray = '    - { from: lamp+, to: lamp-, wire: { size: 1.5 mm2, length: 1 m } }\n  loads:'
  const { answer } = prove(jobText(BENCH).replace('  loads:', stray))
  expect(answer.findings).toMatchObject([{ rule: 'circuit/no-answer', verdict: 'fail' }])
})

it('a circuit that was not drawn to its end is told so', () => {
  const { answer } = prove(jobText(BENCH).replace('from: block, to: chassis', 'from: block, to: nowhere'))
  expect(answer.findings).toMatchObject([{ rule: 'circuit/no-answer', says: expect.stringContaining('to "chassis"') }])
})

it('a load whose two ends hang on the feed is told so', () => {
  const { answer } = prove(jobText(BENCH).replace('from: right+, to: right-', 'from: right+, to: tee'))
  expect(answer.cautions[0]).toContain('as drawn no current flows from right+ to tee')
})

describe('a source that the drawing itself loads', () => {
  // 12 V behind 10 mohm, and a run straight to ground: of 2 mohm it leaves 12 · 2/12 = 2 V, of 9 mohm 12 · 9/19 = 5.68 V, of 11 mohm 12 · 11/21 = 6.29 V.
  const noted = (runOhm: string) => {
    const { answer } = prove(`
fettle: 1
job: { title: straight to ground }
circuit:
  source: { bus: 12 V, resistance: 10 mohm, ground: frame }
  runs:
    - { from: bus, to: p, bond: 1 mohm }
    - { from: bus, to: frame, through: [{ switch: S1, rating: 16 A, resistance: ${runOhm} }] }
  loads: [{ load: one, resistance: 20 ohm, from: p, to: frame }]
`)
    return answer.cautions[0]
  }

  it('to less than half of its voltage is told to be shorted', () => {
    expect(noted('2 mohm')).toMatch(/^as drawn 2\.00 V of 12\.00 V are left at the bus: its source is shorted/)
    expect(noted('9 mohm')).toMatch(/^as drawn 5\.68 V of 12\.00 V/)
  })

  it('to more than that is not', () => {
    expect(noted('11 mohm')).toMatch(/^before the power goes on/)
  })
})

it('a number outside a range is told at its place', () => {
  const { answer } = prove(jobText(BENCH).replace('length: 4.6 m', 'length: 46000 m'))
  expect(answer.errors?.[0]?.where).toMatchObject({ path: 'circuit.runs.1.wire.length' })
})

it('working shows the circuit solved and what the meter may be off', () => {
  const { answer } = proveJob({ file: 'job.yaml', text: jobText(BENCH), typed: [], working: true })
  const says = answer.working!.map(line => line.says)
  expect(says).toContain('voltage at left+ against chassis')
  expect(says).toContain('how far a reading of amps may be off')
})

it('a switch that is drawn open is expected on, and that is said', () => {
  const job = (state: string) => `
fettle: 1
job: { title: open }
circuit:
  source: { bus: 12 V, resistance: 10 mohm, ground: frame }
  runs: [{ from: bus, to: p, through: [{ switch: S1, rating: 16 A, resistance: 10 mohm${state} }] }]
  loads: [{ load: one, resistance: 2 ohm, from: p, to: frame }]
`
  const [open, closed] = [prove(job(', state: open')).answer, prove(job('')).answer]
  expect(open.cautions).toContain('switch S1 drawn open: every reading is expected with it on')
  expect(open.tables).toEqual(closed.tables)
  expect(closed.cautions.join()).not.toContain('drawn open')
})

it('a run that is open while it is measured carries nothing, and counts as drawn', () => {
  const { answer } = prove(`
fettle: 1
job: { title: two batteries apart }
circuit:
  source: { bus: 12 V, resistance: 10 mohm, ground: frame }
  other-sources: [{ what: second battery, voltage: 13 V, resistance: 20 mohm, from: frame, to: aux }]
  runs:
    - { from: bus, to: stud, wire: { size: 6 mm2, length: 1 m } }
    - { from: stud, to: aux, through: [{ switch: K1, rating: 100 A, resistance: 1 mohm, state: open }] }
    - { from: aux, to: h+, wire: { size: 2.5 mm2, length: 1 m } }
  loads: [{ load: heater, resistance: 4 ohm, from: h+, to: frame }]
`)
  const rows = answer.tables['expected']!.rows
  expect(answer.cautions[0]).toContain('switch K1 drawn open: every reading is expected with it off')
  // The feed has no way round but the open switch; the heater hangs on the other battery.
  expect(rows.find(({ takes, what }) => takes === 'amps' && what === 'feed')!['value']).toBe(0)
  expect(rows.find(({ takes, what }) => takes === 'amps' && what === 'through heater')!['value']).toBeCloseTo(13 / 4, 0)
  expect(answer.cautions.join()).not.toContain('as drawn no current flows')
})
