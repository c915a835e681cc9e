// table: switch-on step by step; loads invented, gates of a blade fuse from its sheet: at the soonest 0.75 s at 1.35, 0.25 s at 1.6, 0.15 s at 2 times
import { expect, it } from 'vitest'
import { inrushHeld, inrushSteps, takenPercent } from '../../../src/trade/circuit/inrush-steps.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const HEATER = { steadyA: 7, times: 1.5, lastsS: 0.28 }
const LAMP = { steadyA: 2, times: 3, lastsS: 0.03 }
const FAN = { steadyA: 1, times: 3.5, lastsS: 0.13 }
const BLADE = styleOf('blade')

// 10.5 + 6 + 3.5 A, then the lamp at 2 A, then the fan at 1 A as well.
const STEPS = [
  [20, 0.03],
  [16, 0.1],
  [13.5, 0.15]
]

it.each([
  ['as they are drawn', [HEATER, LAMP, FAN]],
  ['the other way round', [FAN, LAMP, HEATER]]
])('each load falls to what it takes for good when its own inrush ends, %s', (_, loads) => {
  const found = inrushSteps(loads)
  expect(found).toHaveLength(3)
  found.forEach(({ currentA, lastsS }, i) => {
    expect(currentA).toBeCloseTo(STEPS[i]![0]!, 12)
    expect(lastsS).toBeCloseTo(STEPS[i]![1]!, 12)
  })
})

it('loads of one inrush are one step, what takes no more adds what it takes, and nothing cold lasts no time', () => {
  const plain = { steadyA: 4, times: 1, lastsS: null }
  expect(inrushSteps([HEATER, HEATER, plain])).toEqual([
    { currentA: 25, lastsS: 0.28 },
    { currentA: 18, lastsS: 0 }
  ])
  expect(inrushSteps([plain, plain])).toEqual([{ currentA: 8, lastsS: 0 }])
})

// 30 ms of 0.15 s, 0.1 s of 0.25 s, 0.15 s of 0.75 s.
it('what the steps take of the time to open adds up', () => {
  const held = inrushHeld(BLADE, 10, inrushSteps([HEATER, LAMP, FAN]))!
  ;[20, 40, 20].forEach((percent, i) => {
    expect(held.steps[i]!.takenPercent).toBeCloseTo(percent, 9)
  })
  expect(held.takenPercent).toBeCloseTo(80, 9)
  expect(takenPercent({ lastsS: 0.1, shortestS: 0.25 })).toBe(40)
})

// The sheet has 100 hours at the rating and below.
it('an hour below its rating takes a hundredth of a fuse, and nothing is said of one without a band', () => {
  expect(inrushHeld(BLADE, 40, [{ currentA: 20, lastsS: 3600 }])!.takenPercent).toBeCloseTo(1, 9)
  expect(inrushHeld(styleOf('blade-mini'), 10, [{ currentA: 20, lastsS: 1 }])).toBeNull()
})

// Heat that is kept: of one that melts at a given I²t, steps of falling current melt it no sooner than when their shares reach a whole.
it('two steps that take half each take all of it', () => {
  const halves = [
    { currentA: 20, lastsS: 0.075 },
    { currentA: 16, lastsS: 0.125 }
  ]
  expect(inrushHeld(BLADE, 10, halves)!.takenPercent).toBeCloseTo(100, 9)
})

it('cold for a time that nobody told, a load takes more at the first moment', () => {
  expect(inrushSteps([{ steadyA: 4, times: 3, lastsS: null }])).toEqual([{ currentA: 12, lastsS: 0 }])
})

it('a step of no time takes nothing, however soon it may open; one of any time more than all', () => {
  const untold = { ...BLADE, quickEdge: 'unknown' as const }
  expect(inrushHeld(untold, 10, [{ currentA: 900, lastsS: 0 }])!.takenPercent).toBe(0)
  expect(inrushHeld(untold, 10, [{ currentA: 900, lastsS: 1e-3 }])!.takenPercent).toBe(Number.POSITIVE_INFINITY)
})

it('a step at which nothing ever opens takes nothing', () => {
  const [first, ...gates] = BLADE.gates
  const lasting = { ...BLADE, gates: [{ ...first!, shortestS: Number.POSITIVE_INFINITY }, ...gates] }
  expect(inrushHeld(lasting, 10, [{ currentA: 1, lastsS: 60 }])!.takenPercent).toBe(0)
})
