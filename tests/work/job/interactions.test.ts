// property: what one thing of a job does to the next: terminal and seat, compound and preload, compound and heat
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

interface Told {
  readonly thicknessMm?: number
  readonly friction?: string
  readonly threads?: string
}

/** Invented. */
const job = ({ thicknessMm = 1, friction = '', threads = 'nothing' }: Told) => `
fettle: 1
job: { title: invented }
parts:
  cartridge:
    kind: heater
    thread: M12x1.5
    thread-length: 12.6 mm
    overall: 14.2 mm
    shoulder: 17 mm
    body: { tensile: 380 MPa, proof: 260 MPa, neck: 10 mm, bore: 6 mm }
    torque: { card: 9 N·m, threads: dry }
tools: { wrench: { range: 4..20 N·m, accuracy: 4 % }, taps: [{ name: bottoming, chamfer: 1.5 }] }
holes:
  left:
    takes: cartridge
    casting: { alloy: A380, metal-below: 7.8 mm, wall: 6.0 mm }
    found: { diameter: 10.1 mm, depth: 22.5 mm, bottom: cone, bottom-angle: 118° }
    under-shoulder: [{ what: ring terminal, thickness: ${thicknessMm} mm, hole: 12.5 mm }]
    threads-with: ${threads}
${friction}`

function judged(told: Told) {
  const { results, errors, findings } = judgeJob('x.yaml', job(told))
  expect(errors).toEqual([])
  return {
    value: (id: string) => Number(results.find(one => one.id === `holes.left:${id}`)?.value),
    result: (id: string) => results.find(one => one.id === `holes.left:${id}`),
    finding: (rule: string) => findings.find(one => one.rule === rule)
  }
}
const factor = (text: string) => `    friction: { nut-factor: ${text} }\n`

describe('a thicker terminal', () => {
  const [thin, thick] = [judged({ thicknessMm: 1 }), judged({ thicknessMm: 1.6 })]
  it('lifts the part out of the hole by as much', () => {
    for (const id of ['seat.run-out.with-stack', 'seat.floor.with-stack']) expect(thick.value(id) - thin.value(id)).toBeCloseTo(0.6, 9)
    expect(thick.value('seat.run-out.without-stack')).toBeCloseTo(thin.value('seat.run-out.without-stack'), 9)
  })
  it('takes the turns by hand and the engagement with it: strip load falls in proportion to 0.6 mm', () => {
    expect(thin.value('seat.turns-to-shoulder') - thick.value('seat.turns-to-shoulder')).toBeCloseTo(0.6 / 1.5, 9)
    expect(thick.value('joint.strip-load.internal')).toBeLessThan(thin.value('joint.strip-load.internal'))
  })
})

describe('what is on the threads', () => {
  it('half the nut factor is twice the preload', () => {
    const [dry, wet] = [judged({ friction: factor('0.24') }), judged({ friction: factor('0.12') })]
    expect(wet.value('joint.preload') / dry.value('joint.preload')).toBeCloseTo(2, 9)
  })
  it('sets the friction where no trial does: mid and ends of the published ranges, 0.18..0.27 dry and 0.10..0.26 oiled', () => {
    const byHand = (k: number) => 9000 / (k * 12)
    const [dry, oiled] = [judged({}), judged({ threads: 'oil' })]
    expect(dry.value('joint.preload')).toBeCloseTo(byHand(0.225), 6)
    expect(oiled.value('joint.preload')).toBeCloseTo(byHand(0.18), 6)
    expect(Number(oiled.result('joint.preload')?.high)).toBeGreaterThan(Number(dry.result('joint.preload')?.high))
  })
  it('an assumed friction gives at best a caution', () => {
    expect(judged({}).finding('joint/body-yields')?.verdict).not.toBe('pass')
    expect(judged({ friction: factor('0.20..0.24') }).finding('joint/body-yields')?.verdict).toBe('pass')
  })
  it('a compound that no table knows is not judged', () => {
    expect(judged({ threads: 'thermal-compound' }).finding('joint/body-yields')).toMatchObject({
      verdict: 'not-judged',
      change: 'give holes.left.friction.nut-factor'
    })
  })
})
