import { type Bounded, exactly } from '../formula/bounds.ts'
import type { Missing } from './missing.ts'

/** What a casting is made of, as far as heat spoils it; no melting point where only its specific heat was given. */
export interface Alloy {
  readonly says: string
  readonly meltsC: number | null
}

/** Where it settles in one kind of air; or that it leaves what a film is worked out for. */
export type Settled = { readonly steadyC: Bounded } | { readonly beyondC: number }

export type SettledMetal = { readonly settlesC: Bounded; readonly meltsC: number; readonly of: string } | { readonly beyondC: number }

/** The casting where it settles hottest. `thermostatC`: the metal at which a thermostat takes the power off, at its highest. */
export function settledMetal(alloy: Alloy | null, settled: readonly Settled[], thermostatC: number | null): SettledMetal | Missing {
  if (alloy === null) return { field: 'warm.material', measure: 'ask for the alloy of the casting' }
  if (alloy.meltsC === null)
    return { field: 'the name of the metal', measure: 'ask for the alloy: a specific heat does not tell what it stands' }
  const { says: of, meltsC } = alloy
  if (thermostatC !== null) return { settlesC: cut(settled, thermostatC), meltsC, of }
  const beyond = settled.find(air => 'beyondC' in air)
  return beyond ?? { settlesC: hottest(settled), meltsC, of }
}

function cut(settled: readonly Settled[], thermostatC: number): Bounded {
  const known = settled.every(air => 'steadyC' in air) ? hottest(settled) : null
  return known !== null && known.high <= thermostatC ? known : exactly(thermostatC)
}

function hottest(settled: readonly Settled[]): Bounded {
  const ends = settled.flatMap(air => ('steadyC' in air ? [air.steadyC] : []))
  return ends.reduce((a, b) => (b.high > a.high ? b : a))
}
