// example: wire that no fuse stands before, in an example job with other feeds; currents by hand
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { measureJob } from '../../../src/work/measure/measure-job.ts'

const JOB = readFileSync('examples/gearbox-preheater.yaml', 'utf8')
const LIES = 'ambient: 40 °C, insulation: 105 °C'
const ONE_RUN = (fuse: string) => `
    - from: bus
      to: sump+
      wire: { size: 2.5 mm2, length: 4.4 m, ambient: 50 °C, insulation: 105 °C, bundle: 4 }
      through: [{ fuse: F9, rating: 5 A, style: blade, resistance: 22 mohm${fuse} }, { switch: S2, rating: 16 A, resistance: 12 mohm }]`

type Change = (text: string) => string
const boat: Change = text => text.replace(/practice: \w+/, 'practice: boat')
const more =
  (lines: string): Change =>
  text =>
    text.replace('  labels:', `${lines}\n  labels:`)
const second =
  (runs: string): Change =>
  text =>
    more(runs)(
      text.replace('  runs:', '  other-sources: [{ what: second, voltage: 27.2 V, resistance: 10 mohm, from: frame, to: aux }]\n  runs:')
    )
const oneRun =
  (fuse: string): Change =>
  text =>
    text.replace(/\n {4}- { from: bus[\s\S]*?(?=\n {4}- from: sump-)/, ONE_RUN(fuse))

function judged(...changes: readonly Change[]) {
  const text = changes.reduce((now, change) => {
    expect(change(now)).not.toBe(now)
    return change(now)
  }, JOB)
  const { errors, findings, inputs } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  const of = (rule: string, thing: string) => findings.find(one => one.rule === rule && one.thing === thing)
  return {
    text,
    inputs,
    burns: of('circuit/burns', 'circuit')!,
    far: of('protect/too-far', 'circuit.F9'),
    endless: of('protect/too-far', 'circuit')
  }
}

describe('a second battery', () => {
  it('on a wire without fuses burns it', () => {
    // Into a short at the bus the other battery drives 27.2/(0.010 + 3·0.0033 + some) A, near 1200.
    const { burns, far, endless } = judged(boat, second(`    - { from: aux, to: bus, wire: { size: 6 mm2, length: 3 m, ${LIES} } }`))
    expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/run aux-bus carries 1[12]\d0 A/) })
    expect(endless?.verdict).toBe('not-judged')
    expect(far?.verdict).toBe('pass')
  })
  it('with a fuse at one end burns the wire from the other', () => {
    const fuse = '{ fuse: F1, rating: 40 A, style: blade, along: 50 mm }'
    const { burns } = judged(second(`    - { from: aux, to: bus, wire: { size: 6 mm2, length: 3 m, ${LIES} }, through: [${fuse}] }`))
    expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringContaining('F1 at its bus side shorted to ground') })
  })
  it('with a fuse at each end does not', () => {
    const at = (name: string, along: string) => `{ fuse: ${name}, rating: 40 A, style: blade, along: ${along} }`
    const fuses = `through: [${at('F1', '50 mm')}, ${at('F2', '2.95 m')}]`
    expect(judged(second(`    - { from: aux, to: bus, wire: { size: 6 mm2, length: 3 m, ${LIES} }, ${fuses} }`)).burns.verdict).toBe('pass')
  })
})

describe('a point that wire leads on from, far from the source, to a fuse a little way along the next run', () => {
  const box = (beside = '') =>
    judged(
      more(`    - { from: bus, to: box, wire: { size: 6 mm2, length: 1.2 m, ${LIES} } }
    - { from: box, to: lamp, wire: { size: 1 mm2, length: 3 m, ${LIES} }, through: [{ fuse: F7, rating: 5 A, style: blade, along: 0.1 m }] }
${beside}`)
    )
  it('is not wire without a protector', () => expect(box().endless).toBeUndefined())
  it('is where a second wire of it has none', () =>
    expect(box(`    - { from: box, to: spare, wire: { size: 1 mm2, length: 0.5 m, ${LIES} } }`).endless?.verdict).toBe('not-judged'))
})

describe('a wire that feeds nothing now', () => {
  it('burns where it is long: 27.2 V over 0.032 and 6 · 0.039 ohm are 102 A, warm some less', () => {
    const { burns, endless } = judged(more(`    - { from: panel, to: spare, wire: { size: 0.5 mm2, length: 6 m, ${LIES} } }`))
    expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/^spare shorted .* carries 9\d\.\d A/) })
    expect(endless?.verdict).toBe('not-judged')
  })
  it('and behind an open switch no less', () => {
    const { burns } = judged(
      more(`    - { from: bus, to: x, through: [{ switch: S9, rating: 16 A, state: open }] }
    - { from: x, to: spare, wire: { size: 0.5 mm2, length: 6 m, ${LIES} } }`),
      text => text.replace('labels: {', 'labels: { S9: SPARE,'),
      text => text.replace(/( +- { heater: sump.*)/, '$1\n    - { load: lamp, power: 5 W, voltage: 24 V, from: spare, to: frame }')
    )
    expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringContaining('spare shorted to ground, with switch S9 on') })
  })
})

it('a fuse behind 20 m of feed saves none of it: 27.2 V over 0.032 and 20 · 0.00495 ohm are 207 A, warm some less', () => {
  const { burns, far } = judged(text => text.replace('length: 0.15 m', 'length: 20 m'))
  expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringContaining('panel shorted to ground: run bus-panel carries 19') })
  expect(far?.verdict).toBe('caution')
})

describe('a fuse in the run of its wire', () => {
  it('of which nobody said where it sits is no pass, and the place is asked for', () => {
    const { burns, far, inputs, text } = judged(oneRun(''), boat)
    expect(burns.verdict).toBe('caution')
    expect(far).toMatchObject({ verdict: 'caution', says: expect.stringContaining('up to 4400.00 mm of wire before it') })
    expect(inputs['circuit.runs.0.through.0.along']).toMatchObject({ low: 0, high: 4.4, assumed: expect.stringContaining('not said') })
    const asked = measureJob('job.yaml', text).fields.filter(({ path }) => path.at(-1) === 'along')
    expect(asked).toEqual([expect.objectContaining({ settles: expect.arrayContaining(['circuit.F9 protect/too-far']) })])
  })
  it('at the source passes', () => {
    const { burns, far, inputs } = judged(oneRun(', along: 0 m'), boat)
    expect([burns.verdict, far?.verdict]).toEqual(['pass', 'pass'])
    expect(inputs['circuit.runs.0.through.0.along']).toMatchObject({ assumed: null })
  })
  it('at the heater fails: 27.2 V over 0.032 and 4.4 · 0.008 ohm are 405 A, warm some less', () => {
    const { burns, far } = judged(oneRun(', along: 4.4 m'), boat)
    expect(burns).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/^F9 at its bus side shorted .* carries 3[789]\d A/) })
    expect(far).toMatchObject({ verdict: 'fail', value: expect.closeTo(4400, 6) })
  })
  it('counts from the point the run starts at, whichever way it was drawn', () => {
    const turned = (text: string) => text.replace(/from: bus\n {6}to: sump\+/, 'from: sump+\n      to: bus')
    expect(judged(oneRun(', along: 4.4 m'), turned, boat).far?.verdict).toBe('pass')
    expect(judged(oneRun(', along: 0 m'), turned, boat).far?.verdict).toBe('fail')
  })
})
