// example: the quantities of a job by path, with their bounds and what was assumed
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { inputsOf } from '../../src/job/inputs.ts'
import { readJob } from '../../src/job/read-job.ts'

const file = 'examples/gearbox-preheater.yaml'
const inputs = inputsOf(readJob(file, readFileSync(file, 'utf8')).job)

it('holds what was given, with bounds and unit', () => {
  expect(inputs['holes.sump.found.depth']).toEqual({ value: 24, low: 23.7, high: 24.3, unit: 'mm', assumed: null })
  expect(inputs['circuit.runs.0.wire.length']).toEqual({ value: 0.15, low: null, high: null, unit: 'm', assumed: null })
})

it('holds what was assumed, with the reason', () => {
  const { job } = readJob('x.yaml', readFileSync(file, 'utf8').replace('  stop-error: 0.2 mm\n', ''))
  expect(inputsOf(job)['tools.stop-error']).toMatchObject({ value: 0, assumed: 'default: an exact stop' })
})

const part = 'parts: { part: { kind: plug, thread: M12x1.5 } }'
const found = (more: string) => `holes: { left: { takes: part, found: { diameter: 9.8 mm, depth: 19 mm, ${more} } } }`
const wired = (wire: string, more = '') => `circuit:
  source: { bus: 27 V, ground: frame }
  runs:
    - { from: bus, to: lamp, wire: { size: 1 mm2, length: 3 m, ${wire} }, through: [{ fuse: F1, rating: 10 A, style: blade, along: 0 m }, { switch: S1 }] }
  loads: [{ load: lamp, power: 20 W, voltage: 24 V, from: lamp, to: frame }]
${more}`
const of = (...blocks: readonly string[]) => inputsOf(readJob('x.yaml', ['fettle: 1', 'job: { title: t }', part, ...blocks].join('\n')).job)
const LIES = 'insulation: 105 °C, ambient: 60 °C'
const run = 'circuit.runs.0'

describe('what was left out and is not taken as its default', () => {
  it('is the temperature of a wire that is worked out from how it lies', () => {
    expect(of(found(''), wired(LIES))).not.toHaveProperty([`${run}.wire.temperature`])
    expect(of(found(''), wired('ambient: 60 °C'))[`${run}.wire.temperature`]).toMatchObject({ value: 20 })
    expect(of(found(''), wired(`${LIES}, temperature: 70 °C`))[`${run}.wire.temperature`]).toMatchObject({ value: 70, assumed: null })
  })
  it('is the bundle of a wire of which nobody can say what it carries', () => {
    expect(of(found(''), wired(LIES))[`${run}.wire.bundle`]).toMatchObject({ value: 1 })
    expect(of(found(''), wired('ambient: 60 °C'))).not.toHaveProperty([`${run}.wire.bundle`])
  })
  it('is the resistance of a fuse, 96 mV at its rating where it has no sheet of its own', () => {
    const { value, unit, assumed } = of(found(''), wired(LIES))[`${run}.through.0.resistance`]!
    expect(value).toBeGreaterThan(0)
    expect(value).toBeLessThanOrEqual(0.096 / 10)
    expect([unit, assumed]).toEqual([
      'ohm',
      expect.stringMatching(/^default: (the sheet of its rating|estimated from the sheets of others)$/)
    ])
  })
  it('is the warmth around a part that is no protector', () => {
    const inputs = of(found(''), wired(LIES))
    expect(inputs[`${run}.through.0.at`]).toMatchObject({ value: 25 })
    expect(inputs).not.toHaveProperty([`${run}.through.1.at`])
  })
  it('is the height of a circuit whose surroundings have one', () => {
    expect(of(found(''), wired(LIES))['circuit.altitude']).toMatchObject({ value: 0 })
    expect(of(found(''), wired(LIES, 'surroundings: { air: 4 °C, altitude: 900 m }'))).not.toHaveProperty(['circuit.altitude'])
  })
  it('is the angle of a bottom that is flat', () => {
    expect(of(found('bottom: cone'))['holes.left.found.bottom-angle']).toMatchObject({ value: 118 })
    expect(of(found('bottom: flat'))).not.toHaveProperty(['holes.left.found.bottom-angle'])
  })
})
