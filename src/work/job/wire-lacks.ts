import { carries } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'
import type { Missing, Unsure } from '../../rules/missing.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'
import { wireIn } from './fitted-protector.ts'

/** What stands in the way of a figure: a field that nobody gave, or a size that no table has. */
export type Lack = Missing | Unsure

/** Why nobody knows what the wire of a run carries; null where that is known. */
export function figureLack({ circuit, fit }: { readonly circuit: JobCircuit } & Pick<FittedCircuit, 'fit'>, id: string): Lack | null {
  const wired = wireIn(fit.runs.find(one => one.id === id)!)
  if (wired === undefined) return { says: `no wire is drawn in ${id}`, change: 'draw its wire' }
  const figure = carries(nominalPlain(wired))
  if (figure === null) return liesLack(namedRuns(circuit).find(one => one.id === id)!.run)
  if (figure.kind === 'ampacity') return null
  return { says: figure.says, change: 'take a size of wire that the practice has a figure for' }
}

/** Which of the two it lies by is not given. */
function liesLack({ wire, path }: ReturnType<typeof namedRuns>[number]['run']): Missing {
  const at = [...path, 'wire']
  if (wire?.insulation !== null && wire?.insulation !== undefined)
    return { field: 'ambient', measure: 'a thermometer beside the wire, hot', at: [...at, 'ambient'] }
  const ambient = wire?.ambient === null ? ', and say how warm the place is (ambient)' : ''
  return { field: 'insulation', measure: `read on the wire what its insulation is rated for${ambient}`, at: [...at, 'insulation'] }
}
