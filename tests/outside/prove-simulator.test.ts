// table: readings predicted under every fault against a general circuit simulator (eecircuit-engine, ngspice 45 as WebAssembly)
import type { Simulation } from 'eecircuit-engine'
import { beforeAll, describe, expect, it } from 'vitest'
import { plainOf } from '../../src/formula/given.ts'
import type { PlainNetwork } from '../../src/trade/circuit/network.ts'
import type { Fault } from '../../src/trade/proof/fault.ts'
import { probed } from '../../src/trade/proof/probe.ts'
import { joining } from '../../src/trade/proof/probed-circuit.ts'
import { amps, TWO_POINTS, twoFaultList, twoHeaters, volts } from '../trade/proof/invented.ts'
import { simulated, startSimulator } from './simulator.ts'

const SHARE = 1e-6
const { plain } = plainOf(twoHeaters())
const LIVE = [
  ...TWO_POINTS.filter(({ takes }) => takes !== 'ohms'),
  volts('left+', 'chassis'),
  amps('block', 'chassis'),
  amps('chassis', 'bus')
]
const FAULTS = twoFaultList().filter(({ kind }) => kind !== 'misread' && kind !== 'leads')

/** Three sizes of each: near both ends, and between. */
function sizesOf({ sizes }: Fault): readonly number[] {
  if (sizes.by === 'none') return [0]
  if (sizes.by === 'list') return sizes.of.map(({ size }) => size)
  return [0.05, 0.5, 0.95].map(share => sizes.low * (sizes.high / sizes.low) ** share)
}

let simulator: Simulation
beforeAll(async () => {
  simulator = await startSimulator()
})

/** Volts and amps of the other program at each live point. */
async function theirs(network: PlainNetwork): Promise<readonly number[]> {
  const { volts: nodeV, amps: flows } = await simulated(simulator, network)
  return LIVE.map(({ takes, red, black }) => {
    const dropV = nodeV.get(red)! - nodeV.get(black)!
    if (takes === 'volts') return dropV
    return joining(network, { red, black }).reduce((sum, element) => {
      if (element.kind === 'resistor' && element.resistanceOhm > 0) return sum + dropV / element.resistanceOhm
      return sum + (element.from === red ? 1 : -1) * flows.get(element.id)!
    }, 0)
  })
}

describe.each(FAULTS.map(fault => ({ id: fault.id, fault })))('$id', ({ fault }) => {
  it.each(sizesOf(fault))(`size %d: volts to 1e-6 of the source, amps to 1e-6 of the feed`, async size => {
    const network = fault.changes(plain, size).network
    const ours = probed({ ...plain, network }, LIVE)
    const other = await theirs(network)
    const most = { volts: 12, amps: Math.max(1e-3, ...other.filter((_, i) => LIVE[i]!.takes === 'amps').map(Math.abs)) }
    for (const [i, { takes, red, black }] of LIVE.entries())
      expect(Math.abs(ours[i]! - other[i]!), `${takes} ${red} to ${black}`).toBeLessThanOrEqual(SHARE * most[takes as 'volts' | 'amps'])
  })
})

it('millivolts at a known current, the source off', async () => {
  const passive = plain.network.elements.filter(({ kind }) => kind === 'resistor')
  const test = { kind: 'draw', id: 'test', from: 'chassis', to: 'tee', drawA: 5 } as const
  const { volts: nodeV } = await simulated(simulator, { ground: 'chassis', elements: [...passive, test] })
  // Above what drives the test of a bench nothing flows: of the heaters only a tenth of the current is passed here.
  const [ours] = probed(plain, [{ takes: 'volts', red: 'tee', black: 'chassis', passingA: 0.5 }])
  expect(Math.abs(ours! - nodeV.get('tee')! / 10)).toBeLessThanOrEqual(1e-6)
})
