// table: readings as they are typed, and what is wrong with those that cannot be read
import { describe, expect, it } from 'vitest'
import { readPoints } from '../../../src/trade/proof/points.ts'
import { OVER_OHM } from '../../../src/trade/proof/probed-circuit.ts'
import { readReading, readReadingOhm } from '../../../src/trade/proof/read-reading.ts'

const KNOWN = ['bus', 'left+', 'left-', 'chassis', 'road to nowhere']

function read(text: string) {
  const found = readReading(text, KNOWN)
  if (!found.ok) throw new Error(found.fault.found)
  const { red, black, takes, passingA, amount } = found.value
  return [red, black, takes, passingA, amount.value, amount.low, amount.high]
}

describe('readings', () => {
  it.each([
    ['left+ TO left-=26.4 V', ['left+', 'left-', 'volts', null, 26.4, 26.4, 26.4]],
    ['bus to chassis = 13,8 V'.replace(',', '.'), ['bus', 'chassis', 'volts', null, 13.8, 13.8, 13.8]],
    ['bus TO left+=85 mV', ['bus', 'left+', 'volts', null, 0.085, 0.085, 0.085]],
    ['left+ TO left-=1.9 A', ['left+', 'left-', 'amps', null, 1.9, 1.9, 1.9]],
    ['left+ TO left-=-1.9 A', ['left+', 'left-', 'amps', null, -1.9, -1.9, -1.9]],
    ['left+ TO left-=13.1 ohm', ['left+', 'left-', 'ohms', null, 13.1, 13.1, 13.1]],
    ['left+ TO left-=0 ohm', ['left+', 'left-', 'ohms', null, 0, 0, 0]],
    ['left+ TO left-=OL', ['left+', 'left-', 'ohms', null, OVER_OHM, OVER_OHM, OVER_OHM]],
    ['left+ TO left-=0L', ['left+', 'left-', 'ohms', null, OVER_OHM, OVER_OHM, OVER_OHM]],
    ['left- TO chassis=22 mV @ 10 A', ['left-', 'chassis', 'volts', 10, 0.022, 0.022, 0.022]],
    ['left- TO chassis=22 mV at 10 A', ['left-', 'chassis', 'volts', 10, 0.022, 0.022, 0.022]],
    ['left+ TO left-=26.4 ± 0.1 V', ['left+', 'left-', 'volts', null, 26.4, 26.3, 26.5]],
    ['road to nowhere TO bus=1 V', ['road to nowhere', 'bus', 'volts', null, 1, 1, 1]]
  ] as const)('%s', (text, expected) => expect(read(text)).toEqual(expected))
})

describe('what cannot be read', () => {
  it.each([
    ['left+ left-=26.4 V', 'no two points', undefined],
    ['left+ TO left-', 'without a reading', undefined],
    ['=26.4 V', '"=26.4 V" without the points', undefined],
    [' = 26.4 V', 'without the points', undefined],
    ['left+ TO lft-=26.4 V', '"lft-"', 'left-'],
    ['bus TO bus=0 V', 'both leads', undefined],
    ['left+ TO left-=26.4', 'no volts, amps or ohms', undefined],
    ['left+ TO left-=26.4 W', 'no volts, amps or ohms', undefined],
    ['left+ TO left-=-3 ohm', 'no volts, amps or ohms', undefined],
    ['left+ TO left-=-1 mohm', 'no volts, amps or ohms', undefined],
    ['left+ TO left-=2 A @ 10 A', '2 A', undefined],
    ['left+ TO left-=2 mV @ 0 A', 'test current', undefined],
    ['left+ TO left-=2 mV @ 3 V', '3 V', undefined],
    ['left+ TO left-=5000 V', '5000 V', undefined],
    ['left+ TO left-= 26.4 W ', '"26.4 W"', undefined],
    ['left+ TO left-= 2 A @ 10 A ', '"2 A @ 10 A"', undefined],
    ['left+ TO left-=2 mV @  0 A ', 'a test current of "0 A"', undefined],
    ['left+ TO left-=2 mV @ 3 A @ 4 A', '"2 mV @ 3 A @ 4 A"', undefined],
    ['left+ TO left-=20L', 'no volts, amps or ohms', undefined],
    ['left+ TO left-=OLD', 'no volts, amps or ohms', undefined]
  ])('%s', (text, found, near) => {
    const outcome = readReading(text, KNOWN)
    expect(outcome.ok).toBe(false)
    if (outcome.ok) return
    expect(outcome.fault.found).toContain(found)
    expect(outcome.fault.near).toBe(near)
  })
})

it('points are named before anything else is', () => {
  expect(readPoints(' left+  to  left- ', KNOWN)).toEqual({ ok: true, value: { red: 'left+', black: 'left-' } })
})

it.each(['OL', ' o.l ', '0L', '00L', '0.L'])('"%s" is what a meter shows that finds no end', text => {
  expect(readReadingOhm(text)).toMatchObject({ ok: true, value: { value: OVER_OHM } })
})
