// example: the jobs in examples/ are judged as their names say
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const namesIn = (folder: string) =>
  readdirSync(folder)
    .filter(name => name.endsWith('.yaml'))
    .map(name => name.replace('.yaml', ''))
const judged = (folder: string, name: string) => judgeJob(`${folder}/${name}.yaml`, readFileSync(`${folder}/${name}.yaml`, 'utf8'))

/** What each bad job is there to fail: one rule, or a rule with the one that follows from it. */
const REASON: { readonly [name: string]: readonly string[] } = {
  'centre-too-far-forward': ['mass/outside-limits'],
  'feeds-backwards': ['circuit/feeds-backwards'],
  'floor-too-thin': ['hole/metal-below-thin'],
  'fuse-above-its-wire': ['protect/over-wire'],
  'fuse-opens-at-switch-on': ['protect/inrush'],
  'ground-on-magnesium': ['ground/magnesium'],
  'jams-in-run-out': ['seat/jams-in-run-out'],
  'no-label': ['label/missing'],
  'no-power-meets-both': ['warm/too-hot', 'warm/needs-thermostat'],
  'shared-return-lifts-ground': ['ground/shift'],
  'strips-the-casting': ['joint/casting-strips', 'joint/outside-band'],
  'supply-short': ['supply/short'],
  'switch-too-small': ['switch/under-rated'],
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

it('there are good and bad ones', () => {
  expect(namesIn('examples').length).toBeGreaterThanOrEqual(2)
  expect(namesIn('examples/bad')).toEqual(Object.keys(REASON).sort())
})
