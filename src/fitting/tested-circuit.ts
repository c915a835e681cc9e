import { type Bounded, boundsOf } from '../formula/bounds.ts'
import { Given, type Plain } from '../formula/given.ts'
import * as load from '../trade/circuit/load.ts'
import type { Tested } from '../trade/proof/probe.ts'
import { type CircuitFit, type FittedHeater, heaterId, partOhm, type Run, type RunPart, runId, SOURCE_ID } from './circuit-fit.ts'
import { coldFactor, endsOhm, joined, wireFactor } from './proof-allowance.ts'

/** The circuit of a job as it is put to the test: each element with the bounds that all it is made of gives it. */
export function testedCircuit({ ground, bus, busV, insideOhm, runs, heaters }: CircuitFit, leadsOhm: Given): Tested {
  return {
    network: {
      ground,
      elements: [
        { kind: 'source', id: SOURCE_ID, from: ground, to: bus, sourceV: busV, insideOhm },
        ...runs.map(({ from, to, parts }, i) => ({ kind: 'resistor' as const, id: runId(i), from, to, resistanceOhm: runOhm(parts) })),
        ...heaters.map(heater => ({ kind: 'resistor' as const, ...heaterEnds(heater), resistanceOhm: heaterOhm(heater) }))
      ]
    },
    leadsOhm,
    colds: heaters.map(({ name }) => ({ id: heaterId(name), coldFactor: coldFactor() }))
  }
}

/** The circuit with the bus held at what was measured: what stands behind it no longer matters. */
export function heldAt(tested: Tested, busV: Given): Tested {
  const elements = tested.network.elements.map(element =>
    element.kind === 'source' ? { ...element, sourceV: busV, insideOhm: new Given(0) } : element
  )
  return { ...tested, network: { ...tested.network, elements } }
}

/** One part of a run with what it may differ by in good order. */
interface Allowed {
  readonly part: RunPart
  readonly factor: Given
  readonly ends: Given
}

function runOhm(parts: Run['parts']): Given {
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

function heaterEnds({ name, from, to }: FittedHeater) {
  return { id: heaterId(name), from, to }
}

function heaterOhm({ powerW, ratedV }: FittedHeater): Given {
  const { ohm } = boundsOf({ powerW, ratedV }, x => ({ ohm: load.resistanceOhm(x) }))
  return asGiven(ohm)
}

/** What was worked out stands as given to what follows, with the place of what moves it most and all that was assumed for it. */
function asGiven({ value, low, high, shares, hangsOn }: Bounded): Given {
  const [first, ...others] = hangsOn
  const also = others.length === 0 ? '' : `, and ${others.map(({ at }) => at.join('.')).join(', ')}`
  const at = first?.at ?? shares.find(({ given }) => given.at.length > 0)?.given.at ?? []
  return new Given(value, { low, high, at, assumed: first && `${first.assumed}${also}` })
}
