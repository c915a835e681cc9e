// example: what is said of a fault, and which of two does more harm; all invented.
import { describe, expect, it } from 'vitest'
import { type FaultEffects, harmOf } from '../../../src/trade/circuit/fault-effects.ts'
import { backwardsText, faultName, faultText, walkedText } from '../../../src/trade/circuit/fault-words.ts'

const NOTHING: FaultEffects = { currentsA: {}, opens: [], doubtful: [], backwards: [], overloads: [], lost: [] }
const opening = (id: string, shortestS: number, longestS: number) => ({ id, currentA: 123.4, shortestS, longestS })
const overload = (id: string, clearedS: number, currentA = 40) => ({ id, currentA, ampacityA: 20, clearedS })
const FED = { id: 'lamp', how: 'reversed', dropV: -3.61, clearedS: Number.POSITIVE_INFINITY } as const

it.each([
  [{ kind: 'shorted', point: 'h+' }, 'h+ shorted to ground'],
  [{ kind: 'opened', id: 'feed' }, 'feed open'],
  [{ kind: 'threads', id: 'thread' }, 'thread, the way back through threads, open'],
  [{ kind: 'cranking', id: 'strap' }, 'strap off while cranking']
] as const)('names %j', (fault, name) => {
  expect(faultName(fault)).toBe(name)
})

const walked = (states: readonly (string | undefined)[]) =>
  walkedText(
    states.map(state => ({
      ...NOTHING,
      harm: harmOf(NOTHING),
      fault: { kind: 'opened', id: 'feed' } as const,
      ...(state === undefined ? {} : { state })
    }))
  )

it.each([
  [[undefined], '1 single fault walked at the nominal'],
  [[undefined, undefined], '2 single faults walked at the nominal'],
  [[undefined, 'switch A off', 'switch A off'], '1 single fault walked at the nominal, also with switch A off'],
  [['a', 'b', 'c'], '0 single faults walked at the nominal, also with a, with b, with c'],
  [['a', 'b', 'c', 'd'], '0 single faults walked at the nominal, also in 4 states of its switches']
])('counts what was walked, and names three states at most: %j', (states, text) => {
  expect(walked(states)).toBe(text)
})

describe('in words', () => {
  it.each([
    ['nothing', {}, 'nothing worth a word'],
    ['what is lost', { lost: ['heater', 'lamp'] }, 'without current: heater, lamp'],
    ['what opens at once or later', { opens: [opening('F1', 0, 5)] }, 'F1 opens within 5 s at 123 A'],
    ['what opens not before a time', { opens: [opening('F1', 0.15, 5)] }, 'F1 opens no sooner than 0.15 s and within 5 s at 123 A'],
    ['what opens not before a short time', { opens: [opening('F1', 0.005, 5)] }, 'F1 opens no sooner than 0.005 s and within 5 s at 123 A'],
    ['what may open', { doubtful: [opening('F1', 1, Number.POSITIVE_INFINITY)] }, 'F1 may open or not at 123 A'],
    ['what is cleared', { overloads: [overload('feed', 1.25)] }, 'feed carries 40 A, it is good for 20 A, cleared within 1.3 s'],
    ['what burns', { overloads: [overload('feed', Infinity)] }, 'feed carries 40 A, it is good for 20 A, and nothing clears it'],
    ['what is fed backwards', { backwards: [FED] }, 'lamp is fed backwards with 3.61 V']
  ] as const)('%s', (_, effects, says) => {
    expect(faultText({ ...NOTHING, ...effects })).toBe(says)
  })

  it('the longest overload first, then what is fed backwards, what opens, what may, what is lost', () => {
    const text = faultText({
      ...NOTHING,
      overloads: [overload('quick', 1), overload('burning', Infinity), overload('slow', 30)],
      backwards: [FED],
      opens: [opening('F1', 0, 5)],
      doubtful: [opening('F2', 0, Infinity)],
      lost: ['heater']
    })
    expect(text.split('; ').map(part => part.split(' ')[0])).toEqual(['burning', 'slow', 'quick', 'lamp', 'F1', 'F2', 'without'])
  })

  it.each([
    ['though switched off', 'lamp is fed though switched off with 7.2 V'],
    ['through another load', 'lamp is fed through another load with 7.2 V']
  ] as const)('fed %s', (how, says) => {
    expect(backwardsText({ id: 'lamp', how, dropV: 7.2, clearedS: Number.POSITIVE_INFINITY })).toBe(says)
  })
})

describe('harm', () => {
  /** Each does more harm than all before it. */
  const RISING: readonly (readonly [string, Partial<FaultEffects>])[] = [
    ['nothing', {}],
    ['a load lost', { lost: ['a'] }],
    ['two loads lost', { lost: ['a', 'b'] }],
    ['a fuse opens', { opens: [opening('F1', 0, 5)] }],
    ['and a load is lost', { opens: [opening('F1', 0, 5)], lost: ['a'] }],
    ['a wire overloaded for a second', { overloads: [overload('w', 1)] }],
    ['for a minute', { overloads: [overload('v', 1), overload('w', 60)] }],
    ['a fuse in doubt', { doubtful: [opening('F1', 0, Infinity)] }],
    ['a load fed backwards', { backwards: [FED] }],
    ['a wire burning', { overloads: [overload('w', Infinity)] }],
    ['a wire burning at more, beside one', { overloads: [overload('v', Infinity, 30), overload('w', Infinity, 60)] }]
  ]
  it.each(RISING.slice(1).map(([name, effects], i) => ({ name, effects, before: RISING[i]![1] })))(
    '$name: more than what stands before it',
    ({ effects, before }) => {
      expect(harmOf({ ...NOTHING, ...effects })).toBeGreaterThan(harmOf({ ...NOTHING, ...before }))
    }
  )
  it('is none where there is none, and counted for any number of loads', () => {
    expect(harmOf(NOTHING)).toBe(0)
    const many = Array.from({ length: 500 }, (_, i) => `load ${i}`)
    expect(harmOf({ ...NOTHING, lost: many })).toBeLessThan(harmOf({ ...NOTHING, opens: [opening('F1', 0, 5)] }))
  })
})
