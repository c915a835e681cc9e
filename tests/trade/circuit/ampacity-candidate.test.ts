// example: invented wires.
import { expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { type AmpacityGiven, ampacity } from '../../../src/trade/circuit/ampacity.ts'
import { smallestWire, type WireCandidate, wireObjections } from '../../../src/trade/circuit/ampacity-candidate.ts'
import type { Conductor } from '../../../src/trade/circuit/ampacity-conductor.ts'
import { smallestAllowed } from '../../../src/trade/circuit/ampacity-smallest-wire.ts'

function candidate(awg: number, changed: Partial<WireCandidate> = {}): WireCandidate {
  const conductor: Conductor = { standard: 'awg', awg }
  const x: Plain<AmpacityGiven> = { practice: 'boat', conductor, insulationC: 105, ambientC: 30, altitudeM: 0, bundleCount: 1 }
  const smallest = smallestAllowed({ practice: 'boat', conductor, run: 'single' })
  return {
    name: `AWG ${awg}`,
    current: ampacity(x),
    currentA: 22,
    dropped: 0.3,
    limit: { value: 0.36, unit: 'V' },
    smallest,
    heatingMarginK: null,
    short: 'opens',
    ...changed
  }
}

it('gives a reason for each wire it turns down', () => {
  expect(wireObjections(candidate(20))).toEqual([
    'AWG 20 is smaller than any size in 33 CFR 183.425 table 5',
    'smallest AWG 16: run singly'
  ])
  expect(wireObjections(candidate(18))).toEqual(['carries 20 A for good, 22 A wanted', 'smallest AWG 16: run singly'])
  expect(wireObjections(candidate(16, { dropped: 0.4 }))).toEqual(['drops 0.4 V warmed by its current, 0.36 V allowed'])
  expect(wireObjections(candidate(16, { heatingMarginK: -12 }))).toEqual([
    'gets 12 K too hot in a short circuit before its protector opens'
  ])
  expect(wireObjections(candidate(16, { short: 'may stay shut' }))).toEqual(['a short at its far end may never open the protector'])
  expect(wireObjections(candidate(16, { short: 'not known' }))).toEqual([])
})

it('stands on the edge of each limit', () => {
  expect(wireObjections(candidate(16, { currentA: 25, dropped: 0.36, heatingMarginK: 0 }))).toEqual([])
  expect(wireObjections(candidate(16, { currentA: 25.01 }))).toHaveLength(1)
})

it('picks the first that nothing speaks against', () => {
  expect(smallestWire([candidate(20), candidate(18), candidate(16), candidate(14)])?.name).toBe('AWG 16')
  expect(smallestWire([candidate(20), candidate(18)])).toBeUndefined()
})
