// example: drop of loads that stand in series, that another source feeds, that are drawn the wrong way round; invented jobs, figures by hand
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

// Class 5 of 2.5 mm2 is 7.98 ohm/km: 5 m and 5 m of it are 0.0798 ohm.
const WIRE = 'wire: { size: 2.5 mm2, length: 5 m, temperature: 20 °C }'

function judged(loads: string, more = '', sources = '') {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: ways }
circuit:
  source: { bus: 24 V, low: 24 V, high: 24 V, resistance: 10 mohm, ground: frame }
${sources}  runs:
    - { from: bus, to: panel, through: [{ fuse: F1, rating: 10 A, style: blade, resistance: 10 mohm }] }
    - { from: panel, to: fed, ${WIRE} }
    - { from: back, to: frame, ${WIRE} }
${more}  loads:
${loads}`
  )
  expect(job.errors).toEqual([])
  const figureOf = (id: string) => job.results.find(one => one.id === `circuit.${id}`)?.value
  const found = (rule: string) => job.findings.filter(one => one.rule === rule)
  return { figureOf, found, text: JSON.stringify(job) }
}

it('two 12 V heaters in series on 24 V lose what the wires take, not what the other one takes', () => {
  const { figureOf, found } = judged(`
    - { load: one, power: 60 W, voltage: 12 V, from: fed, to: mid }
    - { load: two, power: 60 W, voltage: 12 V, from: mid, to: back }`)
  // 24 V over 2 · 2.4 ohm and 0.0998 ohm: 4.898 A; 0.0898 ohm of it are runs.
  const currentA = 24 / (4.8 + 0.0998)
  for (const name of ['one', 'two']) expect(figureOf(`${name}:drop.drop`)).toBeCloseTo(currentA * 0.0898, 6)
  // Both shorted: 24 V over 0.0998 ohm and the short itself.
  expect(figureOf('F1:protect.fault')).toBeGreaterThan(200)
  expect(found('protect/far-end-short').map(({ verdict }) => verdict)).toEqual(['pass'])
})

it('two heaters in series take one current from the machine, and at switch-on', () => {
  const job = (one: string, two: string) =>
    judgeJob(
      'job.yaml',
      `
fettle: 1
job: { title: series }
circuit:
  source: { bus: 24 V, low: 24 V, high: 24 V, resistance: 10 mohm, ground: frame }
  runs:
    - { from: bus, to: fed, bond: 10 mohm, through: [{ fuse: F1, rating: 7.5 A, style: blade, resistance: 10 mohm }] }
  loads:
    - { load: one, power: 60 W, voltage: 12 V, inrush: { times: 1.2, lasts: 1 s }, ${one} }
    - { load: two, power: 60 W, voltage: 12 V, inrush: { times: 1.2, lasts: 1 s }, ${two} }
supply: { output: { idle: 18 A }, loads: [] }
`
    )
  const { results, findings } = job('from: fed, to: mid', 'from: mid, to: frame')
  // 24 V over 2 · 2.4 ohm and 0.03 ohm.
  expect(results.find(({ id }) => id === 'supply.idle:supply.load')?.value).toBeCloseTo(24 / 4.83, 6)
  expect(findings.find(({ rule }) => rule === 'protect/inrush')?.says).toContain('5.96 A')
})

it('a load that another source feeds loses against that source', () => {
  const { figureOf, text } = judged(
    `
    - { load: heater, power: 60 W, voltage: 24 V, from: fed, to: back }
    - { load: lamp, power: 48 W, voltage: 24 V, from: lamp+, to: frame }`,
    `    - { from: aux, to: lamp+, bond: 100 mohm, through: [{ fuse: F2, rating: 5 A, style: blade, resistance: 30 mohm }] }\n`,
    '  other-sources: [{ what: second battery, voltage: 20 V, resistance: 10 mohm, from: frame, to: aux }]\n'
  )
  // 12 ohm behind 0.13 ohm and 0.01 ohm inside.
  expect(figureOf('lamp:drop.drop')).toBeCloseTo((20 / 12.14) * 0.13, 6)
  // 20 V over 0.14 ohm, and no tie of the reckoning: by hand 143 A less what the short itself has.
  expect(figureOf('F2:protect.fault')).toBeGreaterThan(130)
  expect(figureOf('F2:protect.fault-near')).toBeGreaterThan(130)
  expect(text).not.toMatch(/e-[5-9]/)
})

// The bus stands at (24 V/10 mohm + 26 V/90 mohm) over both conductances, 24.2 V behind 9 mohm, before the heater takes anything.
const CHARGED_A = 24.2 / (9.6 + 0.0898 + 0.009)
// Of its current the charger gives a tenth (10 of 100 mohm) through a lead of 50 mohm: a tenth of a tenth of them, 0.5 mohm, is lost there. So the
// terminals sag by 0.9 of 0.9 of 10 mohm and 0.1 of 0.1 of 40 mohm, 8.5 mohm.

it.each([
  ['its plus', 'from: frame, to: charger+', '    - { from: charger+, to: bus, bond: 50 mohm }\n'],
  ['its minus', 'from: charger-, to: bus', '    - { from: charger-, to: frame, bond: 50 mohm }\n']
])('what a charger loses in the lead of %s is no drop of the heater, but its tenth of the current', (_, ends, lead) => {
  const sources = `  other-sources: [{ what: charger, voltage: 26 V, resistance: 40 mohm, ${ends} }]\n`
  const { figureOf } = judged('    - { load: heater, power: 60 W, voltage: 24 V, from: fed, to: back }', lead, sources)
  expect(figureOf('heater:drop.current')).toBeCloseTo(CHARGED_A, 6)
  expect(figureOf('heater:drop.drop')).toBeCloseTo(CHARGED_A * 0.0903, 6)
  expect(figureOf('heater:drop.drop-percent')).toBeCloseTo((100 * CHARGED_A * 0.0903) / (24.2 - CHARGED_A * 0.0085), 6)
})

// Two batteries, of one voltage or not, divide 5 A by what each way has, its 10 mohm inside counted: each part loses in the leads of its own
// with its square; the rest loses all of it.
const RING = (110 / 169.9) ** 2 * 49.9 + (59.9 / 169.9) ** 2 * 100 + 39.9
it.each([
  ['that meet at a stud', 'panel', 24, 10, 10 / 4 + 10 / 4 + 79.8],
  ['of which one charges the other there', 'panel', 23, 10, 10 / 4 + 10 / 4 + 79.8],
  ['at both ends of a ring', 'fed', 24, 100, RING],
  ['of which one charges the other round a ring', 'fed', 22, 100, RING]
])('a load of two batteries %s loses in the leads of both', (_, to, voltage, mohm, lossMohm) => {
  const { figureOf } = judged(
    '    - { load: pump, current: 5 A, from: fed, to: back }',
    `    - { from: aux, to: ${to}, bond: ${mohm} mohm }\n`,
    `  other-sources: [{ what: second battery, voltage: ${voltage} V, resistance: 10 mohm, from: frame, to: aux }]\n`
  )
  expect(figureOf('pump:drop.drop')).toBeCloseTo(0.005 * lossMohm, 6)
})

// A panel of 5 ohm beside the load: of its current 5000 of 5059.9 parts come by the feed, 59.9 mohm with the inside of the battery, and lose in
// its 49.9 mohm with their square; the return loses all of it.
it('a weak source beside the load hides nothing of what the wire loses', () => {
  const { figureOf } = judged(
    '    - { load: pump, current: 5 A, from: fed, to: back }',
    '    - { from: aux, to: fed, bond: 0 ohm }\n',
    '  other-sources: [{ what: panel, voltage: 24 V, resistance: 5 ohm, from: frame, to: aux }]\n'
  )
  expect(figureOf('pump:drop.drop')).toBeCloseTo(0.005 * ((5000 / 5059.9) ** 2 * 49.9 + 39.9), 6)
})

it('a load of two sources that is switched off is judged with it on', () => {
  const { figureOf, found } = judged(
    '    - { load: pump, power: 60 W, from: on, to: back }\n    - { load: fan, power: 24 W, voltage: 24 V, from: on, to: back }',
    '    - { from: aux, to: fed, bond: 5 mohm }\n    - { from: fed, to: on, through: [{ switch: S1, rating: 10 A, state: open }] }\n',
    '  other-sources: [{ what: second battery, voltage: 24 V, resistance: 10 mohm, from: frame, to: aux }]\n'
  )
  expect(found('circuit/no-answer')).toEqual([])
  // All of it stands across the open switch.
  expect(figureOf('fan:drop.drop')).toBeCloseTo(24, 6)
  expect(found('drop/too-much').map(({ says }) => says)).toEqual([
    expect.stringMatching(/^with switch S1 on/),
    expect.stringMatching(/^with switch S1 on/)
  ])
})

it('a load drawn against its current is judged as any other', () => {
  const { figureOf, found } = judged('    - { load: heater, power: 60 W, voltage: 24 V, from: back, to: fed }')
  expect(figureOf('heater:drop.drop')).toBeCloseTo((24 / (9.6 + 0.0998)) * 0.0898, 6)
  expect(found('protect/far-end-short').map(({ verdict }) => verdict)).toEqual(['pass'])
})

it('a load between the plus of two sources has no drop that could be told', () => {
  const { found } = judged(
    '    - { load: link, power: 60 W, voltage: 24 V, from: panel, to: aux }\n    - { load: heater, power: 60 W, voltage: 24 V, from: fed, to: back }',
    '',
    '  other-sources: [{ what: second battery, voltage: 12 V, resistance: 10 mohm, from: frame, to: aux }]\n'
  )
  expect(found('drop/too-much')[0]).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('no source by itself') })
})

it('a gauge whose make-up nobody told is assumed, a metric wire is not', () => {
  const dropOf = (size: string) =>
    judgeJob(
      'job.yaml',
      `
fettle: 1
job: { title: gauge, practice: road }
circuit:
  source: { bus: 24 V, low: 24 V, high: 24 V, resistance: 10 mohm, ground: frame }
  altitude: 0 m
  runs: [{ from: bus, to: fed, wire: { size: ${size}, length: 5 m, temperature: 20 °C } }]
  loads: [{ load: lamp, resistance: 24 ohm, from: fed, to: frame }]
`
    ).findings.find(({ rule }) => rule === 'drop/too-much')
  expect(dropOf('AWG 14')).toMatchObject({ verdict: 'caution', assumes: [['circuit', 'runs', 0, 'wire', 'conductor']] })
  expect(dropOf('AWG 14, conductor: solid')).toMatchObject({ verdict: 'pass' })
  expect(dropOf('2.5 mm2')).toMatchObject({ verdict: 'pass' })
})
