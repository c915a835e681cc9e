// example: the two ways to say what a casting is to be warmed to
import { expect, it } from 'vitest'
import { readTarget } from '../../../src/trade/heat/read-target.ts'

it.each(['3 K above dew', '3K above dew', '3 K above the dew point', '3 K above dew or frost point', '3 K ABOVE FROST'])('%s', text => {
  expect(readTarget(text, ['warm', 'target'])).toMatchObject({
    ok: true,
    value: { by: 'dew', aboveK: { value: 3, at: ['warm', 'target'] } }
  })
})

it.each([
  ['5 °C', 5],
  ['41 F', 5],
  ['-2 °C ± 1 K', -2]
])('%s', (text, targetC) => {
  const outcome = readTarget(text)
  expect(outcome.ok && outcome.value.by === 'temperature' && outcome.value.targetC.value).toBeCloseTo(targetC, 9)
})

it.each([
  ['3 °C above dew', 'C'],
  ['3 K', 'K'],
  ['3 K above boiling', 'above'],
  ['warm', '"warm"'],
  ['', 'empty']
])('refuses %s', (text, found) => {
  const outcome = readTarget(text)
  expect(outcome.ok ? '' : outcome.fault.found).toContain(found)
})

it('refuses a very long text at once', () => {
  const outcome = readTarget(`${' '.repeat(1e5)}above dew`)
  expect(outcome.ok ? '' : outcome.fault.found).toContain('100009 characters')
})

it('stands at the target where no other place was told, and spaces around it do not matter', () => {
  expect(readTarget(' 3 K above dew ')).toMatchObject({ value: { by: 'dew', aboveK: { value: 3, at: ['target'] } } })
  expect(readTarget(' 5 °C ')).toMatchObject({ value: { by: 'temperature', targetC: { value: 5, at: ['target'] } } })
})

it('reads up to 60 characters', () => {
  const spaced = (length: number) => `3 K${' '.repeat(length - '3 Kabove dew'.length)}above dew`
  expect(readTarget(spaced(60)).ok).toBe(true)
  expect(readTarget(spaced(61)).ok).toBe(false)
})

it('shows both ways where neither was meant, and what a difference is where that was', () => {
  expect(readTarget('warm')).toMatchObject({ fault: { accepted: 'a temperature as "5 °C", or "3 K above dew"' } })
  const outcome = readTarget('3 m above dew')
  expect(outcome.ok ? '' : outcome.fault.accepted).toMatch(/difference/)
})
