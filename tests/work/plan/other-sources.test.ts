// example: every source that is drawn is dead before a wire is touched, and back in its order
import { describe, expect, it } from 'vitest'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'
import { jobText } from '../invented-job.ts'

type Other = readonly [what: string, from: string, to: string]

/** Each as its own way to the bus. */
function stepsWith(...others: readonly Other[]) {
  const sources = others.map(([what, from, to]) => `{ what: ${what}, voltage: 25 V, resistance: 20 mohm, from: ${from}, to: ${to} }`)
  const points = new Set(others.flatMap(([, from, to]) => [from, to]).filter(point => point !== 'frame'))
  const runs = [...points].map(point => `{ from: ${point}, to: bus, wire: { size: 4 mm2, length: 1 m } }`)
  const circuit = `{ source: { bus: 27 V, resistance: 15 mohm, ground: frame }, other-sources: [${sources.join(', ')}], runs: [{ from: bus, to: heat, wire: { size: 2.5 mm2, length: 2 m } }${runs.map(run => `, ${run}`).join('')}], loads: [{ heater: elbow, from: heat, to: frame }] }`
  const { steps, errors } = planOf(judgedJob('x.yaml', jobText({ circuit })))
  expect(errors).toEqual([])
  const of = (part: string) => steps.filter(step => step.part === part).map(({ says }) => says)
  const ready = of('make ready')
  const close = of('close')
  return {
    ready: ready.slice(
      1,
      ready.findIndex(says => says.startsWith('let the pressure off'))
    ),
    close: close.slice(-5),
    steps
  }
}

const OFF = "take the battery's ground lead off, before any other"
const ON = "put the battery's ground lead back on, last of all leads"

it('without another source nothing is said of one', () => {
  const { ready, close } = stepsWith()
  expect(ready).toEqual([OFF])
  expect(close.at(-1)).toBe("put the battery's ground lead back on, last of all")
})

it('a further battery: its ground lead after that of the first, and back before it', () => {
  const { ready, close, steps } = stepsWith(['second battery', 'frame', 'house'])
  expect(ready).toEqual([
    OFF,
    'take the ground lead of the second battery, at frame, off',
    'read the volts of bus, house against frame: nothing is left'
  ])
  expect(close.slice(-2)).toEqual(['put the ground lead of the second battery, at frame, back on', ON])
  expect(steps.find(({ says }) => says.startsWith('read the volts of bus, house'))).toMatchObject({
    blank: 'volts with every source off',
    caution: expect.stringMatching(/something feeds it still; no tool and no wire goes near/)
  })
})

it('a battery of which no end is grounded: its minus lead', () => {
  const { ready, close } = stepsWith(['upper battery', 'lower+', 'upper+'], ['lower battery', 'frame', 'lower+'])
  expect(ready).toContain('take the minus lead of the upper battery, at lower+, off')
  // A spanner from lower+ to the frame is a short as long as the ground lead of the lower one is on.
  expect(ready.slice(1, 3)).toEqual([
    'take the ground lead of the lower battery, at frame, off',
    'take the minus lead of the upper battery, at lower+, off'
  ])
  expect(close.slice(-3)).toEqual([
    'put the minus lead of the upper battery, at lower+, back on',
    'put the ground lead of the lower battery, at frame, back on',
    ON
  ])
})

describe('what gives power without the engine is stopped before a lead of a battery is off, and starts after the last is on', () => {
  it.each([
    ['shore charger', 'unplug the shore charger where it gets its power', 'plug the shore charger in again, with every lead on', false],
    [
      'battery charger',
      'unplug the battery charger where it gets its power',
      'plug the battery charger in again, with every lead on',
      false
    ],
    ['roof panel', 'cover the roof panel', 'uncover the roof panel, with every lead on', true],
    [
      'solar charge controller',
      'cover the panel (or stop whatever else) that feeds the solar charge controller, or take that feed off there, before any lead of a battery is off',
      'uncover or start again what feeds the solar charge controller, or put that feed back on, with every lead on',
      true
    ],
    ['alternator', 'see that what drives the alternator stands still, and that nobody', 'free what drives the alternator again', false]
  ])('%s', (what, stop, start, hasLead) => {
    const { ready, close } = stepsWith([what, 'frame', 'c+'])
    expect(ready[0]).toContain(stop)
    expect(ready.slice(1)).toEqual([
      OFF,
      ...(hasLead ? [`take the lead of the ${what}, at c+, off`] : []),
      'read the volts of bus, c+ against frame: nothing is left'
    ])
    expect(close.slice(-2)).toEqual([ON, start])
    expect(close.includes(`put the lead of the ${what}, at c+, back on`)).toBe(hasLead)
  })
})

it.each(['alternator battery', 'house bank'])('%s: its ground lead is off, whatever charges it', what => {
  expect(stepsWith([what, 'frame', 'c+']).ready[1]).toBe(`take the ground lead of the ${what}, at frame, off`)
})

describe('one whose name tells nothing is held for a battery, and first switched off as it may be anything', () => {
  it.each(['feed two', 'aux'])('%s', what => {
    const { ready, close } = stepsWith([what, 'frame', 'c+'])
    expect(ready).toEqual([
      `see how the ${what} is switched off or unplugged, and do that before any lead of a battery is off`,
      OFF,
      `take the ground lead of the ${what}, at frame, off`,
      'read the volts of bus, c+ against frame: nothing is left'
    ])
    expect(close.slice(-3)).toEqual([
      `put the ground lead of the ${what}, at frame, back on`,
      ON,
      `switch on or plug in the ${what} again, with every lead on`
    ])
  })
})

it('a battery that may be charged: what charges it first, and its ground lead off', () => {
  const { ready, close } = stepsWith(['leisure battery on plug P2', 'frame', 'c+'])
  expect(ready.slice(0, 3)).toEqual([
    'switch off or unplug what charges the leisure battery on plug P2 (a panel is covered), before any lead of a battery is off',
    OFF,
    'take the ground lead of the leisure battery on plug P2, at frame, off'
  ])
  expect(close.slice(-3)).toEqual([
    'put the ground lead of the leisure battery on plug P2, at frame, back on',
    ON,
    'switch on, plug in or uncover again what charges the leisure battery on plug P2, with every lead on'
  ])
})

it('one in words that only tell that it is charged is no other', () => {
  const { ready } = stepsWith(['"battery (leisure), charged by B2B"', 'frame', 'c+'])
  expect(ready[0]).toBe(
    'switch off or unplug what charges the battery (leisure), charged by B2B (a panel is covered), before any lead of a battery is off'
  )
})

it('the plus lead of a panel comes off after every ground lead, in whatever order they are drawn', () => {
  const { ready, close } = stepsWith(['solar panel', 'frame', 'p+'], ['shore charger', 'frame', 'c+'], ['house batt', 'frame', 'h+'])
  expect(ready.map(says => says.split(',')[0])).toEqual([
    'cover the solar panel',
    'unplug the shore charger where it gets its power',
    "take the battery's ground lead off",
    'take the ground lead of the house batt',
    'take the lead of the solar panel',
    'read the volts of bus'
  ])
  expect(close.map(says => says.split(',')[0])).toEqual([
    'put the lead of the solar panel',
    'put the ground lead of the house batt',
    "put the battery's ground lead back on",
    'plug the shore charger in again',
    'uncover the solar panel'
  ])
})
