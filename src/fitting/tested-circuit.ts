import { type Bounded, boundsOf } from '../formula/bounds.ts'
import { Given, type Plain } from '../formula/given.ts'
import * as load from '../trade/circuit/load.ts'
import type { Element } from '../trade/circuit/network.ts'
import { OPEN_OHM } from '../trade/proof/fault.ts'
import type { Tested } from '../trade/proof/probe.ts'
import type { CircuitFit, FittedLoad, Run, RunPart } from './circuit.ts'
import { loadId, partOhm, runId, SOURCE } from './circuit-parts.ts'
import { coldFactor, endsOhm, joined, warming, wireFactor } from './proof-allowance.ts'

/** The circuit of a job as it is put to the test, its switches as they stand there: each element with the bounds that all it is made of gives it. */
export function testedCircuit({ ground, bus, busV, insideOhm, others, runs, loads }: CircuitFit, leadsOhm: Given): Tested {
  return {
    network: {
      ground,
      elements: [
        { kind: 'source', id: SOURCE, from: ground, to: bus, sourceV: busV, insideOhm },
        ...others.map(({ what: _, ...other }) => ({ kind: 'source' as const, ...other })),
        ...runs.map(run => ({ kind: 'resistor' as const, id: runId(run.id), from: run.from, to: run.to, resistanceOhm: runOhm(run) })),
        ...loads.map(load => loadElement(load, busV))
      ]
    },
    leadsOhm,
    colds: loads.flatMap(({ name, takes }) => (takes.by === 'rated' ? [{ id: loadId(name), coldFactor: coldFactor(takes.follows) }] : []))
  }
}

/** The circuit with the bus held at what was measured: what stands behind it no longer matters. */
export function heldAt(tested: Tested, busV: Given): Tested {
  const elements = tested.network.elements.map(element =>
    element.kind === 'source' && element.id === SOURCE ? { ...element, sourceV: busV, insideOhm: new Given(0) } : element
  )
  return { ...tested, network: { ...tested.network, elements } }
}

/** One part of a run with what it may differ by in good order. */
interface Allowed {
  readonly part: RunPart
  readonly factor: Given
  readonly ends: Given
}

function runOhm({ state, parts }: Run): Given {
  if (state === 'open') return new Given(OPEN_OHM)
  const allowed = parts.map(allowedPart)
  const { ohm } = boundsOf({ allowed }, x => ({ ohm: x.allowed.reduce((sum, one) => sum + allowedOhm(one), 0) }))
  return asGiven(ohm)
}

function allowedPart(part: RunPart): Allowed {
  if (part.of === 'wire') return { part, factor: wireFactor(part.conductor.kind), ends: endsOhm() }
  return { part: { ...part, jointOhm: joined(part.jointOhm) }, factor: new Given(1), ends: new Given(0) }
}

function allowedOhm({ part, factor, ends }: Plain<Allowed>): number {
  return factor * partOhm(part) + ends
}

function loadElement({ name, from, to, takes }: FittedLoad, busV: Given): Element {
  const ends = { id: loadId(name), from, to }
  switch (takes.by) {
    case 'rated':
      return { kind: 'resistor', ...ends, resistanceOhm: warming(ratedOhm(takes), takes.follows) }
    case 'resistance':
      return { kind: 'resistor', ...ends, resistanceOhm: takes.resistanceOhm }
    case 'current':
      return { kind: 'draw', ...ends, drawA: takes.currentA }
    case 'power':
      // A load of constant power is put to the test as the resistance that it has at the bus.
      return { kind: 'resistor', ...ends, resistanceOhm: ratedOhm({ powerW: takes.powerW, ratedV: busV }) }
  }
}

function ratedOhm({ powerW, ratedV }: { readonly powerW: Given; readonly ratedV: Given }): Given {
  const { ohm } = boundsOf({ powerW, ratedV }, x => ({ ohm: load.resistanceOhm(x) }))
  return asGiven(ohm)
}

/** What was worked out stands as given to what follows, with the place of what moves it most and all that was assumed for it. */
function asGiven({ value, low, high, movers, hangsOn }: Bounded): Given {
  const [first, ...others] = hangsOn
  const also = others.length === 0 ? '' : `, and ${others.map(({ at }) => at.join('.')).join(', ')}`
  const at = first?.at ?? movers.find(({ at }) => at.length > 0)?.at ?? []
  return new Given(value, { low, high, at, assumed: first && `${first.assumed}${also}` })
}
