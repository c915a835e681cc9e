// example: the jobs in examples/ are judged as their names say
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readJob } from '../../src/job/read-job.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { benchBeside } from './bench-beside.ts'

const namesIn = (folder: string) =>
  readdirSync(folder)
    .filter(name => /^[^.]+\.yaml$/.test(name))
    .map(name => name.replace('.yaml', ''))
const textOf = (file: string) => readFileSync(file, 'utf8')
const judged = (folder: string, name: string) => {
  const file = `${folder}/${name}.yaml`
  return judgeJob(file, textOf(file), {}, benchBeside(file, textOf(file)))
}

/** What each bad job is there to fail: one rule, or a rule with the one that follows from it. */
const REASON: { readonly [name: string]: readonly string[] } = {
  'air-where-petrol-was': ['leak/test-gas'],
  'centre-too-far-forward': ['mass/outside-limits'],
  'feeds-backwards': ['circuit/feeds-backwards'],
  'floor-too-thin': ['hole/metal-below-thin'],
  'fuse-above-its-wire': ['protect/over-wire'],
  'fuse-opens-at-switch-on': ['protect/inrush'],
  'ground-on-magnesium': ['ground/magnesium'],
  'jams-in-run-out': ['seat/jams-in-run-out'],
  'load-for-half-the-voltage': ['heater/above-rating'],
  'no-label': ['label/missing'],
  'no-power-meets-both': ['warm/too-hot', 'warm/needs-thermostat'],
  'shared-return-lifts-ground': ['ground/shift'],
  'strips-the-casting': ['joint/casting-strips', 'joint/outside-band'],
  'supply-short': ['supply/short'],
  'switch-too-small': ['switch/under-rated'],
  'tap-meets-the-end': ['hole/tap-meets-end'],
  'tap-meets-the-point': ['hole/tap-centre-meets-point'],
  'too-hot-standing-still': ['warm/too-hot'],
  'too-much-drop': ['drop/too-much'],
  'wall-too-thin': ['hole/wall-thin'],
  'warms-too-slowly': ['warm/too-slow'],
  'weak-at-low-bus': ['heater/weak', 'heater/weak'],
  'wet-metal': ['dew/surface-wet'],
  'wire-overloaded': ['wire/over-ampacity', 'protect/over-wire', 'circuit/burns'],
  'wrench-too-large': ['torque/outside-wrench-range']
}

describe.each(namesIn('examples'))('good: %s', name => {
  it('is read without a fault, and nothing fails or is left unjudged', () => {
    const job = judged('examples', name)
    expect(job.errors).toEqual([])
    expect(['pass', 'caution']).toContain(job.verdict)
  })
})

describe.each(namesIn('examples/bad'))('bad: %s', name => {
  it('fails for the reason in its name, and for no other', () => {
    const job = judged('examples/bad', name)
    expect(job.errors).toEqual([])
    expect(job.findings.filter(({ verdict }) => verdict === 'fail').map(({ rule }) => rule)).toEqual(REASON[name])
  })
})

describe('a bench for two jobs', () => {
  const jobOf = (name: string) => {
    const file = `examples/${name}.yaml`
    return readJob(file, textOf(file), benchBeside(file, textOf(file))).job
  }
  it('both have its tools, and one its own test leads', () => {
    const [boat, engine] = [jobOf('bilge-room-heater'), jobOf('coolant-elbows')]
    expect(engine.tools).toEqual(boat.tools)
    expect(boat.tools['stop-error'].assumed).toBeUndefined()
    expect(engine.proof.meter).toEqual(boat.proof.meter)
    expect([boat.proof.leads?.value, engine.proof.leads?.value]).toEqual([0.2, 0.15])
  })
})

it('there are good and bad ones', () => {
  expect(namesIn('examples').length).toBeGreaterThanOrEqual(2)
  expect(namesIn('examples/bad')).toEqual(Object.keys(REASON).sort())
})
