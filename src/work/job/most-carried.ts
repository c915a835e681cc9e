import type { CircuitFit } from '../../fitting/circuit.ts'
import { circuitFit } from '../../fitting/circuit-fit.ts'
import { nominalPlain } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'

interface Fed {
  readonly fit: CircuitFit
  /** Loads that a source drives a current through. */
  readonly fed: ReadonlySet<string>
}

/** What any run carried at the most, at the nominal, and which loads were fed, of all positions of the switches so far. */
export class MostCarried {
  private readonly runsA: Map<string, number>
  private readonly fed: Set<string>

  constructor({ fit, fed }: Fed) {
    this.runsA = new Map(currentsOf(fit))
    this.fed = new Set(fed)
  }

  /** Whether it is less than a run carries, or a load is fed that was not; from now on with that. */
  isLess({ fit, fed }: Fed): boolean {
    const more = currentsOf(fit).filter(([id, currentA]) => carriesMore(currentA, this.runsA.get(id)!))
    const others = [...fed].filter(load => !this.fed.has(load))
    for (const [id, currentA] of more) this.runsA.set(id, currentA)
    for (const load of others) this.fed.add(load)
    return more.length > 0 || others.length > 0
  }

  carried(id: string): boolean {
    return this.runsA.get(id)! > ROUNDING
  }
}

const ROUNDING = 1e-9

/** More than rounding. */
export function carriesMore(one: number, other: number): boolean {
  return one > other * (1 + ROUNDING) + ROUNDING
}

function currentsOf(fit: CircuitFit): readonly (readonly [id: string, currentA: number])[] {
  const { runs } = silently(() => circuitFit(nominalPlain({ ...fit, shorts: [], inside: 'stiff' as const })))
  return runs.map(({ id, currentA }) => [id, currentA])
}
