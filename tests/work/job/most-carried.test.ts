// table: which figure of a position makes it one to be judged; a source of 1 ohm, a feed of 1 ohm and a load of 3 ohm, by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { readJob } from '../../../src/job/read-job.ts'
import { circuitFitOf } from '../../../src/work/job/circuit-fit-of.ts'
import { MostCarried } from '../../../src/work/job/most-carried.ts'

const { job } = readJob(
  'job.yaml',
  `fettle: 1
job: { title: one load, practice: general }
circuit:
  source: { bus: 12 V, resistance: 1 ohm, ground: frame }
  runs: [{ from: bus, to: h, name: feed, bond: 1 ohm }]
  loads: [{ load: lamp, resistance: 3 ohm, from: h, to: frame }]
`
)
const FIT = circuitFitOf(job!, job!.circuit!)
const LAMP = new Set(['lamp'])
const NONE = new Set<string>()
const DRAWN = { fit: FIT, fed: LAMP, lasting: LAMP }
const bus = (value: number, low = value, high = value) => ({ ...FIT, busV: new Given(value, { low, high }) })

describe('beside 2.4 A from 12 V', () => {
  it.each([
    ['the same', FIT, LAMP, false],
    ['more current', bus(12.1), LAMP, true],
    ['less current', bus(11.9), NONE, false],
    ['less power, where it is fed', bus(11.9), LAMP, true],
    ['less at the nominal, more at the high end', bus(11.9, 11.8, 12.1), NONE, true],
    ['no more even at the high end', bus(11.9, 11.8, 12), NONE, false],
    ['less at the low end alone', bus(12, 11.9, 12), LAMP, true]
  ] as const)('%s', (_, fit, fed, counts) => {
    expect(new MostCarried(DRAWN).isLess({ fit, fed, lasting: fed })).toBe(counts)
  })

  it('another load fed', () => {
    expect(new MostCarried({ ...DRAWN, fed: NONE, lasting: NONE }).isLess(DRAWN)).toBe(true)
  })

  it('more is lost though less flows: 6 ohm of a feed take more of what 3 ohm leave than 1 ohm does', () => {
    const feed = FIT.runs.map(run => ({ ...run, parts: [{ of: 'joint' as const, jointOhm: new Given(6) }] }))
    expect(new MostCarried(DRAWN).isLess({ fit: { ...FIT, runs: feed }, fed: LAMP, lasting: LAMP })).toBe(true)
  })

  it('less power, though a panel alone gave less still', () => {
    const most = new MostCarried(DRAWN)
    expect([most.isLess({ fit: bus(6), fed: LAMP, lasting: NONE }), most.isLess({ ...DRAWN, fit: bus(11.9) })]).toEqual([true, true])
  })

  it('each is counted once, and what was carried is known', () => {
    const most = new MostCarried(DRAWN)
    expect([most.isLess({ ...DRAWN, fit: bus(13) }), most.isLess({ ...DRAWN, fit: bus(13) })]).toEqual([true, false])
    expect(most.carried('feed')).toBe(true)
  })
})
