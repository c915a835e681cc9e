// property: what a ranked field is said to do, it does when it is given
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { saidIn, saidWith, textOf } from '../../../src/job/rewritten.ts'
import { measuringSheet } from '../../../src/report/measuring-sheet.ts'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { blankSheet } from '../../../src/work/measure/blank-sheet.ts'
import { measureJob } from '../../../src/work/measure/measure-job.ts'
import type { Ranked } from '../../../src/work/measure/ranked.ts'

const FILE = 'examples/unmeasured/drain-plug.yaml'
const text = readFileSync(FILE, 'utf8')
const measured = measureJob(FILE, text)
const field = (name: string): Ranked => measured.fields.find(({ path }) => path.join('.') === name)!
const verdictsOf = (job: string) => new Map(judgeJob(FILE, job).findings.map(({ thing, rule, verdict }) => [`${thing} ${rule}`, verdict]))
const given = (path: Ranked['path'], as: string, job = text) => textOf(saidWith(saidIn(job), path, as))

describe('what waits for no figure', () => {
  it('is named: a feed without a fuse', () => {
    const bare = `fettle: 1
job: { title: no fuse, practice: road }
circuit:
  source: { bus: 24 V, resistance: 10 mohm, ground: frame }
  runs:
    - { from: bus, to: a, wire: { size: 2.5 mm2, length: 2 m, ambient: 40 °C, insulation: 105 °C, bundle: 1 } }
    - { from: b, to: frame, wire: { size: 2.5 mm2, length: 2 m, ambient: 40 °C, insulation: 105 °C, bundle: 1 } }
  loads: [{ load: lamp, kind: lamp, power: 24 W, voltage: 24 V, from: a, to: b }]
`
    const { answer } = measureJob('bare.yaml', bare)
    const note = answer.cautions.find(text => text.startsWith('not judged, and no figure alone settles it'))
    expect(note).toContain('protect/too-far of circuit')
  })

  it('is nothing where figures settle all', () => {
    expect(measured.answer.cautions.join()).not.toContain('no figure alone')
  })
})

describe('a job that is half measured', () => {
  it('every rule that is not judged is opened by some field, or by several together', () => {
    const open = [...verdictsOf(text)].flatMap(([key, verdict]) => (verdict === 'not-judged' ? [key] : []))
    const opened = new Set(measured.fields.flatMap(({ opens }) => opens))
    expect(open.length).toBeGreaterThan(5)
    expect(open.filter(key => !opened.has(key))).toEqual([])
  })

  it('a field that opens rules alone opens them', () => {
    const job = given(['parts', 'plug', 'overall'], '13 mm')
    expect(field('parts.plug.overall').opens.toSorted()).toEqual([
      'holes.sump seat/bottoms-on-floor',
      'holes.sump seat/jams-without-terminal'
    ])
    expect(verdictsOf(text).get('holes.sump seat/bottoms-on-floor')).toBe('not-judged')
    expect(verdictsOf(job).get('holes.sump seat/bottoms-on-floor')).not.toBe('not-judged')
  })

  it('a verdict that is said to fail at an end fails there', () => {
    const [turn] = field('holes.sump.need').turns
    expect(turn).toEqual({ rule: 'holes.sump hole/thread-too-short', failsAt: '14 mm' })
    expect(verdictsOf(given(['holes', 'sump', 'need'], '14 mm')).get(turn!.rule)).toBe('fail')
    expect(verdictsOf(given(['holes', 'sump', 'need'], '8 mm')).get(turn!.rule)).not.toBe('fail')
  })

  it('what was assumed is no longer named once it is given', () => {
    const assumed = measured.fields.filter(({ taken, settles }) => taken !== null && settles.length > 0)
    expect(assumed.length).toBeGreaterThan(2)
    for (const { path, taken } of assumed) {
      const after = judgeJob(FILE, given(path, taken!)).findings
      expect(after.filter(({ assumes = [] }) => assumes.some(at => at.join('.') === path.join('.')))).toEqual([])
    }
  })

  it('a default gives at best a caution', () => {
    const { findings } = judgeJob(FILE, text)
    expect(findings.filter(({ verdict, assumes = [] }) => verdict === 'pass' && assumes.length > 0)).toEqual([])
  })

  it('what may fail stands before what only moves a margin', () => {
    const names = measured.fields.map(({ path }) => path.join('.'))
    expect(names.indexOf('holes.sump.need')).toBeLessThan(names.indexOf('holes.sump.mouth'))
    expect(names.indexOf('parts.plug.body.tensile')).toBeLessThan(names.indexOf('holes.sump.casting.wall'))
  })
})

// Invented. 18.72 N·m at a nut factor of 0.16 pull 18.72/(0.16 · 0.012) = 9750 N: neck 8.4 less bore 7.2 leaves π/4 · (8.4² − 7.2²) = 14.7 mm², 663 MPa against a proof of 260.
describe('neck and bore that nobody told', () => {
  const job = `fettle: 1
job: { title: invented }
parts:
  p: { kind: plug, thread: M12x1.5, thread-length: 12.6 mm, shoulder: 17 mm, body: { tensile: 380 MPa, proof: 260 MPa }, torque: { card: 18 N·m } }
tools: { wrench: { range: 4..20 N·m, accuracy: 4 % } }
holes:
  h:
    takes: p
    casting: { alloy: A380, metal-below: 8 mm, wall: 6 mm }
    found: { diameter: 9.5 mm, depth: 24 mm }
    friction: { nut-factor: 0.16..0.24 }
`
  const { fields, answer } = measureJob('x.yaml', job)
  const body = (name: string) => fields.find(({ path }) => path.join('.') === `parts.p.body.${name}`)!

  it.each(['neck', 'bore'])('%s may turn a verdict, and leaves a caution', name => {
    expect(body(name).turns.map(({ rule }) => rule)).toContain('holes.h joint/body-yields')
    expect(body(name).settles).toEqual(['holes.h joint/body-yields', 'holes.h joint/outside-band'])
    expect(answer.cautions.join()).not.toContain(`parts.p.body.${name}`)
  })

  it('a turn that needs both says which other end it stands beside, and fails there', () => {
    const [turn] = body('neck').turns
    const [, neck, , bore] = /^(.*) mm beside (bore) (.*) mm$/.exec(turn!.failsAt) ?? []
    const told = job.replace('proof: 260 MPa', `proof: 260 MPa, neck: ${neck} mm, bore: ${bore} mm`)
    const found = judgeJob('x.yaml', told).findings.find(({ rule }) => rule === 'joint/body-yields')
    expect(found?.verdict).toBe('fail')
  })
})

it('aliases and merge keys are opened out: each hole has its own blanks', () => {
  const twin = `${text.replace('  sump:', '  sump: &sump')}  spare:\n    <<: *sump\n    mouth: 0.5 mm\n`
  expect(judgeJob(FILE, twin).errors).toEqual([])
  const names = measureJob(FILE, twin).fields.map(({ path }) => path.join('.'))
  expect(names).toContain('holes.spare.casting.wall')
  expect(names).toContain('holes.sump.mouth')
  expect(names).not.toContain('holes.spare.mouth')
})

it('a job with faults is told its faults and measured no further', () => {
  const { answer, fields } = measureJob(FILE, text.replace('takes: plug', 'takes: plag'))
  expect(answer.errors?.[0]?.near).toBe('plug')
  expect(fields).toEqual([])
})

describe('the sheet', () => {
  it('has a blank for what is open, and what was given to be looked at once more', () => {
    const sheet = measuringSheet(blankSheet(measured, text))
    expect(sheet).toMatch(/^\| holes\.sump\.casting\.wall \|.*\| ________ \|$/m)
    expect(sheet).toMatch(/^\| holes\.sump\.found\.diameter \|.*\| 9\.6 mm \|/m)
  })

  it('hostile words of a job stay words', () => {
    const sheet = measuringSheet({ title: '<script>|`*', open: [{ field: 'a|b', says: '![x](y)', measure: '', now: '' }], given: [] })
    expect(sheet).not.toContain('<script>')
    expect(sheet).toContain('a\\|b')
    expect(sheet).toContain('!\\[x\\](y)')
  })
})

describe('a heater with a circuit that is begun', () => {
  const job = `fettle: 1
job: { title: invented }
parts: { part: { kind: heater, rated: { power: 60 W, voltage: 24 V }, thread: M12x1.5, thread-length: 12 mm, body: { tensile: 380 MPa } } }
holes: { left: { takes: part, casting: { alloy: monkey metal }, found: { diameter: 9.5 mm, depth: 24 mm }, friction: { nut-factor: 0.16 } } }
`
  const circuit = `circuit:
  source: { bus: 27 V, ground: frame }
  runs: [{ from: bus, to: left+, wire: { size: 1 mm2, length: 4 m } }, { from: left-, to: frame, bond: 3 mohm }]
  loads: [{ heater: left, from: left+, to: left- }]
`
  const namesOf = (whole: string) => measureJob('x.yaml', whole).fields.map(({ path }) => path.join('.'))
  const notesOf = (whole: string) => measureJob('x.yaml', whole).answer.cautions.join('\n')

  it('is asked for no wire where a run has none', () => {
    const names = namesOf(job + circuit)
    expect(names).toContain('circuit.runs.0.wire.insulation')
    expect(names.filter(name => name.startsWith('circuit.runs.1.wire'))).toEqual([])
  })

  it('is asked for the strength of an alloy that no table knows, and of that alone', () => {
    expect(namesOf(job)).toContain('holes.left.casting.shear')
    expect(namesOf(job.replace('alloy: monkey metal', ''))).not.toContain('holes.left.casting.shear')
  })

  it('is told which blocks are left out', () => {
    expect(notesOf(job)).toContain('leaves out: circuit, supply, warm;')
    expect(notesOf(job + circuit)).toContain('leaves out: supply, warm;')
    expect(notesOf(job.replace('kind: heater, rated: { power: 60 W, voltage: 24 V }', 'kind: plug'))).not.toContain('leaves out')
  })
})

describe('a bus of which nobody told how low and how high it gets', () => {
  const job = (bus: string) => `fettle: 1
job: { title: invented }
parts: { part: { kind: heater, rated: { power: 60 W, voltage: 12 V }, thread: M12x1.5, least-power: 40 W } }
holes: { left: { takes: part, found: { diameter: 9.5 mm, depth: 24 mm } } }
circuit:
  source: { ${bus}, resistance: 10 mohm, ground: frame }
  runs: [{ from: bus, to: left+, bond: 3 mohm }, { from: left-, to: frame, bond: 3 mohm }]
  loads: [{ heater: left, from: left+, to: left- }]
`
  const settled = (bus: string, end: string) => {
    const { answer, fields } = measureJob('x.yaml', job(bus))
    expect(answer.errors ?? []).toEqual([])
    return fields.find(({ path }) => path.join('.') === `circuit.source.${end}`)?.settles
  }
  it('is worth measuring at both ends', () => {
    expect(settled('bus: 11.5 V', 'low')).toEqual(['circuit.left heater/weak'])
    expect(settled('bus: 11.5 V', 'high')).toEqual(['circuit.left heater/above-rating'])
  })
  it('is not where its own bounds tell it', () => {
    expect(settled('bus: 11.5 V ± 0.2 V', 'low')).toEqual([])
    expect(settled('bus: 11.5 V ± 0.2 V', 'high')).toEqual([])
  })
  it('asks for no end that is given', () => {
    expect(settled('bus: 11.5 V, low: 11 V', 'low')).toBeUndefined()
    expect(settled('bus: 11.5 V, low: 11 V', 'high')).toHaveLength(1)
  })
})
