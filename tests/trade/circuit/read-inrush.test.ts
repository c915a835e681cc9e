// example: an inrush as somebody writes it; the limits of a network; small shares by hand.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { requireSound } from '../../../src/trade/circuit/network-limits.ts'
import { ratedSharePercent } from '../../../src/trade/circuit/rating-share.ts'
import { readInrush } from '../../../src/trade/circuit/read-inrush.ts'
import * as on from '../../../src/trade/circuit/switch-on.ts'

describe('an inrush', () => {
  it('is a current and a time, with their bounds and their place', () => {
    expect(readInrush('20 ± 2 A, 500 ms')).toMatchObject({
      ok: true,
      value: { currentA: { value: 20, low: 18, high: 22, at: ['inrush'] }, timeS: { value: 0.5, low: 0.5, high: 0.5, at: ['inrush'] } }
    })
  })
  it('may be of no current, and of none below', () => {
    expect(readInrush('0 A, 1 s').ok).toBe(true)
    expect(readInrush('-1 A, 1 s').ok).toBe(false)
  })
  it.each(['20 A', '', '20 A,0.5 s,1 s'])('shows for "%s" how it is written', text => {
    expect(readInrush(text)).toEqual({
      ok: false,
      fault: { found: `"${text}" for an inrush`, accepted: 'a current and a time, as "20 A,0.5 s"' }
    })
  })
  it.each([
    ['20 V,0.5 s', /current/],
    ['20 A,5 V', /time/],
    [',0.5 s', /current/],
    ['20 A,', /time/]
  ])('says of "%s" what was to stand there', (text, accepted) => {
    const outcome = readInrush(text)
    expect(outcome.ok ? '' : outcome.fault.accepted).toMatch(accepted)
  })
})

describe('a network', () => {
  const ends = { from: 'a', to: 'b' }
  const source = (sourceV: number, insideOhm: number): PlainElement => ({ kind: 'source', id: 's', ...ends, sourceV, insideOhm })
  const draw = (drawA: number): PlainElement => ({ kind: 'draw', id: 'd', ...ends, drawA })
  const resistor = (resistanceOhm: number): PlainElement => ({ kind: 'resistor', id: 'r', ...ends, resistanceOhm })
  const sound = (...elements: readonly PlainElement[]) => requireSound({ ground: 'a', elements })

  it('takes numbers up to its limits', () => {
    for (const element of [source(1000, 0), source(-1000, 1e9), draw(1e5), draw(-1e5), resistor(0), resistor(1e9)])
      expect(() => sound(element)).not.toThrow()
  })
  it('refuses those beyond', () => {
    for (const element of [
      source(1001, 0),
      source(-1001, 0),
      source(12, -0.1),
      source(12, 2e9),
      draw(1.01e5),
      draw(-1.01e5),
      resistor(2e9)
    ])
      expect(() => sound(element)).toThrow(OutsideRange)
  })
  it('refuses two elements of one name, whatever stands between', () => {
    expect(() => sound(source(12, 0), resistor(1), source(12, 0))).toThrow('two elements of a network are both named s')
  })
})

it('45 W of a part of 60 W are three quarters', () => {
  expect(ratedSharePercent({ powerW: 45, ratedW: 60 })).toBe(75)
})

describe('a switch-on', () => {
  it('of 8 ohm at 820 °C, 0.1 % a kelvin: 8/1.8 ohm at 20 °C', () => {
    expect(on.coldOhm({ resistanceOhm: 8, resistanceChangePerK: 0.1, hotC: 820 })).toBeCloseTo(8 / 1.8, 12)
  })
  it('of 8 ohm that takes twice its current cold: 4 ohm; two of them 2 ohm on a meter, 12 A at 24 V', () => {
    expect(on.multipliedOhm({ resistanceOhm: 8, coldFactor: 2 })).toBe(4)
    expect(on.meterOhm({ coldOhm: 4, count: 2 })).toBe(2)
    expect(on.coldA({ atV: 24, coldOhm: 4, count: 2 })).toBe(12)
    expect(on.multipliedA({ togetherA: 6, coldFactor: 2 })).toBe(12)
  })
})
