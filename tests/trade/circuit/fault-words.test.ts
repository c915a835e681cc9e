// example: a fault in words
import { expect, it } from 'vitest'
import { faultText } from '../../../src/trade/circuit/fault-words.ts'

const NOTHING = { currentsA: {}, overloads: [], backwards: [], opens: [], doubtful: [], lost: [] }
const opening = (shortestS: number) => ({ ...NOTHING, opens: [{ id: 'F1', currentA: 41.26, shortestS, longestS: 5 }] })

it('nothing', () => expect(faultText(NOTHING)).toBe('nothing worth a word'))

it.each([
  ['without a quick edge it may open at once', 0, 'F1 opens within 5 s at 41.3 A'],
  ['with one it does not', 0.15, 'F1 opens no sooner than 0.15 s and within 5 s at 41.3 A'],
  ['however quick', 0.005, 'F1 opens no sooner than 0.005 s and within 5 s at 41.3 A']
])('%s', (_, shortestS, text) => expect(faultText(opening(shortestS))).toBe(text))

it('loads without current are named', () => {
  expect(faultText({ ...NOTHING, lost: ['heater', 'lamps'] })).toBe('without current: heater, lamps')
})
