// example: the two ways to say how cold a casting is at switch-on
import { expect, it } from 'vitest'
import { readStart } from '../../../src/trade/heat/read-start.ts'

it.each(['as the air', 'as air', ' As The Air '])('%s', text => {
  expect(readStart(text, [])).toEqual({ ok: true, value: { by: 'air' } })
})

it('-18 °C ± 2 K', () => {
  expect(readStart('-18 °C ± 2 K', ['warm', 'start'])).toMatchObject({
    value: { by: 'temperature', startC: { value: -18, low: -20, high: -16, at: ['warm', 'start'] } }
  })
})

it.each(['as the metal', '-18', '3 K', ''])('refuses %s', text => {
  expect(readStart(text, [])).toMatchObject({ ok: false, fault: { accepted: expect.stringContaining('as the air') } })
})
