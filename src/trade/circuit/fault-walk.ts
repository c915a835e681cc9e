import { FactoredNetwork } from './factored-network.ts'
import { changeOf, type Fault, type FaultGiven, faultsOf } from './fault.ts'
import { type FaultEffects, harmOf } from './fault-effects.ts'
import { FaultWatch } from './fault-watch.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import { soundLayout } from './sound-layout.ts'

export interface WalkedFault extends FaultEffects {
  readonly fault: Fault
  /** Larger is worse; the walk is sorted by it. */
  readonly harm: number
}

/** Every fault of a network, one at a time, worst first. Each is worked out from the factors of the whole network. */
export function walkFaults(given: FaultGiven): readonly WalkedFault[] {
  const { network } = given
  const watching = watchedBy(given, new FactoredNetwork(network, soundLayout(network)))
  const walked = faultsOf(given).map(fault => {
    const effects = watching(fault).effectsOf(changeOf(fault, network))
    return { fault, ...effects, harm: harmOf(effects) }
  })
  return walked.sort((a, b) => b.harm - a.harm)
}

/** What watches a fault: the network as it is, or with its starter cranking. */
export function watchedBy(given: FaultGiven, factored: FactoredNetwork): (fault: Fault) => FaultWatch {
  const { network, cranking } = given
  const whole = new FaultWatch(given, factored)
  const started = cranking === null ? whole : new FaultWatch(given, new FactoredNetwork(cranked(network, cranking, whole)))
  return ({ kind }) => (kind === 'cranking' ? started : whole)
}

export const STARTER = 'starter'

/** The starter as the resistance that takes its current while its strap is on: without it, it takes what the other ways let through. */
function cranked(network: PlainNetwork, { currentA, at }: NonNullable<FaultGiven['cranking']>, whole: FaultWatch): PlainNetwork {
  const source = network.elements.find(({ kind }) => kind === 'source')
  if (source === undefined) return network
  const resistanceOhm = Math.max(0, whole.voltsAt(source.to) - whole.voltsAt(at)) / currentA
  const starter: PlainElement = { kind: 'resistor', id: STARTER, from: source.to, to: at, resistanceOhm }
  return { ...network, elements: [...network.elements, starter] }
}
