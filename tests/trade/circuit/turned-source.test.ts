// example: a source put in the wrong way round, by what its ends are joined to; circuits invented
import { expect, it } from 'vitest'
import { turnedSource } from '../../../src/trade/circuit/turned-source.ts'

const line = (from: string, to: string) => ({ from, to })
const found = (source: ReturnType<typeof line>, runs: readonly ReturnType<typeof line>[]) =>
  turnedSource({ bus: 'bus', ground: 'frame', runs }, [source]) !== undefined

it.each([
  ['minus at the bus, plus at the 0 V node', line('bus', 'frame'), [], true],
  ['both over runs', line('p', 'm'), [line('p', 'bus'), line('frame', 'm')], true],
  ['the right way round', line('m', 'p'), [line('p', 'bus'), line('frame', 'm')], false],
  ['plus at the 0 V node, minus at a rail of its own', line('n', 'frame'), [], false],
  ['in series above the bus', line('bus', 'high'), [], false],
  ['in a circuit that is shorted anyway', line('bus', 'frame'), [line('bus', 'frame')], false]
] as const)('%s: %s', (_, source, runs, turned) => {
  expect(found(source, runs)).toBe(turned)
})
