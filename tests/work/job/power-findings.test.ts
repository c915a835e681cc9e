// example: loads above and below their rating, with others off, and what nothing switches off; invented jobs, figures by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

interface Drawn {
  readonly loads: string
  readonly feed?: string
  readonly more?: string
  readonly source?: string
}

const HEATER = 'rated: { power: 57.6 W, voltage: 24 V }'

/** 24 V with a tenth of an ohm on the way from the source to the bus bar that all loads hang on. */
function judged({
  loads,
  feed = '{ switch: S1, rating: 40 A, resistance: 0 ohm }',
  more = '',
  source = 'bus: 24 V, low: 24 V, high: 24 V'
}: Drawn) {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: loads }
parts: { cartridge: { kind: heater, ${HEATER}, thread: M12x1.5 } }
holes:
  left: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
  right: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
circuit:
  source: { ${source}, resistance: 0 ohm, ground: frame }
  runs:
    - { from: bus, to: bar, bond: 100 mohm${feed === '' ? '' : `, through: [${feed}]`} }
${more}  loads:
${loads}`
  )
  expect(job.errors).toEqual([])
  const found = (rule: string) => job.findings.filter(one => one.rule === rule)
  return { found, value: (rule: string, load: string) => found(rule).find(({ thing }) => thing === `circuit.${load}`)?.value ?? Number.NaN }
}

const share = (volts: number) => (100 * volts ** 2) / (10 * 57.6)

describe('a load that is no heater', () => {
  const on = (load: string, source?: string) =>
    judged({ loads: `    - { ${load}, from: bar, to: frame }\n`, ...(source === undefined ? {} : { source }) })
  it('rated for half of the voltage fails', () => {
    // 40 W at 12 V are 3.6 ohm; 24 V over 3.7 ohm leave 23.35 V, that is 379 % of 40 W.
    const { found, value } = on('load: seat, power: 40 W, voltage: 12 V')
    expect(found('heater/above-rating')).toEqual([expect.objectContaining({ verdict: 'fail' })])
    expect(value('heater/above-rating', 'seat')).toBeCloseTo((100 * ((24 * 3.6) / 3.7) ** 2) / 3.6 / 40, 6)
  })
  it('somewhat above its rating is told', () => {
    expect(on('load: lamp, kind: lamp, power: 55 W, voltage: 22 V').found('heater/above-rating')[0]?.verdict).toBe('caution')
  })
  it('below its rating passes', () => {
    expect(on('load: seat, power: 40 W, voltage: 28 V').found('heater/above-rating')[0]?.verdict).toBe('pass')
  })
  it('of constant power or current, or known by its resistance, has no rating', () => {
    for (const takes of ['power: 40 W', 'current: 2 A', 'resistance: 9 ohm'])
      expect(on(`load: box, ${takes}`).found('heater/above-rating')).toEqual([])
  })
  it('is asked for its least power where one is told', () => {
    // 24 V over 10 ohm and the tenth: 56.47 W.
    const box = 'load: box, resistance: 10 ohm'
    expect(on(box).found('heater/weak')).toEqual([])
    expect(on(`${box}, least-power: 56 W`).found('heater/weak')[0]?.verdict).toBe('pass')
    const [weak] = on(`${box}, least-power: 57 W`).found('heater/weak')
    expect(weak?.verdict).toBe('fail')
    expect(weak?.value).toBeCloseTo((24 / 10.1) ** 2 * 10, 6)
  })
})

it('of two in series the weaker one gets too much', () => {
  // 60 W and 40 W at 12 V are 2.4 and 3.6 ohm: 24 V over 6.1 ohm, 14.2 V of it across the second.
  const { found, value } = judged({
    loads: `    - { load: one, power: 60 W, voltage: 12 V, from: bar, to: mid }
    - { load: two, power: 40 W, voltage: 12 V, from: mid, to: frame }\n`
  })
  const amps = 24 / 6.1
  expect(value('heater/above-rating', 'one')).toBeCloseTo((100 * amps ** 2 * 2.4) / 60, 6)
  expect(value('heater/above-rating', 'two')).toBeCloseTo((100 * amps ** 2 * 3.6) / 40, 6)
  expect(found('heater/above-rating').map(({ verdict }) => verdict)).toEqual(['pass', 'caution'])
})

describe('the highest power of a heater', () => {
  const left = '    - { heater: left, from: bar, to: frame }\n'
  const winch = '    - { load: winch, current: 20 A, kind: motor, from: bar, to: frame }\n'
  it('is that with every other load off', () => {
    // With the winch the bar has 2 V less, by hand (24 - 2)/10.1 A; without it 24/10.1 A, through 10 ohm.
    const source = 'bus: 25 V, low: 24 V, high: 25 V'
    const { found, value } = judged({ loads: left + winch, source })
    expect(value('heater/above-rating', 'left')).toBeCloseTo(share((25 * 10) / 10.1), 4)
    expect(found('heater/above-rating')[0]).toMatchObject({ verdict: 'caution', says: expect.stringContaining('every other load off') })
    expect(judged({ loads: left, source }).value('heater/above-rating', 'left')).toBeCloseTo(share((25 * 10) / 10.1), 9)
  })
  it('counts in what stands in series with it', () => {
    const loads = `    - { heater: left, from: bar, to: mid }
    - { load: resistor, resistance: 5 ohm, from: mid, to: frame }\n`
    expect(judged({ loads }).value('heater/above-rating', 'left')).toBeCloseTo(share((24 * 10) / 15.1), 9)
  })

  const two = `    - { heater: left, from: left+, to: frame }
    - { heater: right, from: right+, to: frame }\n`
  const ways = (left: string, right: string) =>
    `    - { from: bar, to: left+, bond: 0 ohm${left} }\n    - { from: bar, to: right+, bond: 0 ohm${right} }\n`
  it('behind one switch is that of both together', () => {
    // Two of 10 ohm are 5: 24 V over 5.1 ohm.
    const { found, value } = judged({ loads: two, more: ways('', '') })
    expect(value('heater/above-rating', 'left')).toBeCloseTo(share((24 * 5) / 5.1), 6)
    expect(found('heater/above-rating')[0]?.says).not.toContain('off')
  })
  it('behind switches of their own is that of one alone', () => {
    const more = ways(', through: [{ switch: S2, rating: 10 A }]', ', through: [{ switch: S3, rating: 10 A }]')
    for (const name of ['left', 'right'])
      expect(judged({ loads: two, more }).value('heater/above-rating', name)).toBeCloseTo(share((24 * 10) / 10.1), 4)
  })
  it('behind two switches beside each other is that of one alone', () => {
    const beside = '    - { from: bar, to: left+, bond: 10 mohm, through: [{ switch: S4, rating: 10 A }] }\n'
    const more = ways(', through: [{ switch: S2, rating: 10 A }]', '') + beside
    expect(judged({ loads: two, more }).value('heater/above-rating', 'right')).toBeCloseTo(share((24 * 10) / 10.1), 4)
  })
  it('of one that is off at times is that without it', () => {
    const loads = two.replace('right,', 'right, on: 40 %,')
    expect(judged({ loads, more: ways('', '') }).value('heater/above-rating', 'left')).toBeCloseTo(share((24 * 10) / 10.1), 4)
  })
})

describe('what can be switched off', () => {
  const heater = '    - { heater: left, from: bar, to: back }\n'
  const back = (through = '') => `    - { from: back, to: frame, bond: 1 mohm${through === '' ? '' : `, through: [${through}]`} }\n`
  it.each([
    ['nothing', '', ''],
    ['a fuse', '{ fuse: F1, rating: 10 A, style: blade }', ''],
    ['a plug', '{ what: plug P3 }', ''],
    ['a crimp on a relay', '{ what: crimp on relay K1 }', ''],
    ['a bridged switch', '{ what: "old switch, bridged" }', ''],
    ['a lead to an isolator', '{ what: lead to isolator Q1 }', '']
  ])('%s does not', (_, feed, through) => {
    expect(judged({ loads: heater, feed, more: back(through) }).found('switch/none')[0]?.verdict).toBe('caution')
  })
  it.each([
    ['a switch', '{ switch: S1, rating: 10 A }', '', 'switch S1'],
    ['a breaker', '{ breaker: CB1, rating: 10 A, style: thermal }', '', 'breaker CB1'],
    ['a thermostat', '{ thermostat: T1, rating: 10 A }', '', 'thermostat T1'],
    ['a relay', '{ what: relay K1, rating: 10 A }', '', 'relay K1'],
    ['an isolator', '{ what: isolator Q1 }', '', 'isolator Q1'],
    ['a switch in the return', '', '{ switch: S9, rating: 10 A }', 'switch S9']
  ])('%s does', (_, feed, through, what) => {
    expect(judged({ loads: heater, feed, more: back(through) }).found('switch/none')).toEqual([
      expect.objectContaining({ verdict: 'pass', says: expect.stringContaining(what) })
    ])
  })
  it('two switches beside each other do, both open', () => {
    const more = `${back()}    - { from: bus, to: bar, bond: 100 mohm, through: [{ switch: S2, rating: 10 A }] }\n`
    const [found] = judged({ loads: heater, more }).found('switch/none')
    expect(found).toMatchObject({ verdict: 'pass', says: expect.stringContaining('switch S1, switch S2') })
  })
  it('a way round the switch does not', () => {
    const more = `${back()}    - { from: bus, to: bar, bond: 100 mohm }\n`
    expect(judged({ loads: heater, more }).found('switch/none')[0]?.verdict).toBe('caution')
  })
  // By hand: with S1 off 24 V over the dropper, 1 mohm and 10 ohm; 2 ohm leave the heater (24/12.001)² · 10 = 40.0 W, 200 ohm 0.131 W of its 56.5 W.
  it('a switch with another load across it does not where that leaves it power', () => {
    const across = (ohms: string, more = back()) =>
      judged({ loads: `${heater}    - { load: dropper, resistance: ${ohms}, from: bus, to: bar, kind: motor }\n`, more }).found(
        'switch/none'
      )[0]
    expect(across('2 ohm')).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('with switch S1 off it still takes 40 W through dropper')
    })
    expect(across('200 ohm')).toMatchObject({ verdict: 'pass', says: 'switch S1: the power of left can be taken off' })
    const main = back('{ switch: S9, rating: 10 A }')
    expect(across('2 ohm', main)).toMatchObject({ verdict: 'pass', says: 'switch S9: the power of left can be taken off' })
  })
  // S2 bridges the booster for full heat and leaves both some without it: S1 alone takes all off, whatever S2 does; of two mains beside each other both must be off.
  it('a main switch takes the power off what a closed switch bridges', () => {
    const hiLo = (state: string, more = '') => {
      const loads =
        '    - { load: booster, power: 40 W, voltage: 12 V, from: bar, to: mid }\n    - { heater: left, from: mid, to: frame }\n'
      const bridge = `    - { from: bar, to: mid, through: [{ switch: S2, rating: 10 A, resistance: 5 mohm${state} }] }\n`
      return judged({ loads, more: bridge + more }).found('switch/none')
    }
    for (const state of ['', ', state: open'])
      expect(hiLo(state).map(({ verdict, says }) => `${verdict} ${says}`)).toEqual([
        'pass switch S1: the power of booster can be taken off',
        'pass switch S1: the power of left can be taken off'
      ])
    const second = '    - { from: bus, to: bar, bond: 100 mohm, through: [{ switch: S3, rating: 10 A }] }\n'
    for (const { says } of hiLo('', second)) expect(says).toMatch(/^switch S1, switch S3: the power/)
  })
  // In series S4 links them, in parallel S2 feeds right and S3 takes left home: S1 alone takes the power off in both.
  it('what does so in one position alone is not named', () => {
    const run = (name: string, from: string, to: string, state = '') =>
      `    - { from: ${from}, to: ${to}, through: [{ switch: ${name}, rating: 10 A${state} }] }\n`
    const more = run('S4', 'm', 'n') + run('S2', 'bar', 'n', ', state: open') + run('S3', 'm', 'frame', ', state: open')
    const loads = '    - { heater: left, from: bar, to: m }\n    - { heater: right, from: n, to: frame }\n'
    for (const { verdict, says } of judged({ loads, more }).found('switch/none'))
      expect(`${verdict} ${says}`).toMatch(/^pass switch S1: the power/)
  })
  it('another load is asked where it is drawn like a heater', () => {
    const asked = (load: string) =>
      judged({ loads: `    - { load: other, ${load}, from: bar, to: frame }\n`, feed: '' }).found('switch/none').length
    expect(asked('power: 40 W, voltage: 24 V')).toBe(1)
    expect(asked('resistance: 9 ohm')).toBe(1)
    expect(asked('power: 40 W, voltage: 24 V, kind: lamp')).toBe(0)
    expect(asked('power: 40 W')).toBe(0)
    expect(asked('current: 3 A')).toBe(0)
  })
})
