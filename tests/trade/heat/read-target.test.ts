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
