import { Simulation } from 'eecircuit-engine'
import type { PlainElement, PlainNetwork } from '../../src/trade/circuit/network.ts'
import { nodesOf } from '../../src/trade/circuit/network.ts'

/** A general circuit simulator (ngspice as WebAssembly). Starting takes seconds: once for all tests of a file. */
export async function startSimulator(): Promise<Simulation> {
  const simulator = new Simulation()
  await simulator.start()
  return simulator
}

export interface Simulated {
  readonly volts: ReadonlyMap<string, number>
  /** Current from `from` to `to`, of sources and of joints without resistance alone. */
  readonly amps: ReadonlyMap<string, number>
}

/** It does not throw on a bad netlist: it gives zeros and a text, so the text is asked for. */
export async function simulated(simulator: Simulation, network: PlainNetwork): Promise<Simulated> {
  const nodes = new Map(nodesOf(network).map((node, i) => [node, String(i)]))
  const lines = network.elements.flatMap((element, i) => lineOf(element, i, nodes))
  simulator.setNetList(['check', ...lines, '.options reltol=1e-9 gmin=1e-15', '.op', '.end'].join('\n'))
  const { data } = await simulator.runSim()
  const faults = simulator.getError().filter(Boolean)
  if (faults.length > 0) throw new Error(faults.join(' '))
  const found = new Map(data.map(({ name, values }) => [name.toLowerCase(), values[0] as number]))
  return { volts: new Map([...nodes].map(([node, n]) => [node, n === '0' ? 0 : found.get(`v(${n})`)!])), amps: ampsOf(network, found) }
}

/** The current of a source counts in at its plus: through one of ours, from `from` to plus at `to`, it is the other way round. */
function ampsOf({ elements }: PlainNetwork, found: ReadonlyMap<string, number>): Map<string, number> {
  const signs = { source: -1, resistor: 1, draw: 1 } as const
  return new Map(
    elements.flatMap(({ id, kind }, i) => {
      const amps = found.get(`i(v${i})`)
      return amps === undefined ? [] : [[id, signs[kind] * amps] as const]
    })
  )
}

/** A joint without resistance becomes a source of 0 V: a resistor of 0 ohm would cost digits. */
function lineOf(element: PlainElement, i: number, nodes: ReadonlyMap<string, string>): string[] {
  const [from, to] = [nodes.get(element.from)!, nodes.get(element.to)!]
  switch (element.kind) {
    case 'resistor':
      return [element.resistanceOhm === 0 ? `V${i} ${from} ${to} 0` : `R${i} ${from} ${to} ${element.resistanceOhm}`]
    case 'draw':
      return [`I${i} ${from} ${to} ${element.drawA}`]
    case 'source':
      if (element.insideOhm === 0) return [`V${i} ${to} ${from} ${element.sourceV}`]
      return [`V${i} ${to} inside${i} ${element.sourceV}`, `R${i} inside${i} ${from} ${element.insideOhm}`]
  }
}
