import { LuDecomposition } from 'ml-matrix'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { refuseFloating } from './floating-parts.ts'
import { refuseIdealLoops } from './ideal-loops.ts'
import type { Flow, PlainElement, PlainNetwork, Solution } from './network.ts'
import { requireSound } from './network-limits.ts'
import { equationsOf } from './nodal-equations.ts'

/** Voltages of all nodes and currents of all elements. What has no one answer is refused in words before anything is solved. */
export function solveNetwork(network: PlainNetwork): Solution {
  requireSound(network)
  refuseFloating(network)
  refuseIdealLoops(network)
  const { nodes, rows, left, right } = equationsOf(network)
  const unknowns = right.rows === 0 ? [] : new LuDecomposition(left).solve(right).to1DArray()
  const volts = new Map([[network.ground, 0], ...nodes.map((node, i) => [node, unknowns[i]!] as const)])
  const amps = new Map<PlainElement, number>(rows.map((row, i) => [row, unknowns[nodes.length + i]!]))
  for (const node of nodes) recordNode(node, volts.get(node)!, network)
  const flows = network.elements.map(element => [element.id, flowOf(element, volts, amps)] as const)
  return { nodeV: Object.fromEntries(volts), flows: Object.fromEntries(flows) }
}

function flowOf(element: PlainElement, volts: ReadonlyMap<string, number>, amps: ReadonlyMap<PlainElement, number>): Flow {
  const dropV = volts.get(element.from)! - volts.get(element.to)!
  const currentA = amps.get(element) ?? (element.kind === 'draw' ? element.drawA : dropV / ohmOf(element))
  return { currentA, dropV, powerW: dropV * currentA }
}

function ohmOf(element: Exclude<PlainElement, { readonly kind: 'draw' }>): number {
  return element.kind === 'source' ? element.insideOhm : element.resistanceOhm
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
