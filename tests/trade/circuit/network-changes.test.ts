// property: a network with changes, from the factors of the whole, is the changed network worked out anew
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { FactoredNetwork } from '../../../src/trade/circuit/factored-network.ts'
import { floatingParts } from '../../../src/trade/circuit/floating-parts.ts'
import { nodesOf, type PlainNetwork } from '../../../src/trade/circuit/network.ts'
import { type Change, NetworkChanges } from '../../../src/trade/circuit/network-changes.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { soundNetwork } from './random-network.ts'

/** The changed network as if it had been drawn so. */
function redrawn({ ground, elements }: PlainNetwork, changes: readonly Change[]): PlainNetwork {
  const gone = changes.flatMap(change => (change.kind === 'opened' ? [change.element.id] : []))
  const joins = changes.flatMap((change, i) =>
    change.kind === 'joined'
      ? [{ kind: 'resistor' as const, id: `join ${i}`, from: change.from, to: change.to, resistanceOhm: change.resistanceOhm }]
      : []
  )
  return { ground, elements: [...elements.filter(({ id }) => !gone.includes(id)), ...joins] }
}

const picks = fc.array(fc.tuple(fc.boolean(), fc.nat(999), fc.nat(999)), { minLength: 1, maxLength: 3 })

function changesOf(network: PlainNetwork, picked: readonly (readonly [boolean, number, number])[]): readonly Change[] {
  const nodes = nodesOf(network)
  const drafts = picked.map(
    ([opens, a, b]): Change =>
      opens
        ? { kind: 'opened', element: network.elements[a % network.elements.length]! }
        : { kind: 'joined', from: nodes[a % nodes.length]!, to: nodes[b % nodes.length]!, resistanceOhm: 0.001 }
  )
  // A change that is made twice is made once.
  return drafts.filter((one, i) => drafts.findIndex(other => JSON.stringify(other) === JSON.stringify(one)) === i)
}

it('agrees with the changed network wherever that has an answer', () => {
  let met = 0
  fc.assert(
    fc.property(soundNetwork, picks, (network, picked) => {
      const changes = changesOf(network, picked)
      const anew = redrawn(network, changes)
      if (floatingParts(anew).length > 0 || new Set(nodesOf(anew)).size < nodesOf(network).length) return
      const factored = new FactoredNetwork(network)
      const unknowns = new NetworkChanges(factored).after(changes)
      if (unknowns === undefined) return
      met++
      const { nodeV, flows } = solveNetwork(anew)
      const scale = Math.max(1, ...Object.values(nodeV).map(Math.abs))
      for (const [node, volts] of Object.entries(nodeV))
        expect(Math.abs(factored.nodeV(unknowns, node) - volts) / scale, node).toBeLessThan(1e-6)
      const most = Math.max(1, ...Object.values(flows).map(({ currentA }) => Math.abs(currentA)))
      for (const element of network.elements)
        if (anew.elements.includes(element))
          expect(Math.abs(factored.currentA(unknowns, element) - flows[element.id]!.currentA) / most, element.id).toBeLessThan(1e-6)
    }),
    { numRuns: 300 }
  )
  expect(met).toBeGreaterThan(60)
})

it('without changes it is the network as it was', () => {
  fc.assert(
    fc.property(soundNetwork, network => {
      const factored = new FactoredNetwork(network)
      expect(new NetworkChanges(factored).after([])).toEqual(factored.unknowns)
    }),
    { numRuns: 20 }
  )
})

it('a node joined to itself changes nothing', () => {
  const factored = new FactoredNetwork({
    ground: 'g',
    elements: [
      { kind: 'source', id: 's', from: 'g', to: 'a', sourceV: 12, insideOhm: 1 },
      { kind: 'resistor', id: 'r', from: 'a', to: 'g', resistanceOhm: 5 }
    ]
  })
  expect(new NetworkChanges(factored).after([{ kind: 'joined', from: 'a', to: 'a', resistanceOhm: 0 }])).toEqual(factored.unknowns)
})
