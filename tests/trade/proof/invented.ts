import { Given, plainOf } from '../../../src/formula/given.ts'
import type { Drawn } from '../../../src/trade/proof/drawn.ts'
import { everyFault } from '../../../src/trade/proof/every-fault.ts'
import type { Fault } from '../../../src/trade/proof/fault.ts'
import type { Meter } from '../../../src/trade/proof/meter.ts'
import type { TestPoint } from '../../../src/trade/proof/predictor.ts'
import type { Tested } from '../../../src/trade/proof/probe.ts'

/** Two heaters on one return, invented: 12 V behind 0.01 ohm, feed 0.04, branches 0.02, heaters 4 and 6 ohm, strap 0.03. */
export function twoHeaters(): Tested {
  const resistor = (id: string, from: string, to: string, ohm: number, share: number) => ({
    kind: 'resistor' as const,
    id,
    from,
    to,
    resistanceOhm: new Given(ohm, { low: ohm * (1 - share), high: ohm * (1 + share), at: [id] })
  })
  return {
    network: {
      ground: 'chassis',
      elements: [
        {
          kind: 'source',
          id: 'source',
          from: 'chassis',
          to: 'bus',
          sourceV: new Given(12, { low: 11, high: 13, at: ['source'] }),
          insideOhm: new Given(0.01)
        },
        resistor('feed', 'bus', 'tee', 0.04, 0.1),
        resistor('left branch', 'tee', 'left+', 0.02, 0.1),
        resistor('right branch', 'tee', 'right+', 0.02, 0.1),
        resistor('strap', 'block', 'chassis', 0.03, 0.1),
        resistor('left', 'left+', 'block', 4, 0.05),
        resistor('right', 'right+', 'block', 6, 0.05)
      ]
    },
    leadsOhm: new Given(0.2, { low: 0.1, high: 0.3 }),
    colds: [{ id: 'left', coldFactor: new Given(1, { low: 0.97, high: 1 }) }]
  }
}

const TWO_DRAWN: Drawn = {
  ground: 'chassis',
  sources: [{ id: 'source', name: 'bus', from: 'chassis', to: 'bus' }],
  runs: [
    {
      id: 'feed',
      from: 'bus',
      to: 'tee',
      wire: { name: '4 mm2', wireOhm: 0.04, others: [{ name: '1.5 mm2', ohmRatio: 2.7 }] },
      through: [],
      protects: false
    },
    { id: 'left branch', from: 'tee', to: 'left+', wire: null, through: ['switch S1'], protects: false },
    { id: 'right branch', from: 'tee', to: 'right+', wire: null, through: [], protects: false },
    { id: 'strap', from: 'block', to: 'chassis', wire: null, through: [], protects: false }
  ],
  loads: [
    { id: 'left', name: 'left', from: 'left+', to: 'block' },
    { id: 'right', name: 'right', from: 'right+', to: 'block' }
  ]
}

/** An invented meter. */
const GOOD_METER: Meter = { accuracyPercent: 0.5, digitsCount: 2, resolution: 0.001 }

export function volts(red: string, black: string, meter = GOOD_METER): TestPoint {
  return { takes: 'volts', red, black, passingA: null, meter }
}

export function amps(red: string, black: string, meter: Meter = { accuracyPercent: 2, digitsCount: 5, resolution: 0.01 }): TestPoint {
  return { takes: 'amps', red, black, passingA: null, meter }
}

/** Every point that shows something of the two heaters. */
export const TWO_POINTS: readonly TestPoint[] = [
  volts('bus', 'chassis'),
  volts('bus', 'tee'),
  volts('tee', 'left+'),
  volts('tee', 'right+'),
  volts('left+', 'block'),
  volts('right+', 'block'),
  volts('block', 'chassis'),
  amps('bus', 'tee'),
  amps('left+', 'block'),
  { takes: 'ohms', red: 'left+', black: 'block', passingA: null, meter: { accuracyPercent: 0.9, digitsCount: 1, resolution: 0.1 } }
]

export function twoFaultList(points: readonly TestPoint[] = TWO_POINTS): readonly Fault[] {
  const tested = twoHeaters()
  return everyFault(tested, plainOf(tested).plain, TWO_DRAWN, points)
}

export function faultNamed(id: string, faults = twoFaultList()): Fault {
  const fault = faults.find(one => one.id === id)
  if (fault === undefined) throw new Error(`no fault ${id} among ${faults.map(one => one.id).join('; ')}`)
  return fault
}
