// property: laws of the order in which loads are given up.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { Given, type Plain } from '../../../src/formula/given.ts'
import type { LoadGiven } from '../../../src/trade/supply/load.ts'
import { shedFor, shedOrder, shedText } from '../../../src/trade/supply/shed.ts'

const load = fc.record({
  name: fc.string(),
  currentA: fc.double({ min: 0, max: 50, noNaN: true }),
  dutyPercent: fc.double({ min: 0, max: 100, noNaN: true }),
  priority: fc.constantFrom('essential', 'useful', 'comfort')
})
const loads = fc.array(load, { maxLength: 8 })

it('never proposes an essential load, and comfort goes first', () => {
  fc.assert(
    fc.property(loads, list => {
      const order = shedOrder(list).map(({ priority }) => priority)
      expect(order).not.toContain('essential')
      expect(order.lastIndexOf('comfort')).toBeLessThanOrEqual(order.includes('useful') ? order.indexOf('useful') : order.length)
    })
  )
})

it('frees enough with as few of them as it can in this order', () => {
  fc.assert(
    fc.property(loads, fc.double({ min: 0.01, max: 100, noNaN: true }), (list, shortA) => {
      const shed = shedFor(list, shortA)
      const all = shedOrder(list).at(-1)?.freedSoFarA ?? 0
      expect((shed.at(-1)?.freedSoFarA ?? 0) >= Math.min(shortA, all)).toBe(true)
      if (shed.length > 1) expect(shed.at(-2)!.freedSoFarA).toBeLessThan(shortA)
    })
  )
})

it('ranks by what is freed over the duty', () => {
  const order = shedOrder([
    { name: 'fan', currentA: 6, dutyPercent: 100, priority: 'comfort' },
    { name: 'heater', currentA: 20, dutyPercent: 25, priority: 'comfort' },
    { name: 'radio', currentA: 9, dutyPercent: 100, priority: 'useful' },
    { name: 'pump', currentA: 30, dutyPercent: 100, priority: 'essential' }
  ])
  expect(order.map(({ name, freedSoFarA }) => [name, freedSoFarA])).toEqual([
    ['fan', 6],
    ['heater', 11],
    ['radio', 20]
  ])
})

const FAN = { name: 'fan', currentA: 6, dutyPercent: 100, priority: 'comfort' } as const
const given = (load: Plain<LoadGiven>): LoadGiven => ({
  ...load,
  currentA: new Given(load.currentA),
  dutyPercent: new Given(load.dutyPercent)
})
const PUMP = { name: 'pump', currentA: 30, dutyPercent: 100, priority: 'essential' } as const

it('sheds nothing where nothing is short', () => {
  expect(shedFor([FAN], 0)).toEqual([])
  expect(shedText([given(FAN)], 0)).toBe('')
})

it('sheds the first where ever so little is short', () => {
  expect(shedFor([FAN], 0.001)).toHaveLength(1)
})

// 1000/3 mA over 40 % are 133 mA; 6 A more make 6.133 A.
it.each([
  ['names what frees enough', [FAN], 6, 'fan (6 A)'],
  ['leaves on what need not go', [FAN, { ...FAN, name: 'radio', currentA: 1 }], 6, 'fan (6 A)'],
  ['says where all of it is too little', [FAN], 6.01, 'fan (6 A); that alone is not enough'],
  ['tells three digits', [FAN, { ...FAN, name: 'radio', currentA: 1 / 3, dutyPercent: 40 }], 6.1, 'fan (6 A), radio (0.133 A)'],
  ['names nothing where all is essential', [PUMP], 5, '']
] as const)('%s', (_, list, shortA, says) => {
  expect(shedText(list.map(given), shortA)).toBe(says)
})

it('holds what is freed at the worst end against what is short there', () => {
  const heater = { ...given(FAN), currentA: new Given(6, { low: 5, high: 6.5 }), dutyPercent: new Given(90, { low: 80, high: 100 }) }
  expect(shedText([heater], 6.5)).toBe('fan (6.5 A)')
  expect(shedText([heater], 6.51)).toBe('fan (6.5 A); that alone is not enough')
  // 0.1 + 0.2 is not 0.3 to the last digit.
  const small = (currentA: number) => given({ ...FAN, name: `${currentA}`, currentA })
  expect(shedText([small(0.2), small(0.1)], 0.1 + 0.2)).toBe('0.2 (0.2 A), 0.1 (0.1 A)')
})

it('begins with what frees most, in whatever order the loads came', () => {
  const radio = { ...FAN, name: 'radio', currentA: 1 }
  const lamps = { ...FAN, name: 'lamps', currentA: 3 }
  for (const list of [
    [FAN, lamps, radio],
    [radio, lamps, FAN],
    [lamps, FAN, radio]
  ])
    expect(shedOrder(list).map(({ name }) => name)).toEqual(['fan', 'lamps', 'radio'])
})
