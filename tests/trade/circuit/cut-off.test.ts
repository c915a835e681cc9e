// table: what open contacts cut off, by Kirchhoff's laws and by looking; invented circuits
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { withoutCutOff } from '../../../src/trade/circuit/cut-off.ts'
import type { PlainPart } from '../../../src/trade/circuit/part.ts'
import { settle } from '../../../src/trade/circuit/settle.ts'

const ohm = (id: string, from: string, to: string, resistanceOhm: number): PlainPart => ({ kind: 'resistor', id, from, to, resistanceOhm })
const contact = (id: string, from: string, to: string, state: 'open' | 'closed' = 'open'): PlainPart => {
  return { kind: 'contact', id, from, to, state, contactOhm: 0.01 }
}
const draw = (id: string, from: string, to: string, drawA = 5): PlainPart => ({ kind: 'draw', id, from, to, drawA })
const battery: PlainPart = { kind: 'source', id: 'battery', from: '0', to: 'bus', sourceV: 12, insideOhm: 0.1 }
const heater = ohm('heater', 'bus', '0', 5.9)

function flowsOf(...parts: readonly PlainPart[]) {
  return settle(withoutCutOff({ ground: '0', parts: [battery, heater, ...parts] })).flows
}
/** 12 V over 5.9 ohm and 0.1 ohm. */
const HEATER_A = 2

describe('a load of fixed current or power behind an open contact takes nothing, and the rest gets what it gets', () => {
  it.each<readonly [string, readonly PlainPart[]]>([
    ['one in its feed', [contact('s', 'bus', 'w+'), draw('winch', 'w+', '0')]],
    ['one in its return', [contact('s', 'w-', '0'), draw('winch', 'bus', 'w-')]],
    ['one before some wire', [contact('s', 'bus', 'a'), ohm('wire', 'a', 'w+', 0.1), draw('winch', 'w+', '0')]],
    ['one in feed and one in return', [contact('s', 'bus', 'w+'), contact('t', 'w-', '0'), draw('winch', 'w+', 'w-')]],
    ['a lamp beside it that ties its feed', [contact('s', 'bus', 'w+'), ohm('lamp', 'w+', '0', 10), draw('winch', 'w+', '0')]],
    ['of fixed power', [contact('s', 'bus', 'w+'), { kind: 'power', id: 'winch', from: 'w+', to: '0', powerW: 60 }]]
  ])('%s', (_, parts) => {
    const flows = flowsOf(...parts)
    expect(flows.winch!.currentA).toBe(0)
    expect(flows.heater!.currentA).toBeCloseTo(HEATER_A, 12)
  })
})

it('a load of resistance between two open contacts is dead as well', () => {
  const flows = flowsOf(contact('s', 'bus', 'a'), ohm('lamp', 'a', 'b', 10), contact('t', 'b', '0'))
  expect([flows.lamp!.currentA, flows.heater!.currentA]).toEqual([0, expect.closeTo(HEATER_A, 12)])
})

it('one that is fed by another way takes what it takes', () => {
  const flows = flowsOf(contact('s', 'bus', 'w+'), contact('t', 'bus', 'w+', 'closed'), draw('winch', 'w+', '0'))
  // (12 - 5 · 0.1) V over 5.9 ohm and 0.1 ohm.
  expect([flows.winch!.currentA, flows.t!.currentA]).toEqual([5, expect.closeTo(5, 9)])
  expect(flows.heater!.currentA).toBeCloseTo(11.5 / 6, 9)
})

it('what hangs on nothing, whatever is closed, is refused as before', () => {
  expect(() => flowsOf(contact('s', 'bus', 'a'), ohm('lamp', 'a', '0', 10), ohm('spare', 'x', 'y', 1))).toThrow(NoAnswer)
})

it('with every contact closed a circuit is left as it is', () => {
  const circuit = { ground: '0', parts: [battery, heater, contact('s', 'bus', '0', 'closed')] }
  expect(withoutCutOff(circuit)).toBe(circuit)
})
