import type { Plain } from '../formula/given.ts'
import type { CircuitFit, FittedProtector } from './circuit.ts'
import { highestV } from './circuit-parts.ts'
import { prospectiveA } from './prospective-short.ts'
import { shortedAsItIs } from './shorted-circuit.ts'

interface NearShort {
  readonly fit: CircuitFit
  readonly protector: Pick<FittedProtector, 'run' | 'alongM'>
}

/** A short right behind a protector of which no more is known than where it stands, and the highest of the sources. */
export function nearShort({ fit, protector }: Plain<NearShort>) {
  return { nearA: fit.inside === 'known' ? prospectiveA(fit, protector, shortedAsItIs(fit)) : null, busV: highestV(fit) }
}
