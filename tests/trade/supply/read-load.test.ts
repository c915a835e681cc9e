// example: loads as somebody writes them.
import { expect, it } from 'vitest'
import { readLoad } from '../../../src/trade/supply/read-load.ts'

it.each([
  ['heater=5.6 A', 'heater', 5.6, 100, 'useful'],
  ['lights=9 A,40 %', 'lights', 9, 40, 'useful'],
  ['lights=9 A,comfort', 'lights', 9, 100, 'comfort'],
  ['lights=9 A,essential', 'lights', 9, 100, 'essential'],
  ['lights=9 A,useful', 'lights', 9, 100, 'useful'],
  ['lights=9 A,40 %,comfort', 'lights', 9, 40, 'comfort'],
  ['lights=9 A,comfort,40 %', 'lights', 9, 40, 'comfort'],
  [' seat heater = 900 mA , 40 % , comfort ', 'seat heater', 0.9, 40, 'comfort']
])('reads "%s"', (text, name, currentA, dutyPercent, priority) => {
  expect(readLoad(text)).toMatchObject({
    ok: true,
    value: { name, priority, currentA: { value: currentA, at: ['load', name] }, dutyPercent: { value: dutyPercent, at: ['load', name] } }
  })
})

it('takes bounds of both; a load that is always on is so exactly', () => {
  const load = (text: string) => readLoad(text)
  expect(load('fan=5..6 A,40..60 %')).toMatchObject({ value: { currentA: { low: 5, high: 6 }, dutyPercent: { low: 40, high: 60 } } })
  expect(load('fan=5..6 A')).toMatchObject({ value: { dutyPercent: { low: 100, high: 100 } } })
})

const FORM = 'a load as "heater=5.6 A" or "lights=9 A,40 %"'
const LONGER = `${FORM}, or "lights=9 A,40 %,comfort"`

it.each([
  ['heater', FORM],
  ['', FORM],
  ['=5.6 A', FORM],
  [' = 5.6 A', FORM],
  ['heater=5.6 A=2 A', FORM],
  ['lights=9 A,40 %,50 %', LONGER],
  ['lights=9 A,40 %,comfort,useful', LONGER],
  ['lights=9 A,comfort,40 %,comfort', LONGER]
])('shows for "%s" how a load is written', (text, accepted) => {
  expect(readLoad(text)).toEqual({ ok: false, fault: { found: `"${text}"`, accepted } })
})

it.each([
  ['no current', 'heater=', /current/],
  ['a power', 'heater=70 W', /current/],
  ['a share that is none', 'heater=5 A,often', /percent/],
  ['two needs', 'heater=5 A,comfort,useful', /percent/]
])('refuses %s', (_, text, accepted) => {
  const outcome = readLoad(text)
  expect(!outcome.ok && outcome.fault.accepted).toMatch(accepted)
})

it('takes no current for one, and refuses less', () => {
  expect(readLoad('heater=0 A').ok).toBe(true)
  expect(readLoad('heater=-0.005 A').ok).toBe(false)
})
