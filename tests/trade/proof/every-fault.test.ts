// property: every fault is named once and changes something; examples of what each does to a circuit
import { describe, expect, it } from 'vitest'
import { plainOf } from '../../../src/formula/given.ts'
import type { Fault } from '../../../src/trade/proof/fault.ts'
import { PRIOR, priorShares } from '../../../src/trade/proof/fault-prior.ts'
import { probed } from '../../../src/trade/proof/probe.ts'
import { faultNamed, TWO_POINTS, twoFaultList, twoHeaters } from './invented.ts'

const FAULTS = twoFaultList()
const { plain } = plainOf(twoHeaters())

/** A size well inside what the fault may have. */
function middling({ sizes }: Fault): number {
  if (sizes.by === 'none') return 0
  return sizes.by === 'list' ? sizes.of[0]!.size : Math.sqrt(sizes.low * sizes.high)
}

function shown(fault: Fault, size = middling(fault)): readonly number[] {
  const values = probed(fault.changes(plain, size), TWO_POINTS)
  return fault.shows?.(values, size) ?? values
}

it('every kind is looked for, each fault under its own name, none at all first', () => {
  expect(new Set(FAULTS.map(({ kind }) => kind))).toEqual(new Set(Object.keys(PRIOR)))
  expect(new Set(FAULTS.map(({ id }) => id)).size).toBe(FAULTS.length)
  expect(FAULTS[0]!.kind).toBe('healthy')
})

it.each(FAULTS.slice(1).map(fault => ({ id: fault.id, fault })))('$id shows at some point', ({ fault }) => {
  const [before, after] = [shown(FAULTS[0]!), shown(fault)]
  expect(Math.max(...before.map((value, i) => Math.abs(after[i]! - value)))).toBeGreaterThan(1e-4)
})

it('nothing that was drawn is changed for the next fault', () => {
  const before = JSON.stringify(plain)
  for (const fault of FAULTS) shown(fault)
  expect(JSON.stringify(plain)).toBe(before)
})

it('what is looked for before any reading sums to one, a kind keeping its share', () => {
  const shares = priorShares(FAULTS)
  const sum = Object.values(PRIOR).reduce((a, b) => a + b, 0)
  // They are written as percent.
  expect(sum).toBe(100)
  expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
  const opens = shares.filter((_, i) => FAULTS[i]!.kind === 'open')
  expect(opens.reduce((a, b) => a + b, 0)).toBeCloseTo(PRIOR.open / sum, 12)
  expect(opens.length).toBeGreaterThan(1)
})

describe('what a fault does, by hand', () => {
  const at = (red: string, black: string, takes = 'volts') =>
    TWO_POINTS.findIndex(point => point.red === red && point.black === black && point.takes === takes)

  it('an open feed leaves the bus alone and takes all of it', () => {
    const values = shown(faultNamed('open@bus to tee'))
    expect(values[at('bus', 'chassis')]).toBeCloseTo(12, 6)
    expect(values[at('bus', 'tee')]).toBeCloseTo(12, 4)
    expect(values[at('left+', 'block')]).toBeCloseTo(0, 4)
  })

  it('an open heater shows the whole voltage and no current', () => {
    const values = shown(faultNamed('open@left'))
    expect(values[at('left+', 'block', 'amps')]).toBeCloseTo(0, 6)
    expect(values[at('left+', 'block')]).toBeGreaterThan(11.8)
    expect(values[at('left+', 'block', 'ohms')]).toBeGreaterThan(1e7)
  })

  it('more resistance in the strap lifts the block', () => {
    const [before, after] = [shown(FAULTS[0]!), shown(faultNamed('bad-ground@block to chassis'), 0.5)]
    expect(after[at('block', 'chassis')]! / before[at('block', 'chassis')]!).toBeGreaterThan(10)
  })

  it('a wrong wire has the resistance of its size', () => {
    // 0.04 ohm of 4 mm2 as 1.5 mm2: 2.7 times, 0.108 ohm.
    const fault = faultNamed('wrong-wire@bus to tee')
    const network = fault.changes(plain, 2.7).network
    expect(network.elements.find(({ id }) => id === 'feed')).toMatchObject({ resistanceOhm: expect.closeTo(0.108, 9) })
  })

  it('a misread is of one reading alone', () => {
    const fault = faultNamed('misread@volts bus to tee')
    const [before, after] = [shown(FAULTS[0]!), shown(fault, 1000)]
    expect(after[at('bus', 'tee')]! / before[at('bus', 'tee')]!).toBeCloseTo(1000, 9)
    expect(after.filter((value, i) => value !== before[i])).toHaveLength(1)
  })

  it('leads of high resistance show in ohms alone', () => {
    const [before, after] = [shown(FAULTS[0]!), shown(faultNamed('leads@test leads'), 2)]
    expect(after.map((value, i) => Number((value - before[i]!).toFixed(9))).filter(change => change !== 0)).toEqual([2])
  })
})
