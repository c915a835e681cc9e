import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { isRecording, recordStep } from '../../formula/working.ts'
import { FactoredNetwork } from './factored-network.ts'
import { nodesOf, type PlainElement, type PlainNetwork, type Solution } from './network.ts'
import { soundLayout } from './sound-layout.ts'

/** Voltages of all nodes and currents of all elements. */
export function solveNetwork(network: PlainNetwork): Solution {
  return solvedNetwork(network).solution()
}

/** The same before it is written out. What has no one answer is refused in words before anything is solved. */
export function solvedNetwork(network: PlainNetwork): FactoredNetwork {
  const factored = new FactoredNetwork(network, soundLayout(network))
  if (isRecording()) for (const node of nodesOf(network).slice(1)) recordNode(node, factored.nodeV(factored.unknowns, node), network)
  return factored
}

function recordNode(node: string, value: number, { ground, elements }: PlainNetwork): void {
  const facts = fact('nodeV', { says: `voltage at ${node} against ${ground}`, symbol: 'U', source: SOURCES.kirchhoff })
  const joined = () => elements.filter(({ from, to }) => from === node || to === node)
  recordStep(facts, value, () => joined().map(written).join('; '))
}

/** `feed 0.05 ohm, bus to left+`. */
function written(element: PlainElement): string {
  const ends = `${element.from} to ${element.to}`
  switch (element.kind) {
    case 'resistor':
      return `${element.id} ${element.resistanceOhm} ohm, ${ends}`
    case 'source':
      return `${element.id} ${element.sourceV} V behind ${element.insideOhm} ohm, ${ends}`
    case 'draw':
      return `${element.id} ${element.drawA} A, ${ends}`
  }
}
