// example: the circuit under test is that of the job, with what a circuit in order may differ by; all figures invented
import { describe, expect, it } from 'vitest'
import type { CircuitFit, RunWire } from '../../src/fitting/circuit.ts'
import { circuitFit } from '../../src/fitting/circuit-fit.ts'
import { heldAt, testedCircuit } from '../../src/fitting/tested-circuit.ts'
import { Given, plainOf } from '../../src/formula/given.ts'
import type { ConductorKind } from '../../src/trade/circuit/conductor.ts'
import { solveNetwork } from '../../src/trade/circuit/solve-network.ts'
import { wire } from '../trade/circuit/invented.ts'

const UNMEASURED = new Given(0, { assumed: 'default: not measured', at: ['circuit', 'runs', 1, 'through', 0, 'resistance'] })

function length(size: string, kind: ConductorKind, lengthM: number): RunWire {
  const made = { conductor: wire(size, kind), strandFactor: new Given(1) }
  return { of: 'wire', ...made, lengthM: new Given(lengthM), beginsM: null, conductorC: new Given(20), lies: null, warmth: 'given' }
}

const FIT: CircuitFit = {
  bus: 'bus',
  ground: 'chassis',
  busV: new Given(24, { low: 23, high: 28, at: ['bus'] }),
  insideOhm: new Given(0.01),
  inside: 'known',
  others: [],
  runs: [
    { id: 'feed', from: 'bus', to: 'panel', state: 'closed', counted: 'yes', parts: [length('2.5 mm2', 'class-5', 4)] },
    { id: 'fuse', from: 'panel', to: 'left+', state: 'closed', counted: 'yes', parts: [{ of: 'joint', jointOhm: UNMEASURED }] },
    {
      id: 'bond',
      from: 'left-',
      to: 'chassis',
      state: 'closed',
      counted: 'yes',
      parts: [{ of: 'joint', jointOhm: new Given(0.002, { low: 0.001, high: 0.003, at: ['bond'] }) }]
    }
  ],
  loads: [
    {
      name: 'left',
      from: 'left+',
      to: 'left-',
      takes: { by: 'rated', powerW: new Given(48, { low: 45.6, high: 50.4, at: ['power'] }), ratedV: new Given(24), follows: null },
      startC: new Given(20),
      kind: 'resistive',
      inrush: null,
      way: null
    }
  ],
  protectors: [],
  switches: [],
  shorts: [],
  closedTogether: [[]],
  groundPoints: []
}

const tested = testedCircuit(FIT, new Given(0.2))
const element = (id: string) => tested.network.elements.find(one => one.id === id) as { readonly resistanceOhm: Given }

it('at the nominal it is the circuit that is judged', () => {
  const { nodeV } = solveNetwork(plainOf(tested).plain.network)
  const [load] = circuitFit(plainOf(FIT).plain).loads
  expect(nodeV['left+']! - nodeV['left-']!).toBeCloseTo(load!.atV, 12)
})

describe('what a part in order may differ by', () => {
  it('a wire of a table: a tenth less, and 3 mohm at each end more', () => {
    // 4 m of 7.98 ohm/km: 0.03192 ohm by hand.
    const { value, low, high } = element('run feed').resistanceOhm
    expect(value).toBeCloseTo(0.03192, 9)
    expect(low).toBeCloseTo(0.9 * 0.03192, 9)
    expect(high).toBeCloseTo(0.03192 + 0.006, 9)
  })

  it('a joint that nobody measured: up to 20 mohm, and it stays assumed', () => {
    const { value, high, assumed, at } = element('run fuse').resistanceOhm
    expect([value, high]).toEqual([0, 0.02])
    expect(assumed).toContain('not measured')
    expect(at).toEqual(UNMEASURED.at)
  })

  it('a joint that was measured: as it was given', () => {
    expect(element('run bond').resistanceOhm).toMatchObject({ value: 0.002, low: 0.001, high: 0.003, assumed: undefined })
  })

  it('a heater: by its rated power', () => {
    const { value, low, high } = element('load left').resistanceOhm
    expect(value).toBeCloseTo(12, 12)
    expect(low).toBeCloseTo(576 / 50.4, 9)
    expect(high).toBeCloseTo(576 / 45.6, 9)
  })

  it('a gauge drawn as solid: more as well, for it may be stranded', () => {
    const run = { id: 'feed', from: 'bus', to: 'left+', state: 'closed', counted: 'yes', parts: [length('AWG 14', 'solid', 10)] } as const
    const [, thinned] = testedCircuit({ ...FIT, runs: [run] }, new Given(0.2)).network.elements
    const { value, high } = (thinned as { readonly resistanceOhm: Given }).resistanceOhm
    expect(high / value).toBeGreaterThan(1.26)
  })
})

it('held at a measured bus, what stands behind it no longer counts', () => {
  const { plain } = plainOf(heldAt(tested, new Given(26)))
  expect(solveNetwork(plain.network).nodeV['bus']).toBe(26)
})

describe('a heater that tells how its resistance follows its temperature', () => {
  const follows = { resistanceChangePerK: new Given(0.12), hotC: new Given(90) }
  const [load] = FIT.loads as [CircuitFit['loads'][number]]
  const warming = testedCircuit({ ...FIT, loads: [{ ...load, takes: { ...load.takes, follows } as typeof load.takes }] }, new Given(0.2))

  // 1/(1 + 0.0012·70) = 0.92251 at 20 °C; times 1 ∓ 0.024 at 0 and at 40 °C.
  it('reads what that makes of it in a shop of 0 to 40 °C', () => {
    const [{ coldFactor }] = warming.colds as [(typeof warming.colds)[number]]
    expect(coldFactor.value).toBeCloseTo(0.92251, 5)
    expect(coldFactor.low).toBeCloseTo(0.90037, 5)
    expect(coldFactor.high).toBeCloseTo(0.94465, 5)
  })

  it('is anywhere between cold and hot with the power on', () => {
    const found = warming.network.elements.find(({ id }) => id === 'load left') as { readonly resistanceOhm: Given }
    // 24²/50.4 cold, 24²/45.6 hot.
    expect(found.resistanceOhm.low).toBeCloseTo((576 / 50.4) * 0.90037, 3)
    expect(found.resistanceOhm.value).toBeCloseTo(12, 9)
    expect(found.resistanceOhm.high).toBeCloseTo(576 / 45.6, 9)
  })
})
