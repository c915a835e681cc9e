// example: a mass and its arm as somebody writes them
import { expect, it } from 'vitest'
import { readItem } from '../../../src/trade/mass/read-item.ts'

it.each([
  ['742 kg @ 0.913 m', 742, 0.913],
  ['742kg@913mm', 742, 0.913],
  ['-0.5 kg @ -0.42 m', -0.5, -0.42],
  ['10 lb @ -16.5 in', 4.5359237, -0.4191]
])('%s', (text, massKg, armM) => {
  const outcome = readItem(text, ['add'])
  if (!outcome.ok) throw new Error(outcome.fault.found)
  expect(outcome.value.massKg.value).toBeCloseTo(massKg, 12)
  expect(outcome.value.armM.value).toBeCloseTo(armM, 12)
  expect(outcome.value.armM.at).toEqual(['add'])
})

it('takes bounds of both', () => {
  const outcome = readItem('742 kg ± 2 kg @ 0.9..0.92 m', [])
  expect(outcome).toMatchObject({ ok: true, value: { massKg: { low: 740, high: 744 }, armM: { low: 0.9, high: 0.92 } } })
})

it.each(['742 kg', '@ 1 m', '742 kg @', '1 kg @ 1 m @ 1 m', '1 m @ 1 kg', '742 @ 1 m', ''])('refuses %s', text => {
  expect(readItem(text, []).ok).toBe(false)
})

it.each(['742 kg @ ', ' @ 1 m', '742 kg', '1 kg @ 1 m @ 1 m'])('shows for "%s" how an item is written', text => {
  expect(readItem(text, [])).toMatchObject({ fault: { found: `"${text}"`, accepted: expect.stringMatching(/^a mass and its arm/) } })
})

it.each([
  ['5 m @ 1 m', /mass/],
  ['742 kg @ 1 kg', /length|distance|arm|run/]
])('says of "%s" what was to stand there', (text, accepted) => {
  expect(readItem(text, [])).toMatchObject({ fault: { accepted: expect.stringMatching(accepted) } })
})
