// example: 48 W at 24 V are 12 ohm, hot at 300 °C; by 0.4 %/K that is 2.12 times its resistance at 20 °C, 5.660 ohm, and 4.755 ohm at -20 °C
import { describe, expect, it } from 'vitest'
import { coldStart, switchedOn } from '../../src/fitting/switched-on.ts'
import { switchNeeds } from '../../src/trade/circuit/switch.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const heater = (startC: number, times: number | null) => ({
  name: 'rod',
  from: 'a',
  to: 'b',
  takes: { by: 'rated' as const, powerW: 48, ratedV: 24, follows: { resistanceChangePerK: 0.4, hotC: 300 } },
  startC,
  kind: 'resistive' as const,
  inrush: times === null ? null : { times, lastsS: 3, basis: 'given' as const },
  way: null
})
const fed = new Map([['rod', { currentA: 2, resistanceOhm: 12 }]])

describe('a heater whose resistance follows its temperature', () => {
  it.each([
    ['told too little', 20, 1.05, 4.24],
    ['and from colder air', -20, 1.05, (2 * 2.12) / 0.84],
    ['told more', 20, 3, 6]
  ])('takes no less at switch-on than its resistance tells: %s', (_, startC, times, amps) => {
    expect(coldStart(switchedOn([heater(startC, times)], ['rod'], fed))!.currentA).toBeCloseTo(amps, 9)
  })
  it('that has not warmed in its place takes no more than steadily', () => {
    const settled = new Map([['rod', { currentA: 2, resistanceOhm: 12 / 2.12 }]])
    expect(coldStart(switchedOn([heater(20, 1)], ['rod'], settled))!.currentA).toBeCloseTo(2, 9)
  })
  it('of which nobody told what it takes cold is counted by that where it is more than the factor of its kind', () => {
    const ownRatio = switchedOn([heater(-20, null)], ['rod'], fed)[0]!.ownRatio!
    const cold = { by: 'not known' as const, leastRatio: ownRatio }
    const { neededA } = switchNeeds({ busV: 27, loads: [{ name: 'rod', currentA: 2, load: 'resistive', cold }], rating: null })
    expect(neededA).toBeCloseTo((2 * 2.12) / 0.84, 9)
  })
})

// Two of 48 W ± 5 % at 28.6 V take less than 2 · 28.6/(24²/50.4) = 5.01 A, and cold 2.12 times that, 10.6 A; the wire takes some of it.
it('in a job closes the switch on more than it is rated for', () => {
  const job = (air = '') => `fettle: 1
job: { title: two heaters }
parts: { rod: { kind: heater, thread: M12x1.5, rated: { power: 48 W ± 5 %, voltage: 24 V, resistance-change: { per-kelvin: 0.4 %/K, hot: 300 °C } } } }
holes: { left: &hole { takes: rod, found: { diameter: 9.6 mm, depth: 22 mm } }, right: *hole }
circuit:
  source: { bus: 27.4 V, high: 28.6 V, ground: frame }
  runs: [{ from: bus, to: heaters, wire: { size: 4 mm2, length: 1 m, temperature: 20 °C }, through: [{ switch: S1, rating: 10 A, resistance: 0 ohm }] }]
  loads:
    - { heater: left, inrush: { times: 1.05, lasts: 3 s }, from: heaters, to: frame }
    - { heater: right, inrush: { times: 1.05, lasts: 3 s }, from: heaters, to: frame }
${air}`
  const switchIn = (text: string) => judgeJob('x.yaml', text).findings.find(({ rule }) => rule === 'switch/under-rated')!
  const found = switchIn(job())
  expect(found.verdict).toBe('fail')
  expect(found.value).toBeGreaterThan(10)
  expect(found.value).toBeLessThan(10.63)
  // From -20 °C it is 1/0.84 of that.
  const colder = switchIn(job('surroundings: { air: -20 °C }\n'))
  expect(colder.value! / found.value!).toBeCloseTo(1 / 0.84, 6)
  expect(switchIn(job().replace('rating: 10 A', 'rating: 20 A'))).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('switched on at 20 °C')
  })
  expect(switchIn(job('surroundings: { air: 20 °C, metal: -20 °C }\n')).value).toBeCloseTo(colder.value!, 9)
})
