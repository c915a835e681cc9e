// independent algorithm: every position of the switches of generated circuits, each by Kirchhoff's laws and elimination, against what is
// judged: the most that each switch carries, the least that each heater gets, the least short that the fuse has to clear
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { type Drawing, type DrawnRun, everyPosition } from './brute-force.ts'

/** Mulberry32: the same circuits everywhere. */
function randomOf(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const FUSE_OHM = 0.004
const SWITCH_OHM = 0.001
/** What all loads share is next to nothing, so that none of them has less for another. */
const SHARED_OHM = 0.001

/** One or two heaters, each behind one to three ways side by side, its return through one or two; a second battery beside the first. */
function generated(seed: number, batteries: 1 | 2): Drawing {
  const random = randomOf(seed)
  const runs: DrawnRun[] = []
  const add = (from: string, to: string, switched: boolean, ohm = Math.round(10 + 400 * random()) / 1000) =>
    runs.push({ id: `r${runs.length}`, from, to, ohm: ohm + (switched ? SWITCH_OHM : 0), switched, open: switched && random() < 0.4 })
  add('bus', 'panel', false, SHARED_OHM + FUSE_OHM)
  const loads = Array.from({ length: random() < 0.5 ? 1 : 2 }, (_, i) => {
    const [feeds, returns] = [1 + Math.floor(2.5 * random()), random() < 0.3 ? 2 : 1]
    for (let k = 0; k < feeds; k++) add('panel', `${i}+`, feeds > 1 || random() < 0.7)
    for (let k = 0; k < returns; k++) add(`${i}-`, k === 0 ? 'chassis' : 'strap', returns > 1)
    return { name: `heater ${i}`, from: `${i}+`, to: `${i}-`, ohm: 144 / [20, 40, 60][Math.floor(3 * random())]! }
  })
  if (runs.some(({ to }) => to === 'strap')) add('strap', 'chassis', false, SHARED_OHM)
  if (batteries === 2) add('spare', 'bus', true)
  const sources = [{ from: 'chassis', to: 'bus', ohm: SHARED_OHM, volts: 12 }]
  return {
    ground: 'chassis',
    sources: batteries === 1 ? sources : [...sources, { from: 'chassis', to: 'spare', ohm: 0.03, volts: 12.6 }],
    runs,
    loads
  }
}

function textOf({ sources, runs, loads }: Drawing): string {
  const mohm = (ohm: number) => `${(1000 * ohm).toFixed(3)} mohm`
  const others = sources
    .slice(1)
    .map(({ to, ohm, volts }) => `{ what: spare battery, from: chassis, to: ${to}, voltage: ${volts} V, resistance: ${mohm(ohm)} }`)
  return [
    'fettle: 1',
    'job: { title: Generated }',
    'circuit:',
    `  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: ${mohm(SHARED_OHM)}, ground: chassis }`,
    `  other-sources: [${others.join()}]`,
    '  runs:',
    ...runs.map(({ id, from, to, ohm, switched, open }, i) => {
      const own = ohm - (switched ? SWITCH_OHM : 0) - (i === 0 ? FUSE_OHM : 0)
      const fuse = i === 0 ? [`{ fuse: F0, rating: 15 A, style: blade, at: 25 °C, resistance: ${mohm(FUSE_OHM)} }`] : []
      const off = switched ? [`{ switch: S${i}, rating: 30 A, resistance: ${mohm(SWITCH_OHM)}, state: ${open ? 'open' : 'closed'} }`] : []
      return `    - { from: ${from}, to: ${to}, name: ${id}, bond: ${mohm(own)}, through: [${[...fuse, ...off].join()}] }`
    }),
    '  loads:',
    ...loads.map(
      ({ name, from, to, ohm }) =>
        `    - { load: ${name}, power: ${144 / ohm} W, voltage: 12 V, kind: resistive, least-power: 1 W, from: ${from}, to: ${to} }`
    )
  ].join('\n')
}

/** Where sources share a load, what each gives of it hangs a little on the other. */
const NEAR = 0.01
/** A load fewer lets a little more flow through what is left of the way that they share. */
const ABOUT = 0.05

function compared(drawing: Drawing): void {
  const { errors, findings, results } = judgeJob('job.yaml', textOf(drawing))
  expect(errors).toEqual([])
  const positions = everyPosition(drawing)
  const said = (rule: string, thing: string) =>
    findings.find(one => one.rule === rule && one.thing === `circuit.${thing}`)?.value ?? Number.NaN
  for (const [i, { id, switched }] of drawing.runs.entries()) {
    const mostA = Math.max(...positions.map(({ runsA }) => runsA.get(id) ?? 0))
    if (switched && mostA > 1e-2) expect(said('switch/under-rated', `S${i}`) / mostA, id).toBeCloseTo(1, -Math.log10(2 * ABOUT))
  }
  for (const { name, ohm } of drawing.loads) {
    const leastA = Math.min(...positions.map(({ loadsA }) => loadsA.get(name)!).filter(currentA => currentA > 1e-3))
    expect(said('heater/weak', name) / (leastA ** 2 * ohm), name).toBeCloseTo(1, -Math.log10(2 * NEAR))
  }
  const shortsA = positions.flatMap(({ shortsA }) => [...shortsA.values()].map(runs => runs.get('r0')!)).filter(currentA => currentA > 1e-2)
  const fault = results.find(({ id }) => id === 'circuit.F0:protect.fault')!
  expect((fault.low ?? Number(fault.value)) / Math.min(...shortsA), 'least short').toBeCloseTo(1, 2)
}

describe('as every position tells', () => {
  it.each(Array.from({ length: 60 }, (_, seed) => seed))('one battery, circuit %i', seed => {
    compared(generated(seed, 1))
  })
  it.each(Array.from({ length: 40 }, (_, seed) => seed))('two batteries, circuit %i', seed => {
    compared(generated(1000 + seed, 2))
  })
})
